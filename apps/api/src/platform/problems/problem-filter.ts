import { type ArgumentsHost, Catch, type ExceptionFilter, HttpException } from "@nestjs/common";
import { type ProblemCode, problemTable } from "@evenhand/shared/http/problem-codes";
import type { FastifyReply, FastifyRequest } from "fastify";
import { whatTheDatabaseSaid } from "../database/database-errors.ts";
import { noSuchRoute } from "./no-such-route.ts";
import { ProblemError } from "./problem-error.ts";

const detailOf: Partial<Record<ProblemCode, string>> = {
  "malformed-request": "The request could not be read: the body must be one JSON value.",
  "not-found": "There is nothing at this address.",
  "method-not-allowed": "This address does not take this method.",
  "media-type-unsupported": "Send the body as application/json.",
  "timed-out": "The database took too long. Look whether it was done before you try again.",
  "database-away": "The database does not answer. Ask again in a few seconds.",
  "came-second":
    "Another request changed the same thing at the same moment, and this one changed nothing. Read it again and decide anew.",
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

const saidByDatabase = { away: "database-away", "too-slow": "timed-out", overtaken: "came-second" } as const;

function codeOf(error: unknown): ProblemCode | undefined {
  const said = whatTheDatabaseSaid(error);
  return said === null ? byStatus[statusOf(error) ?? 0] : saidByDatabase[said];
}

export function toProblem(error: unknown): ProblemError | null {
  if (error instanceof ProblemError) return error;
  const code = codeOf(error);
  if (code === undefined) return null;
  const unread =
    code === "malformed-request"
      ? { problems: [{ at: "", reason: "one JSON value, and nothing after it" }] }
      : {};
  const later = problemTable[code].status === 503 ? { headers: { "retry-after": "5" } } : {};
  return new ProblemError(code, detailOf[code] ?? "The request was refused.", { ...unread, ...later });
}

/** Every refusal and every failure as a problem document; never a stack. */
@Catch()
export class ProblemFilter implements ExceptionFilter {
  catch(error: unknown, host: ArgumentsHost): void {
    const http = host.switchToHttp();
    const [request, reply] = [http.getRequest<FastifyRequest>(), http.getResponse<FastifyReply>()];
    const problem = request.is404 ? noSuchRoute(request) : toProblem(error);
    const said = problem?.code === "body-too-large" ? tooLarge(request) : problem;
    sendProblem(request, reply, said ?? failure(request, error));
  }
}

function tooLarge({ routeOptions: { bodyLimit } }: FastifyRequest): ProblemError {
  const most = bodyLimit < 1024 ? `${bodyLimit} bytes` : `${Math.floor(bodyLimit / 1024)} KiB`;
  return new ProblemError(
    "body-too-large",
    `This address takes bodies of at most ${most}. Nothing of it was read; send less at once.`,
  );
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
