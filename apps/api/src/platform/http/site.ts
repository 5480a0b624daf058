import { existsSync } from "node:fs";
import { join } from "node:path";
import fastifyHelmet from "@fastify/helmet";
import fastifyStatic from "@fastify/static";
import type { NestFastifyApplication } from "@nestjs/platform-fastify";
import type { FastifyReply, FastifyRequest } from "fastify";
import type { Config } from "../config/index.ts";
import { noSuchRoute } from "../problems/no-such-route.ts";
import { sendProblem } from "../problems/problem-filter.ts";

const isSecure = (config: Config): boolean => config.http.publicUrl?.startsWith("https:") ?? false;

/** Own pages and own scripts only, nothing inline but styles; framed by nobody; pictures may come from the camera. */
const pagePolicy = (secure: boolean) => ({
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
});

/** Data is no page, and what a page is made of is none either: nothing in it runs, loads or is framed. The same words every time, so they are not worked out anew. */
const dataHeaders = (secure: boolean): Readonly<Record<string, string>> => ({
  "content-security-policy": "default-src 'none'; frame-ancestors 'none'",
  "x-content-type-options": "nosniff",
  "referrer-policy": "same-origin",
  "cross-origin-resource-policy": "same-origin",
  ...(secure ? { "strict-transport-security": "max-age=31536000" } : {}),
});

/** Headers that keep pages and data from being misused. */
export async function registerSecurityHeaders(app: NestFastifyApplication, config: Config): Promise<void> {
  const secure = isSecure(config);
  const forData = dataHeaders(secure);
  await app.register(fastifyHelmet, {
    global: false,
    contentSecurityPolicy: pagePolicy(secure),
    strictTransportSecurity: secure ? { maxAge: 31_536_000, includeSubDomains: false } : false,
    referrerPolicy: { policy: "same-origin" },
    crossOriginOpenerPolicy: { policy: "same-origin" },
    crossOriginResourcePolicy: { policy: "same-origin" },
  });
  app
    .getHttpAdapter()
    .getInstance()
    .addHook("onRequest", (request, reply, done) => {
      if (/^\/(api|assets)\//.test(request.url)) void reply.headers(forData);
      else reply.helmet();
      done();
    });
}

/** The web application's files. Named by their contents, they may be kept for ever; the page itself is asked for each time. */
export async function registerSite(app: NestFastifyApplication, config: Config): Promise<void> {
  const folder = config.http.siteFolder;
  if (!existsSync(join(folder, "index.html"))) return;
  await app.register(fastifyStatic, {
    root: folder,
    wildcard: false,
    // The build leaves compressed forms beside each file.
    preCompressed: true,
    // The page itself is sent below: looked for compressed and not found so, it would not be found at all.
    index: false,
    setHeaders: (reply, path) => {
      const forEver = path.includes(join(folder, "assets"));
      void reply.header("cache-control", forEver ? "public, max-age=31536000, immutable" : "no-cache");
    },
  });
  app.getHttpAdapter().getInstance().get("/*", sendPage);
}

/** The page as it is to whoever asks for a page; to everybody else that there is nothing at the address. */
export function sendPage(request: FastifyRequest, reply: FastifyReply): FastifyReply {
  if (wantsPage(request.url, request.headers.accept)) return reply.sendFile("index.html");
  sendProblem(request, reply, noSuchRoute(request));
  return reply;
}

/** A page of the web application is asked for by its own address; the application finds it. */
export const wantsPage = (url: string, accept: string | undefined): boolean => {
  const [path = ""] = url.split("?");
  if (path === "/") return true;
  return (
    !/^\/api(\/|$)/.test(path) && !/\.[a-z0-9]+$/i.test(path) && (accept?.includes("text/html") ?? false)
  );
};
