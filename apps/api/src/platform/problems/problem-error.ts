import { problemTable, problemType, type ProblemCode } from "@evenhand/shared/http/problem-codes";
import type { FieldProblem, Problem } from "@evenhand/shared/problem";

export type ProblemMore = {
  readonly problems?: readonly FieldProblem[];
  /** Members of its own that the problem's type has, as RFC 9457 allows. */
  readonly members?: Readonly<Record<string, unknown>>;
  readonly headers?: Readonly<Record<string, string>>;
};

/** The one way the service says no. `detail` is a sentence for a person, and says what would work. */
export class ProblemError extends Error {
  override readonly name = "ProblemError";
  readonly code: ProblemCode;
  readonly more: ProblemMore;
  constructor(code: ProblemCode, detail: string, more: ProblemMore = {}) {
    super(detail);
    this.code = code;
    this.more = more;
  }

  get status(): number {
    return problemTable[this.code].status;
  }

  /** As an RFC 9457 problem document. `instance` names the request in the log. */
  toDocument(instance: string): Problem {
    return {
      type: problemType(this.code),
      title: problemTable[this.code].title,
      status: this.status,
      detail: this.message,
      instance,
      ...(this.more.problems === undefined ? {} : { problems: [...this.more.problems] }),
      ...this.more.members,
    };
  }
}

/** Another's object and one that is not there look alike. */
export const notFound = (what: string): ProblemError =>
  new ProblemError("not-found", `There is no such ${what}, or it is not yours to see.`);

/** For what a query found or did not. */
export function found<T>(row: T | null | undefined, what: string): T {
  if (row === null || row === undefined) throw notFound(what);
  return row;
}
