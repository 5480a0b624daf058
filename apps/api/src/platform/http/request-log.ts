import { randomUUID } from "node:crypto";
import type { IncomingMessage } from "node:http";
import type { NestFastifyApplication } from "@nestjs/platform-fastify";
import type { Config } from "../config/index.ts";

const given = /^[A-Za-z0-9._-]{8,64}$/;

/** A proxy's own id is kept, so that one request has one name everywhere. */
export const requestIdOf = (request: IncomingMessage): string => {
  const header = request.headers["x-request-id"];
  return typeof header === "string" && given.test(header) ? header : randomUUID();
};

/** No names, no mail, no network address; errors without what was being worked on. */
export const loggerOptions = (config: Config) => ({
  level: config.logLevel,
  base: null,
  serializers: {
    err: (error: Error) => ({ type: error.name, message: error.message, stack: error.stack ?? "" }),
  },
});

/** One line a request: the route's pattern, never the address as asked, which may hold an invitation's secret. */
export function registerRequestLog(app: NestFastifyApplication): void {
  app
    .getHttpAdapter()
    .getInstance()
    .addHook("onResponse", (request, reply, done) => {
      const { method, routeOptions } = request;
      const milliseconds = Math.round(reply.elapsedTime * 10) / 10;
      request.log.info(
        { method, route: routeOptions.url ?? "none", status: reply.statusCode, milliseconds },
        "answered",
      );
      done();
    });
}
