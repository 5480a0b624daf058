import type { OperationResult, OperationsRequest } from "@evenhand/shared/http/reports";
import type { Finding } from "@evenhand/shared/finding";
import type { FieldProblem } from "@evenhand/shared/problem";
import { isBlind, type Place } from "@evenhand/record/blindness";
import { canonicalJson } from "@evenhand/record/canonical-json";
import { checkFinding } from "@evenhand/sheet/check-finding";
import { sha256Hex } from "../../platform/auth/secret.ts";
import { currentSheet } from "./report-document.ts";
import type { LockedReport } from "./report-lock.ts";

type Operation = OperationsRequest["operations"][number];

/** `body: null` is a finding that was removed: its revision goes on counting. */
export type StoredFinding = { revision: number; body: Finding | null; firstCommittedAt: Date };
export type KnownOperation = { report: string; hash: string; revision: number };
export type Change = { id: string; hash: string; revision: number };

export const placeKey = ({ item, position }: Place): string => `${item} ${position}`;

type Start = {
  report: LockedReport;
  now: Date;
  findings: Map<string, StoredFinding>;
  known: Map<string, KnownOperation>;
  /** What was shown of the car's statements to an inspection's firm; `null` for other reports: nobody is blind to those. */
  shown: readonly Place[] | null;
};

const refused = (id: string, problems: readonly FieldProblem[]): OperationResult => ({
  id,
  result: "refused",
  problems: [...problems],
});

/** Works out what operations do to the findings of a draft, one after the other. Reads and writes nothing. */
export class DraftEditor {
  readonly changes: Change[] = [];
  private readonly start: Start;
  private readonly changed = new Map<string, Place & { stored: StoredFinding }>();

  constructor(start: Start) {
    this.start = start;
  }

  apply(operation: Operation): OperationResult {
    const hash = sha256Hex(canonicalJson(operation));
    const known = this.start.known.get(operation.id);
    if (known !== undefined) return this.repeat(operation.id, known, hash);
    return operation.op === "set" ? this.set(operation, hash) : this.remove(operation, hash);
  }

  changedFindings(): ReadonlyMap<string, Place & { stored: StoredFinding }> {
    return this.changed;
  }

  private repeat(id: string, known: KnownOperation, hash: string): OperationResult {
    if (known.report === this.start.report.id && known.hash === hash)
      return { id, result: "duplicate", revision: known.revision };
    return refused(id, [{ at: "/id", reason: "This id was used for another operation. Make a new one." }]);
  }

  private set(operation: Extract<Operation, { op: "set" }>, hash: string): OperationResult {
    const { header, vehicle } = this.start.report;
    const check = checkFinding(operation.finding, { ...header, vehicle }, currentSheet);
    if (!check.ok) return refused(operation.id, check.problems);
    const current = this.start.findings.get(placeKey(check.finding));
    if (!isBase(current, operation.base)) return conflict(operation.id, current);
    const finding = this.judgeBlind(check.finding, current);
    const revision = this.store(operation.id, hash, check.finding, finding);
    return finding.blind === undefined
      ? { id: operation.id, result: "applied", revision }
      : { id: operation.id, result: "applied", revision, blind: finding.blind };
  }

  private remove(operation: Extract<Operation, { op: "remove" }>, hash: string): OperationResult {
    const current = this.start.findings.get(placeKey(operation));
    if (current === undefined || current.body === null || current.revision !== operation.base)
      return conflict(operation.id, current);
    return { id: operation.id, result: "applied", revision: this.store(operation.id, hash, operation, null) };
  }

  /** The service says whether it was blind, never the one who answers. */
  private judgeBlind({ blind: _claimed, ...finding }: Finding, current: StoredFinding | undefined): Finding {
    const { shown } = this.start;
    if (shown === null) return finding;
    const { item, position, answer } = finding;
    const before = current?.body ?? null;
    return { ...finding, blind: isBlind({ place: { item, position }, answer, shown, before }) };
  }

  private store(id: string, hash: string, { item, position }: Place, body: Finding | null): number {
    const current = this.start.findings.get(placeKey({ item, position }));
    const revision = (current?.revision ?? 0) + 1;
    const stored = { revision, body, firstCommittedAt: current?.firstCommittedAt ?? this.start.now };
    this.start.findings.set(placeKey({ item, position }), stored);
    this.start.known.set(id, { report: this.start.report.id, hash, revision });
    this.changed.set(placeKey({ item, position }), { item, position, stored });
    this.changes.push({ id, hash, revision });
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
