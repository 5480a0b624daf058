import { FastifyAdapter } from "@nestjs/platform-fastify";
import type { FastifyReply } from "fastify";
import { FileAnswer } from "./file-answer.ts";
import { toJsonText } from "./json-text.ts";

type Response = Parameters<FastifyAdapter["reply"]>[0];

const isReply = (response: Response): response is FastifyReply => "request" in response;

/** Shown where the browser can, kept under its name where it is kept. */
function sendFile(response: FastifyReply, file: FileAnswer): FastifyReply {
  const { type, name, etag, bytes } = file;
  void response.header("content-type", type);
  void response.header("content-disposition", `${file.isKept ? "attachment" : "inline"}; filename="${name}"`);
  void response.header("x-content-type-options", "nosniff");
  if (file.isShut) void response.header("content-security-policy", "sandbox; default-src 'none'");
  void response.header("etag", `"${etag}"`);
  return response.send(bytes);
}

/**
 * Writes every answer of a handler out: its type, its entity tag, and that nobody on the way may keep it. Done where the framework
 * hands the answer over rather than in an interceptor, which would cost every read a chain of observables.
 */
export class AnswerAdapter extends FastifyAdapter {
  override reply(response: Response, body: unknown, status?: number): FastifyReply {
    if (body === undefined || !isReply(response)) return super.reply(response, body, status);
    if (status !== undefined) void response.code(status);
    void response.header("cache-control", "private, no-cache");
    if (body instanceof FileAnswer) return sendFile(response, body);
    const { text, etag } = toJsonText(body);
    void response.header("content-type", "application/json; charset=utf-8");
    if (etag !== null) void response.header("etag", `"${etag}"`);
    return response.send(text);
  }
}
