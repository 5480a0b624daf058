import type { NestFastifyApplication } from "@nestjs/platform-fastify";
import { accessTable, routeIds } from "@evenhand/shared/access";
import { contractTable } from "@evenhand/shared/http/contracts";
import type { RouteOptions } from "fastify";

const nameOf = (method: string, path: string): string => `${method} ${path}`;

/** Most bytes of a body by method and address, where the contract names them. */
const bytesOf: ReadonlyMap<string, number> = new Map(
  routeIds.flatMap((route) => {
    const { method, path } = accessTable[route];
    const { bodyBytes } = contractTable[route];
    return bodyBytes === undefined ? [] : [[nameOf(method, `/api/v1${path}`), bodyBytes] as const];
  }),
);

/** Each route takes as much as its contract says, and what says nothing takes little. To be called before there are routes. */
export function registerBodyLimits(app: NestFastifyApplication): void {
  app
    .getHttpAdapter()
    .getInstance()
    .addHook("onRoute", (route: RouteOptions) => {
      const bytes = [route.method].flat().flatMap((method) => bytesOf.get(nameOf(method, route.url)) ?? []);
      if (bytes.length > 0) route.bodyLimit = Math.max(...bytes);
    });
}
