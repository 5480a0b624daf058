import { FastifyAdapter } from "@nestjs/platform-fastify";
import type { FastifyReply } from "fastify";
import { toJsonText } from "./json-text.ts";

type Response = Parameters<FastifyAdapter["reply"]>[0];

const isReply = (response: Response): response is FastifyReply => "request" in response;

/**
 * Writes every answer of a handler out: its type, its entity tag, and that nobody on the way may keep it. Done where the framework
 * hands the answer over rather than in an interceptor, which would cost every read a chain of observables.
 */
export class AnswerAdapter extends FastifyAdapter {
  override reply(response: Response, body: unknown, status?: number): FastifyReply {
    if (body === undefined || !isReply(response)) return super.reply(response, body, status);
    if (status !== undefined) void response.code(status);
    const { text, etag } = toJsonText(body);
    void response.header("content-type", "application/json; charset=utf-8");
    void response.header("cache-control", "private, no-cache");
    if (etag !== null) void response.header("etag", `"${etag}"`);
    return response.send(text);
  }
}
