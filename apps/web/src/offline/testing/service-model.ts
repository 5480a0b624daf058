import type { Finding } from "@evenhand/shared/finding";
import type { Operation, OperationResult, OperationsAnswer } from "@evenhand/shared/http/reports";

interface Held {
  readonly finding: Finding | null;
  readonly revision: number;
}

/** What was put, as text, and by which device. */
interface Put {
  readonly text: string;
  readonly by: string;
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
  /** All that a place ever said: at its revision less one. */
  readonly said = new Map<string, Put[]>();
  /** The report's revision: one more with everything that is put. */
  revision = 1;
  private readonly done = new Map<string, number>();
  /** Places whose conflict the person has not settled: nothing of them may arrive. */
  readonly open = new Set<string>();

  put(place: string, finding: Finding | null, by = "elsewhere"): number {
    const revision = (this.held.get(place)?.revision ?? 0) + 1;
    this.held.set(place, { finding, revision });
    this.said.set(place, [...(this.said.get(place) ?? []), { text: JSON.stringify(finding), by }]);
    this.revision += 1;
    return revision;
  }

  private fits(place: string, { op, base }: Operation): boolean {
    const held = this.held.get(place);
    if (op === "remove") return held !== undefined && held.finding !== null && held.revision === base;
    return (base ?? 0) === (held?.revision ?? 0) || (held?.finding === null && (base ?? 0) === 0);
  }

  private apply(operation: Operation, by?: string): OperationResult {
    const { id } = operation;
    const place = placeOf(operation);
    if (this.open.has(place)) throw new Error("sent while the person had not said which of two stands");
    const known = this.done.get(id);
    if (known !== undefined) return { id, result: "duplicate", revision: known };
    if (!this.fits(place, operation)) {
      const held = this.held.get(place);
      return { id, result: "conflict", revision: held?.revision ?? 0, current: held?.finding ?? null };
    }
    const revision = this.put(place, operation.op === "set" ? operation.finding : null, by);
    this.done.set(id, revision);
    return { id, result: "applied", revision };
  }

  /** Does what is asked, over such a line. */
  answer(line: LineIs, operations: readonly Operation[], by?: string): OperationsAnswer {
    if (line === "down") throw new Error("no line");
    const results = operations.map((operation) => this.apply(operation, by));
    if (line === "lost") throw new Error("the answer was lost");
    return { revision: this.revision, results };
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
