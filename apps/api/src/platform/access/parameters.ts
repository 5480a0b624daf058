import { createParamDecorator, type ExecutionContext } from "@nestjs/common";
import { ObjectId } from "@evenhand/shared/identifier";
import type { FastifyRequest } from "fastify";
import { Actor } from "../auth/actor.ts";
import { notFound, ProblemError } from "../problems/problem-error.ts";

type Request = FastifyRequest & { user?: unknown };
const requestOf = (context: ExecutionContext) => context.switchToHttp().getRequest<Request>();

/** Who asks. The guard has put it there. */
export const By = createParamDecorator((_: unknown, context: ExecutionContext): Actor => {
  const { user } = requestOf(context);
  if (!(user instanceof Actor)) throw new Error("The route is open to people who are not signed in.");
  return user;
});

const parameter = (context: ExecutionContext, name: string): string => {
  const { params } = requestOf(context);
  const value: unknown =
    typeof params === "object" && params !== null ? Reflect.get(params, name) : undefined;
  return typeof value === "string" ? value : "";
};

/** The object's id in the path. What is no id names nothing. */
export const Id = createParamDecorator((_: unknown, context: ExecutionContext): string => {
  const parsed = ObjectId.safeParse(parameter(context, "id"));
  if (!parsed.success) throw notFound("object");
  return parsed.data.toLowerCase();
});

/** The secret in the path of an invitation. */
export const Secret = createParamDecorator((_: unknown, context: ExecutionContext): string =>
  parameter(context, "token"),
);

/**
 * The revision the change is meant for, from `If-Match: "7"`.
 *
 * @throws ProblemError `if-match-missing`, or `malformed-request` where it is no revision
 */
export function readIfMatch(header: string | undefined): number {
  if (header === undefined)
    throw new ProblemError("if-match-missing", 'Send If-Match with the revision you saw, such as "3".');
  const digits = /^"(\d{1,9})"$/.exec(header.trim())?.[1];
  if (digits === undefined)
    throw new ProblemError("malformed-request", 'If-Match must be one revision in quotes, such as "3".', {
      problems: [{ at: "header/if-match", reason: 'one revision in quotes, such as "3"' }],
    });
  return Number(digits);
}

export const IfMatch = createParamDecorator((_: unknown, context: ExecutionContext): number =>
  readIfMatch(requestOf(context).headers["if-match"]),
);

/** Refuses a change meant for another revision. */
export function checkRevision(now: number, meant: number): void {
  if (now === meant) return;
  throw new ProblemError(
    "revision-moved",
    `It is at revision ${now} by now, not ${meant}. Read it again and decide anew.`,
    {
      members: { revision: now },
    },
  );
}
