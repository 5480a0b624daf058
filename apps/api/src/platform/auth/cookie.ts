import type { FastifyReply, FastifyRequest } from "fastify";
import type { Config } from "../config/index.ts";

/** `__Host-` needs HTTPS; plain HTTP is for one's own machine only. */
const nameOf = (secure: boolean): string => (secure ? "__Host-evenhand" : "evenhand");

const isSecure = (config: Config): boolean => config.http.publicUrl?.startsWith("https:") ?? false;

export const readSessionCookie = (request: FastifyRequest, config: Config): string | null =>
  request.cookies[nameOf(isSecure(config))] ?? null;

const attributes = (config: Config) => ({
  path: "/",
  httpOnly: true,
  sameSite: "lax" as const,
  secure: isSecure(config),
});

export function setSessionCookie(reply: FastifyReply, config: Config, secret: string): void {
  const maxAge = config.session.days * 24 * 60 * 60;
  void reply.setCookie(nameOf(isSecure(config)), secret, { ...attributes(config), maxAge });
}

export function clearSessionCookie(reply: FastifyReply, config: Config): void {
  void reply.clearCookie(nameOf(isSecure(config)), attributes(config));
}
