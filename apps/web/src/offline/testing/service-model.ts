import type { Finding } from "@evenhand/shared/finding";
import type { Operation, OperationResult, OperationsAnswer } from "@evenhand/shared/http/reports";

interface Held {
  readonly finding: Finding | null;
  readonly revision: number;
}

/** How a line treats what is sent: `lost`: all of it is done, and the answer never arrives. */
export type LineIs = "up" | "down" | "lost";

const placeOf = (operation: Operation): string => {
  const { item, position } = operation.op === "set" ? operation.finding : operation;
  return `${item}@${position}`;
};

/** The service as far as a queue sees it: what it holds of a place by its revision, and each operation done once. */
export class ServiceModel {
  readonly held = new Map<string, Held>();
  /** All that a place ever said, as text. */
  readonly said = new Map<string, Set<string>>();
  private readonly done = new Map<string, number>();
  /** Places whose conflict the person has not settled: nothing of them may arrive. */
  readonly open = new Set<string>();

  put(place: string, finding: Finding | null): number {
    const revision = (this.held.get(place)?.revision ?? 0) + 1;
    this.held.set(place, { finding, revision });
    const said = this.said.get(place) ?? new Set();
    this.said.set(place, said.add(JSON.stringify(finding)));
    return revision;
  }

  private fits(place: string, { op, base }: Operation): boolean {
    const held = this.held.get(place);
    if (op === "remove") return held !== undefined && held.finding !== null && held.revision === base;
    return (base ?? 0) === (held?.revision ?? 0) || (held?.finding === null && (base ?? 0) === 0);
  }

  private apply(operation: Operation): OperationResult {
    const { id } = operation;
    const place = placeOf(operation);
    if (this.open.has(place)) throw new Error("sent while the person had not said which of two stands");
    const known = this.done.get(id);
    if (known !== undefined) return { id, result: "duplicate", revision: known };
    if (!this.fits(place, operation)) {
      const held = this.held.get(place);
      return { id, result: "conflict", revision: held?.revision ?? 0, current: held?.finding ?? null };
    }
    const revision = this.put(place, operation.op === "set" ? operation.finding : null);
    this.done.set(id, revision);
    return { id, result: "applied", revision };
  }

  /** Does what is asked, over such a line. */
  answer(line: LineIs, operations: readonly Operation[]): OperationsAnswer {
    if (line === "down") throw new Error("no line");
    const results = operations.map((operation) => this.apply(operation));
    if (line === "lost") throw new Error("the answer was lost");
    return { revision: 1, results };
  }

  /** The same for one device, which may send nothing of a place in conflict until the person has said which stands. */
  readonly over = (line: LineIs) => async (_: string, operations: readonly Operation[]) => {
    const answer = this.answer(line, operations);
    for (const [at, operation] of operations.entries()) {
      const result = answer.results[at];
      const agreed = result?.result === "conflict" && result.current === null && operation.op === "remove";
      if (result?.result === "conflict" && !agreed) this.open.add(placeOf(operation));
    }
    return answer;
  };
}
