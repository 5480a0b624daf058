import type { NestFastifyApplication } from "@nestjs/platform-fastify";
import { accessTable } from "@evenhand/shared/access";
import type { FastifyRequest } from "fastify";

/** A part of a file, by tus 1.0. */
const partOfFile = "application/offset+octet-stream";
const taking = new Set(
  (["uploads.create", "uploads.append"] as const).map((route) => `/api/v1${accessTable[route].path}`),
);

/** Parts of files reach their handler as they arrive; every other address goes on taking JSON alone. */
export function registerStreamedBodies(app: NestFastifyApplication): void {
  app
    .getHttpAdapter()
    .getInstance()
    .addContentTypeParser(
      partOfFile,
      (request: FastifyRequest, payload: unknown, done: (error: Error | null, body?: unknown) => void) => {
        if (taking.has(request.routeOptions.url ?? "")) return done(null, payload);
        done(Object.assign(new Error("A part of a file is taken by uploads only."), { statusCode: 415 }));
      },
    );
}
