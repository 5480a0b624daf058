import type { NestFastifyApplication } from "@nestjs/platform-fastify";
import { accessTable, routeIds } from "@evenhand/shared/access";
import { contractTable } from "@evenhand/shared/http/contracts";
import type { FastifyReply, FastifyRequest, RouteOptions } from "fastify";
import { notSignedIn } from "../access/access.guard.ts";
import type { Actor } from "../auth/actor.ts";
import { Credentials } from "../auth/credentials.ts";
import { sendProblem } from "../problems/problem-filter.ts";

const nameOf = (method: string, path: string): string => `${method} ${path}`;

/** Most bytes of a body by method and address, where the contract names them. */
const bytesOf: ReadonlyMap<string, number> = new Map(
  routeIds.flatMap((route) => {
    const { method, path } = accessTable[route];
    const { bodyBytes } = contractTable[route];
    return bodyBytes === undefined ? [] : [[nameOf(method, `/api/v1${path}`), bodyBytes] as const];
  }),
);

/** Addresses that take more than little, and only from who is signed in. */
const largeAndOwn: ReadonlySet<string> = new Set(
  routeIds
    .filter((route) => contractTable[route].bodyBytes !== undefined && !accessTable[route].public)
    .map((route) => nameOf(accessTable[route].method, `/api/v1${accessTable[route].path}`)),
);

/** Asks who it is before a byte of the body is read. */
const signedInFirst =
  (app: NestFastifyApplication) =>
  async (request: FastifyRequest, reply: FastifyReply): Promise<FastifyReply | undefined> => {
    let actor: Actor | null;
    try {
      actor = await app.get(Credentials, { strict: false }).findActor(request);
    } catch {
      // The guard asks again, and what keeps it from knowing is said there.
      return undefined;
    }
    if (actor !== null) return undefined;
    sendProblem(request, reply, notSignedIn());
    return reply;
  };

/** Each route takes as much as its contract says, and what says nothing takes little. To be called before there are routes. */
export function registerBodyLimits(app: NestFastifyApplication): void {
  app
    .getHttpAdapter()
    .getInstance()
    .addHook("onRoute", (route: RouteOptions) => {
      const bytes = [route.method].flat().flatMap((method) => bytesOf.get(nameOf(method, route.url)) ?? []);
      if (bytes.length > 0) route.bodyLimit = Math.max(...bytes);
      if ([route.method].flat().some((method) => largeAndOwn.has(nameOf(method, route.url))))
        route.onRequest = [...[route.onRequest ?? []].flat(), signedInFirst(app)];
    });
}
