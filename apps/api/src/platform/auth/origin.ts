import { isLoopback } from "@evenhand/shared/loopback";
import type { FastifyRequest } from "fastify";
import type { Config } from "../config/index.ts";

const urlOf = (text: string): URL | null => (URL.canParse(text) ? new URL(text) : null);

/**
 * Did a change come from our own pages? Browsers name the page's origin with every change; where one is named it must be the
 * address the service is reached at. Without a configured address that is this machine's, under a name that leads nowhere else: a
 * foreign name that is made to lead here is not believed. A session without any named origin is no browser's and is refused too.
 */
export function isOwnOrigin(request: FastifyRequest, config: Config): boolean {
  const { origin } = request.headers;
  if (origin === undefined) return request.headers["sec-fetch-site"] === "same-origin";
  const from = urlOf(origin);
  if (from === null) return false;
  const { publicUrl } = config.http;
  return (publicUrl !== null && from.origin === new URL(publicUrl).origin) || isHere(from, request);
}

/** The page and the request name the same host, and it is this machine. */
const isHere = (from: URL, request: FastifyRequest): boolean =>
  isLoopback(from.hostname) && from.host === request.headers.host;
