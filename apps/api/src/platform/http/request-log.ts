import { randomUUID } from "node:crypto";
import type { IncomingMessage } from "node:http";
import type { Config } from "../config/index.ts";

const given = /^[A-Za-z0-9._-]{8,64}$/;

/** A proxy's own id is kept, so that one request has one name everywhere. */
export const requestIdOf = (request: IncomingMessage): string => {
  const header = request.headers["x-request-id"];
  return typeof header === "string" && given.test(header) ? header : randomUUID();
};

type Routed = { readonly method: string; readonly routeOptions?: { readonly url?: string | undefined } };

/** The route's pattern, never the address as asked: that may hold an invitation's secret. No names, no mail, no network address. */
export const loggerOptions = (config: Config) => ({
  level: config.logLevel,
  base: null,
  serializers: {
    req: (request: Routed) => ({ method: request.method, route: request.routeOptions?.url ?? "none" }),
    res: (reply: { readonly statusCode?: number }) => ({ statusCode: reply.statusCode ?? 0 }),
    err: (error: Error) => ({ type: error.name, message: error.message, stack: error.stack ?? "" }),
  },
});
