import type { Comparison, Entry } from "@evenhand/shared/comparison";
import type { Matter } from "@evenhand/shared/matter";
import type { Reports } from "../src/headline/index.ts";
import { inWords } from "../src/in-words/index.ts";
import { matters } from "../src/matters/index.ts";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";

export const sheet = compileSheet(sheetVersion1);

/** Reports that say nothing: lines by themselves. */
export const silent: Reports = { a: { findings: [], scales: [] }, b: { findings: [], scales: [] }, sheet };

/** A claim found false and dangerous; `place` is item and position, as in `wheels.tread-depth@left-front`. */
export const line = (place: string, more: Partial<Entry> = {}): Entry => {
  const [item = "", position = ""] = place.split("@");
  return {
    item,
    position,
    atom: { of: "answer" },
    outcome: "differ",
    calls: { a: "good", b: "danger" },
    severity: "danger",
    marks: [],
    reason: "other-answer",
    direction: "stated-better",
    standing: "differs",
    firmness: { a: "asserted", b: "asserted" },
    finding: { a: 0, b: 0 },
    ...more,
  };
};

/** Claimed, and not seen. */
export const unseen = (place: string, more: Partial<Entry> = {}): Entry =>
  line(place, {
    outcome: "unseen",
    standing: "unseen",
    reason: "not-seen-no-tool",
    direction: "neither",
    calls: { a: "good", b: null },
    ...more,
  });

/** Neither claimed nor looked for. */
export const unasked = (place: string, more: Partial<Entry> = {}): Entry =>
  unseen(place, { finding: { a: null, b: null }, reason: "nobody", ...more });

/** Both say it is bad. */
export const admitted = (place: string, more: Partial<Entry> = {}): Entry =>
  line(place, { outcome: "agree", standing: "agreed-fault", marks: ["both-bad"], ...more });

export const comparisonOf = (
  entries: readonly Entry[],
  crossChecks: Comparison["crossChecks"] = [],
): Pick<Comparison, "entries" | "crossChecks"> => ({ entries: [...entries], crossChecks });

/** The matters of a comparison, each with its words. */
export const worded = (comparison: ReturnType<typeof comparisonOf>, reports: Reports): Matter[] =>
  matters(comparison, reports).map((matter) => inWords(matter, reports));

/** Kind, and place where it has one, of each matter, in order. */
export const namesOf = (found: readonly Pick<Matter, "kind" | "zone">[]): string[] =>
  found.map(({ kind, zone }) => (zone === null ? kind : `${kind}@${zone}`));
