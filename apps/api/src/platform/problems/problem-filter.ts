import { type ArgumentsHost, Catch, type ExceptionFilter, HttpException } from "@nestjs/common";
import type { ProblemCode } from "@evenhand/shared/http/problem-codes";
import type { FastifyReply, FastifyRequest } from "fastify";
import { ProblemError } from "./problem-error.ts";

const detailOf: Partial<Record<ProblemCode, string>> = {
  "malformed-request": "The request could not be read: the body must be one JSON value.",
  "not-found": "There is nothing at this address.",
  "method-not-allowed": "This address does not take this method.",
  "body-too-large": "The body is larger than this address takes.",
  "media-type-unsupported": "Send the body as application/json.",
  "timed-out": "The database took too long. Nothing was changed; try again.",
};

const byStatus: Readonly<Record<number, ProblemCode>> = {
  400: "malformed-request",
  404: "not-found",
  405: "method-not-allowed",
  413: "body-too-large",
  415: "media-type-unsupported",
};

const statusOf = (error: unknown): number | null => {
  if (error instanceof HttpException) return error.getStatus();
  if (typeof error !== "object" || error === null || !("statusCode" in error)) return null;
  return typeof error.statusCode === "number" ? error.statusCode : null;
};

/** PostgreSQL's code of a cancelled statement, wherever the error carries it. */
const isTimeout = (error: unknown): boolean =>
  error instanceof Error &&
  /statement timeout|57014|Query read timeout|timeout exceeded when trying to connect/.test(error.message);

export function toProblem(error: unknown): ProblemError | null {
  if (error instanceof ProblemError) return error;
  const code = isTimeout(error) ? "timed-out" : byStatus[statusOf(error) ?? 0];
  return code === undefined ? null : new ProblemError(code, detailOf[code] ?? "The request was refused.");
}

/** Every refusal and every failure as a problem document; never a stack. */
@Catch()
export class ProblemFilter implements ExceptionFilter {
  catch(error: unknown, host: ArgumentsHost): void {
    const http = host.switchToHttp();
    const [request, reply] = [http.getRequest<FastifyRequest>(), http.getResponse<FastifyReply>()];
    sendProblem(request, reply, toProblem(error) ?? failure(request, error));
  }
}

function failure(request: FastifyRequest, error: unknown): ProblemError {
  request.log.error({ err: error }, "failed");
  return new ProblemError(
    "internal-error",
    "The service failed; nothing was changed. Its log names this request.",
  );
}

export function sendProblem(request: FastifyRequest, reply: FastifyReply, problem: ProblemError): void {
  void reply
    .code(problem.status)
    .headers({ ...problem.more.headers })
    .header("cache-control", "no-store")
    .type("application/problem+json; charset=utf-8")
    .send(JSON.stringify(problem.toDocument(`/requests/${request.id}`)));
}
