import { existsSync } from "node:fs";
import { join } from "node:path";
import fastifyHelmet from "@fastify/helmet";
import fastifyStatic from "@fastify/static";
import type { NestFastifyApplication } from "@nestjs/platform-fastify";
import type { Config } from "../config/index.ts";
import { ProblemError } from "../problems/problem-error.ts";
import { sendProblem } from "../problems/problem-filter.ts";

/** Own pages and own scripts only, nothing inline but styles; framed by nobody; camera for the inspector's photographs. */
export async function registerSecurityHeaders(app: NestFastifyApplication, config: Config): Promise<void> {
  const secure = config.http.publicUrl?.startsWith("https:") ?? false;
  await app.register(fastifyHelmet, {
    contentSecurityPolicy: {
      useDefaults: false,
      directives: {
        defaultSrc: ["'self'"],
        scriptSrc: ["'self'"],
        styleSrc: ["'self'", "'unsafe-inline'"],
        imgSrc: ["'self'", "data:", "blob:"],
        fontSrc: ["'self'", "data:"],
        connectSrc: ["'self'"],
        workerSrc: ["'self'"],
        manifestSrc: ["'self'"],
        objectSrc: ["'none'"],
        baseUri: ["'none'"],
        formAction: ["'self'"],
        frameAncestors: ["'none'"],
        ...(secure ? { upgradeInsecureRequests: [] } : {}),
      },
    },
    strictTransportSecurity: secure ? { maxAge: 31_536_000, includeSubDomains: false } : false,
    referrerPolicy: { policy: "same-origin" },
    crossOriginOpenerPolicy: { policy: "same-origin" },
    crossOriginResourcePolicy: { policy: "same-origin" },
  });
}

/** The web application's files. Named by their contents, they may be kept for ever; the page itself is asked for each time. */
export async function registerSite(app: NestFastifyApplication, config: Config): Promise<void> {
  const folder = config.http.siteFolder;
  if (!existsSync(join(folder, "index.html"))) return;
  await app.register(fastifyStatic, {
    root: folder,
    wildcard: false,
    index: "index.html",
    setHeaders: (reply, path) => {
      const forEver = path.includes(join(folder, "assets"));
      void reply.header("cache-control", forEver ? "public, max-age=31536000, immutable" : "no-cache");
    },
  });
  app
    .getHttpAdapter()
    .getInstance()
    .get("/*", (request, reply) => {
      if (wantsPage(request.url, request.headers.accept)) return reply.sendFile("index.html");
      sendProblem(request, reply, new ProblemError("not-found", "There is nothing at this address."));
      return reply;
    });
}

/** A page of the web application is asked for by its own address; the application finds it. */
const wantsPage = (url: string, accept: string | undefined): boolean => {
  const [path = ""] = url.split("?");
  return (
    !/^\/api(\/|$)/.test(path) && !/\.[a-z0-9]+$/i.test(path) && (accept?.includes("text/html") ?? false)
  );
};
