import type { OperationResult, OperationsRequest, StoredHeader } from "@evenhand/shared/http/reports";
import type { Finding } from "@evenhand/shared/finding";
import type { FieldProblem } from "@evenhand/shared/problem";
import type { Vehicle } from "@evenhand/shared/report";
import { checkFinding } from "@evenhand/sheet/check-finding";
import { isBlind } from "../blindness/index.ts";
import { type Place, placeKey } from "../place/index.ts";
import { asOneLook, lookedAgain } from "../second-look/index.ts";
import { canonicalJson } from "../canonical-json/index.ts";
import { currentSheet } from "../report-document/index.ts";

type Operation = OperationsRequest["operations"][number];

/** `body: null` is a finding that was removed: its revision goes on counting. */
export type StoredFinding = { revision: number; body: Finding | null; firstCommittedAt: Date };
/** An operation done before, ever, on whichever report. */
export type KnownOperation = { report: string; hash: string; revision: number };
/** An operation done now. */
export type DoneOperation = { id: string; hash: string; revision: number };
export type ChangedFinding = Place & { readonly stored: StoredFinding };

/** What edits are made on. */
export type Draft = {
  /** `header`: what a finding may refer to. */
  readonly report: { readonly id: string; readonly header: StoredHeader; readonly vehicle: Vehicle };
  readonly now: Date;
  /** What stands at the places of the operations, by `placeKey`. */
  readonly findings: ReadonlyMap<string, StoredFinding>;
  /** By the operation's id. */
  readonly known: ReadonlyMap<string, KnownOperation>;
  /** What was shown of the car's statements to an inspection's firm; `null` for other reports: nobody is blind to those. */
  readonly shown: readonly Place[] | null;
  /** Places that were named to be looked at again, by `placeKey`. What stood there first is kept. */
  readonly again: ReadonlySet<string>;
  /** A hash of a text, in hexadecimal. */
  readonly hashOf: (text: string) => string;
};

export type DraftEdits = {
  /** One an operation, in their order. */
  readonly results: readonly OperationResult[];
  readonly done: readonly DoneOperation[];
  /** As each place stands afterwards, where something was done. */
  readonly changed: readonly ChangedFinding[];
};

/**
 * What operations do to the findings of a draft, one after the other: each at most once, ever; each refused by itself; none on top
 * of what its author has not seen. The draft given is left as it is.
 *
 * @example editDraft(draft, [{ id, op: "remove", item: "electrics.horn", position: "", base: 1 }]).results
 * // [{ id, result: "conflict", revision: 2, current: … }] where somebody has changed it since
 */
export function editDraft(draft: Draft, operations: readonly Operation[]): DraftEdits {
  const editor = new Editor(draft);
  const results = operations.map((operation) => editor.apply(operation));
  return { results, done: editor.done, changed: [...editor.changed.values()] };
}

const refused = (id: string, problems: readonly FieldProblem[]): OperationResult => ({
  id,
  result: "refused",
  problems: [...problems],
});

const firstStands: FieldProblem = {
  at: "",
  reason:
    "This was to be looked at again, so the first answer stays. Answer anew, or say that it was not seen.",
};

class Editor {
  readonly done: DoneOperation[] = [];
  readonly changed = new Map<string, ChangedFinding>();
  private readonly draft: Draft;
  private readonly findings: Map<string, StoredFinding>;
  private readonly known: Map<string, KnownOperation>;

  constructor(draft: Draft) {
    this.draft = draft;
    this.findings = new Map(draft.findings);
    this.known = new Map(draft.known);
  }

  apply(operation: Operation): OperationResult {
    const hash = this.draft.hashOf(canonicalJson(operation));
    const known = this.known.get(operation.id);
    if (known !== undefined) return this.repeat(operation.id, known, hash);
    return operation.op === "set" ? this.set(operation, hash) : this.remove(operation, hash);
  }

  private repeat(id: string, known: KnownOperation, hash: string): OperationResult {
    if (known.report === this.draft.report.id && known.hash === hash)
      return { id, result: "duplicate", revision: known.revision };
    return refused(id, [{ at: "/id", reason: "This id was used for another operation. Make a new one." }]);
  }

  private set(operation: Extract<Operation, { op: "set" }>, hash: string): OperationResult {
    const { header, vehicle } = this.draft.report;
    const check = checkFinding(operation.finding, { ...header, vehicle }, currentSheet);
    if (!check.ok) return refused(operation.id, check.problems);
    const current = this.findings.get(placeKey(check.finding));
    if (!isBase(current, operation.base)) return conflict(operation.id, current);
    const finding = this.judgeLook(this.judgeBlind(check.finding, current), current);
    const revision = this.store(operation.id, hash, check.finding, finding);
    return finding.blind === undefined
      ? { id: operation.id, result: "applied", revision }
      : { id: operation.id, result: "applied", revision, blind: finding.blind };
  }

  private remove(operation: Extract<Operation, { op: "remove" }>, hash: string): OperationResult {
    const current = this.findings.get(placeKey(operation));
    if (current === undefined || current.body === null || current.revision !== operation.base)
      return conflict(operation.id, current);
    if (this.draft.again.has(placeKey(operation))) return refused(operation.id, [firstStands]);
    return { id: operation.id, result: "applied", revision: this.store(operation.id, hash, operation, null) };
  }

  /** The service says whether it was a second look, and keeps what was answered first. */
  private judgeLook(finding: Finding, current: StoredFinding | undefined): Finding {
    const before = current?.body ?? null;
    return before !== null && this.draft.again.has(placeKey(finding))
      ? lookedAgain(before, finding)
      : asOneLook(finding);
  }

  /** The service says whether it was blind, never the one who answers. */
  private judgeBlind({ blind: _claimed, ...finding }: Finding, current: StoredFinding | undefined): Finding {
    const { shown } = this.draft;
    if (shown === null) return finding;
    const { item, position, answer } = finding;
    const before = current?.body ?? null;
    return { ...finding, blind: isBlind({ place: { item, position }, answer, shown, before }) };
  }

  private store(id: string, hash: string, { item, position }: Place, body: Finding | null): number {
    const current = this.findings.get(placeKey({ item, position }));
    const revision = (current?.revision ?? 0) + 1;
    const stored = { revision, body, firstCommittedAt: current?.firstCommittedAt ?? this.draft.now };
    this.findings.set(placeKey({ item, position }), stored);
    this.known.set(id, { report: this.draft.report.id, hash, revision });
    this.changed.set(placeKey({ item, position }), { item, position, stored });
    this.done.push({ id, hash, revision });
    return revision;
  }
}

/** `null` and 0 both say: I saw nothing there. */
const isBase = (current: StoredFinding | undefined, base: number | null): boolean => {
  const seen = base ?? 0;
  if (current === undefined) return seen === 0;
  return seen === current.revision || (current.body === null && seen === 0);
};

const conflict = (id: string, current: StoredFinding | undefined): OperationResult => ({
  id,
  result: "conflict",
  revision: current?.revision ?? 0,
  current: current?.body ?? null,
});
