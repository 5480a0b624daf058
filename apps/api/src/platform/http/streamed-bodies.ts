import type { NestFastifyApplication } from "@nestjs/platform-fastify";
import { accessTable, type RouteId } from "@evenhand/shared/access";
import type { FastifyRequest } from "fastify";

const addressesOf = (routes: readonly RouteId[]): ReadonlySet<string> =>
  new Set(routes.map((route) => `/api/v1${accessTable[route].path}`));

/** What comes as bytes, and where: a part of a file by tus 1.0, and a photograph as a whole. */
const taking: Readonly<Record<string, ReadonlySet<string>>> = {
  "application/offset+octet-stream": addressesOf(["uploads.create", "uploads.append"]),
  "application/octet-stream": addressesOf(["carriedHandOvers.addPicture", "releasePictures.add"]),
};

/** Files reach their handler as they arrive; every other address goes on taking JSON alone. */
export function registerStreamedBodies(app: NestFastifyApplication): void {
  for (const [type, addresses] of Object.entries(taking))
    app
      .getHttpAdapter()
      .getInstance()
      .addContentTypeParser(
        type,
        (request: FastifyRequest, payload: unknown, done: (error: Error | null, body?: unknown) => void) => {
          if (addresses.has(request.routeOptions.url ?? "")) return done(null, payload);
          done(Object.assign(new Error("Bytes of a file are not taken here."), { statusCode: 415 }));
        },
      );
}
