import type { FastifyRequest } from "fastify";
import type { Config } from "../config/index.ts";

const hostOf = (url: string): string | null => (URL.canParse(url) ? new URL(url).host : null);

/**
 * Did a change come from our own pages? Browsers name the page's origin with every change; where one is named it must be the
 * address the service is reached at. A session without any named origin is no browser's and is refused too.
 */
export function isOwnOrigin(request: FastifyRequest, config: Config): boolean {
  const { origin } = request.headers;
  if (origin === undefined) return request.headers["sec-fetch-site"] === "same-origin";
  const host = hostOf(origin);
  if (config.http.publicUrl !== null && host === hostOf(config.http.publicUrl)) return true;
  return host !== null && host === request.headers.host;
}
