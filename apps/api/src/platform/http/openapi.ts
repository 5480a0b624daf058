import type { NestFastifyApplication } from "@nestjs/platform-fastify";
import { DocumentBuilder, type OpenAPIObject, SwaggerModule } from "@nestjs/swagger";
import { z } from "zod";

const toJsonSchema = (schema: unknown, { schemaType }: { schemaType: "input" | "output" }) => {
  if (!(schema instanceof z.ZodType)) return undefined;
  const { $schema: _dialect, ...rest } = z.toJSONSchema(schema, {
    io: schemaType,
    target: "draft-2020-12",
    unrepresentable: "any",
    reused: "inline",
  });
  return { schema: rest };
};

/** The document of the interface, made from the contracts that validate it (JSON Schema 2020-12, as OpenAPI 3.1 has it). */
export function makeOpenApi(app: NestFastifyApplication): OpenAPIObject {
  const about = new DocumentBuilder()
    .setOpenAPIVersion("3.1.0")
    .setTitle("Evenhand")
    .setDescription("The dealer's findings and the inspector's findings on one car, set against each other.")
    .setVersion("1")
    .addCookieAuth("evenhand", { type: "apiKey", in: "cookie" }, "session")
    .addBearerAuth({ type: "http", scheme: "bearer" }, "bearer")
    .build();
  return SwaggerModule.createDocument(app, about, {
    standardSchemaConverter: toJsonSchema,
    operationIdFactory: (_controller, method) => method,
  });
}
