import { STATUS_CODES } from "node:http";
import type { Socket } from "node:net";
import { problemTable, type ProblemCode, problemType } from "@evenhand/shared/http/problem-codes";
import type { Config } from "../config/index.ts";

/**
 * Headers are small: whoever has not sent them by then sends them slowly on purpose. Not sooner, since a crowd's headers that have
 * come also count as late while the service is too busy to read them.
 */
const longestHeadersMs = 60_000;
/** How often Node looks for requests that take too long to arrive. */
const oftenestMs = 250;
const seldomestMs = 5_000;

/**
 * How long a request may take to arrive and an answer to be fetched. A connection that drips costs a socket until then, and never
 * anybody's turn: nothing is done for a request before all of it is there.
 */
export function timeouts({ http: { requestTimeout }, database: { statementTimeout } }: Config) {
  return {
    requestTimeout,
    // Idle: also while the service works, so it is longer than any work is.
    connectionTimeout: requestTimeout + 2 * statementTimeout,
    http: {
      requestTimeout,
      headersTimeout: Math.min(longestHeadersMs, requestTimeout),
      connectionsCheckingInterval: Math.min(seldomestMs, Math.max(oftenestMs, requestTimeout / 4)),
    },
  };
}

const detailOf = {
  "request-too-slow":
    "The request took too long to arrive. Send it again, in smaller parts where the line is slow.",
  "headers-too-large": "The headers are larger than the service takes.",
  "malformed-request": "This is no HTTP request.",
} satisfies Partial<Record<ProblemCode, string>>;

const codeOf = (error: Error): keyof typeof detailOf => {
  const code = "code" in error ? error.code : "";
  if (code === "ERR_HTTP_REQUEST_TIMEOUT") return "request-too-slow";
  return code === "HPE_HEADER_OVERFLOW" ? "headers-too-large" : "malformed-request";
};

/** What never became a request is refused in the same form as the others, and its connection ends. */
export function refuseConnection(error: Error, socket: Socket): void {
  if (socket.destroyed || !socket.writable) return;
  const code = codeOf(error);
  const { status, title } = problemTable[code];
  const body = JSON.stringify({ type: problemType(code), title, status, detail: detailOf[code] });
  socket.end(
    `HTTP/1.1 ${status} ${STATUS_CODES[status]}\r\nContent-Type: application/problem+json; charset=utf-8\r\n` +
      `Content-Length: ${Buffer.byteLength(body)}\r\nCache-Control: no-store\r\nConnection: close\r\n\r\n${body}`,
  );
  socket.destroySoon();
}
