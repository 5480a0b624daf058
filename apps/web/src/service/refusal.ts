import type { Problem } from "@evenhand/shared/problem";

/** The service said no, or could not be asked. It carries the problem document: what is wrong and what would work. */
export class Refusal extends Error {
  readonly problem: Problem;

  constructor(problem: Problem, options?: ErrorOptions) {
    super(problem.detail, options);
    this.name = "Refusal";
    this.problem = problem;
  }
}

/** What the service says of one field, to stand at that field. */
export const reasonAt = (error: unknown, at: string): string | undefined =>
  error instanceof Refusal ? error.problem.problems?.find((problem) => problem.at === at)?.reason : undefined;

/** Somebody came between: what stands now is another revision. */
export const isMoved = (error: unknown): boolean =>
  error instanceof Refusal && (error.problem.status === 412 || error.problem.status === 409);

/** No answer at all; status 0 tells it from anything the service says. */
export const unreachable: Problem = { type: "unreachable", title: "", status: 0, detail: "" };

const isProblem = (value: unknown): value is Problem =>
  typeof value === "object" && value !== null && "type" in value && "status" in value && "detail" in value;

export const problemFrom = async (response: Response): Promise<Problem> => {
  const text = await response.text();
  const parsed: unknown = text.startsWith("{") ? JSON.parse(text) : undefined;
  if (isProblem(parsed)) return parsed;
  return { type: "unreachable", title: "", status: response.status, detail: "" };
};
