import { Ajv2020 } from "ajv/dist/2020.js";
import request from "supertest";
import { accessTable, routeIds } from "@evenhand/shared/access";
import { contractTable } from "@evenhand/shared/http/contracts";
import { beforeAll, expect, test } from "vitest";
import { servedRoutes } from "./setup/served-routes.ts";
import { useService } from "./setup/service.ts";

type Operation = {
  operationId: string;
  requestBody?: { content: Record<string, { schema: object }> };
  responses: Record<string, { content?: Record<string, { schema: object }> }>;
  parameters?: { name: string; in: string; required?: boolean; schema?: object }[];
};
type OpenApi = {
  openapi: string;
  paths: Record<string, Record<string, Operation>>;
  components: { schemas?: object };
};

const service = useService({ emptyBetween: false });
let document: OpenApi;
beforeAll(async () => {
  document = (await request(service().url).get("/api/openapi.json")).body;
});

const operationOf = (route: (typeof routeIds)[number]): Operation | undefined => {
  const { method, path } = accessTable[route];
  return document.paths[`/api/v1${path.replaceAll(/:(\w+)/g, "{$1}")}`]?.[method.toLowerCase()];
};

test("the document is OpenAPI 3.1 and holds every served route once", () => {
  expect(document.openapi).toBe("3.1.0");
  const ids = Object.values(document.paths).flatMap((path) =>
    Object.values(path).map(({ operationId }) => operationId),
  );
  expect(ids.toSorted()).toEqual([...servedRoutes].toSorted());
});

test.each(servedRoutes)("%s is documented by its contract", (route) => {
  const operation = operationOf(route);
  const { body, answer, status } = contractTable[route];
  expect(operation?.requestBody !== undefined).toBe(body !== undefined);
  const schema = operation?.responses[String(status)]?.content?.["application/json"]?.schema;
  expect(schema !== undefined).toBe(answer !== null);
});

test.each(servedRoutes)("every schema of %s is a JSON Schema of the dialect of OpenAPI 3.1", (route) => {
  const operation = operationOf(route);
  const schemas = [
    ...Object.values(operation?.requestBody?.content ?? {}).map(({ schema }) => schema),
    ...Object.values(operation?.responses ?? {}).flatMap(({ content }) =>
      Object.values(content ?? {}).map(({ schema }) => schema),
    ),
  ];
  for (const schema of schemas) {
    const ajv = new Ajv2020({ strict: false, validateFormats: false });
    expect(() => ajv.compile({ ...schema, components: document.components })).not.toThrow();
  }
});

test("what the contract refuses, the documented schema refuses", () => {
  const schema = operationOf("vehicles.create")?.requestBody?.content["application/json"]?.schema ?? {};
  const validate = new Ajv2020({ strict: false, validateFormats: false }).compile(schema);
  expect(validate({ organization: "x", vehicle: { make: "" } })).toBe(false);
});

test("keyed and conditional routes say which headers they ask for", () => {
  const names = (operationOf("reports.seal")?.parameters ?? [])
    .filter((each) => each.in === "header")
    .map(({ name }) => name);
  expect(names.toSorted()).toEqual(["Idempotency-Key", "If-Match"]);
});
