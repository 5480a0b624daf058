import { gzip } from "node:zlib";
import type { NestFastifyApplication } from "@nestjs/platform-fastify";
import type { FastifyReply, FastifyRequest } from "fastify";
import { isKeptPlain } from "./json-text.ts";

/** Below this a packet holds it anyway. */
const LEAST_BYTES = 1_400;

/** By the very bytes: as long as a stored document is kept in memory, so is its compressed form, and no longer. */
const compressed = new WeakMap<Uint8Array, Buffer>();

const acceptsGzip = ({ headers }: FastifyRequest): boolean =>
  /(^|[,\s])gzip(?!\s*;\s*q=0(\.0*)?\s*(,|$))/.test(headers["accept-encoding"] ?? "");

/** The reader has it already: the same entity tag, whether strong or weak. */
function isKnown({ headers }: FastifyRequest, etag: unknown): boolean {
  const known = headers["if-none-match"];
  if (typeof etag !== "string" || known === undefined) return false;
  return known.split(",").some((each) => each.trim().replace(/^W\//, "") === etag);
}

/** Pictures and films are as small as they get. */
const isPressed = (reply: FastifyReply): boolean =>
  /^(image|video)\//.test(String(reply.getHeader("content-type")));

type Done = (error?: Error | null, payload?: unknown) => void;

function sendCompressed(reply: FastifyReply, etag: unknown, bytes: Buffer, done: Done): void {
  void reply.header("content-encoding", "gzip").header("content-length", bytes.byteLength);
  // Compressed bytes are another representation of the same document.
  if (typeof etag === "string") void reply.header("etag", `W/${etag}`);
  done(null, bytes);
}

/**
 * Stored documents, which are handed out as bytes: compressed once for whoever takes that, and not sent again to whoever has
 * them. Who may read one was asked before; they hold no secret that a guesser could mix words into.
 */
export function registerStoredAnswers(app: NestFastifyApplication): void {
  const fastify = app.getHttpAdapter().getInstance();
  fastify.addHook("onSend", (request: FastifyRequest, reply: FastifyReply, payload: unknown, done: Done) => {
    if (!(payload instanceof Uint8Array) || isKeptPlain(payload) || reply.statusCode !== 200)
      return done(null, payload);
    const etag = reply.getHeader("etag");
    void reply.header("vary", "accept-encoding");
    if (isKnown(request, etag)) {
      void reply.code(304).removeHeader("content-type").removeHeader("content-length");
      return done(null, null);
    }
    if (payload.byteLength < LEAST_BYTES || !acceptsGzip(request) || isPressed(reply))
      return done(null, payload);
    const there = compressed.get(payload);
    if (there !== undefined) return sendCompressed(reply, etag, there, done);
    gzip(payload, (error, bytes) => {
      if (error !== null) return done(error);
      compressed.set(payload, bytes);
      sendCompressed(reply, etag, bytes, done);
    });
  });
}
