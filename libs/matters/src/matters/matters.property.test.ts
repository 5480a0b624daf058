import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Entry } from "@evenhand/shared/comparison";
import { Matter } from "@evenhand/shared/matter";
import { SEVERITIES, isBadCall, isDecisive } from "@evenhand/shared/severity";
import { comparisonOf, line, sheet, silent } from "../../testing/lines.ts";
import { inWords } from "../in-words/index.ts";
import { matters } from "./index.ts";

const places = [...sheet.items.values()].flatMap(({ item, positionSet }) =>
  (positionSet?.positions.map(({ id }) => id) ?? [""]).map((position) => `${item.id}@${position}`),
);

/** A line of any outcome, as grave as any. */
const anyLine: fc.Arbitrary<Entry> = fc
  .record({
    place: fc.constantFrom(...places),
    outcome: fc.constantFrom(
      "agree",
      "consistent",
      "doubtful",
      "differ",
      "unseen",
      "unstated",
      "incomparable",
    ),
    severity: fc.constantFrom(...SEVERITIES, null),
    mark: fc.constantFrom("both-bad", "by-figures", "no-yardstick", "perhaps-unit", "hedged"),
    asked: fc.boolean(),
    bad: fc.boolean(),
    kept: fc.boolean(),
  } as const)
  .map(({ place, outcome, severity, mark, asked, bad, kept }) =>
    line(place, {
      outcome,
      severity,
      marks: [mark],
      calls: { a: "good", b: bad && severity !== null ? severity : "good" },
      finding: { a: asked ? 0 : null, b: outcome === "unseen" ? null : 0 },
      reason: kept ? "not-seen-not-permitted" : "other-answer",
      standing: mark === "both-bad" ? "agreed-fault" : "differs",
    }),
  );

const fewOrMany = fc.oneof(
  fc.array(anyLine, { maxLength: 15 }),
  fc.array(anyLine, { minLength: 40, maxLength: 250 }),
);

const SPOKEN: readonly string[] = ["differ", "doubtful", "unstated", "unseen"];

const mustStand = ({ severity, outcome, marks, calls }: Entry): boolean =>
  isDecisive(severity) && (SPOKEN.includes(outcome) || marks.includes("both-bad") || isBadCall(calls.b));

/** The same line with the sides exchanged. */
const exchanged = (entry: Entry): Entry => ({
  ...entry,
  finding: { a: entry.finding.b, b: entry.finding.a },
  calls: { a: entry.calls.b, b: entry.calls.a },
});
/** A line of which both spoke, and not alike. */
const parted = anyLine.filter(
  ({ outcome, finding }) => ["differ", "doubtful"].includes(outcome) && finding.a !== null,
);
/** In which matter each line stands. */
const kindsOf = (entries: readonly Entry[]): (string | undefined)[] => {
  const found = matters(comparisonOf([...entries]), silent);
  return entries.map((_, index) => {
    const matter = found.find(({ lines }) => lines.includes(index));
    return matter === undefined ? undefined : `${matter.kind}@${matter.zone} ${matter.severity}`;
  });
};

describe("matters of any comparison", () => {
  it("hold every line of halt, danger and worth exactly once, and are never more than fifteen", () => {
    fc.assert(
      fc.property(fewOrMany, (entries) => {
        const found = matters(comparisonOf(entries), silent);
        const held = found.flatMap(({ lines }) => lines);
        expect(new Set(held).size).toBe(held.length);
        const wanted = entries.flatMap((entry, index) => (mustStand(entry) ? [index] : []));
        expect(wanted.filter((index) => !held.includes(index))).toEqual([]);
        expect(found.length).toBeLessThanOrEqual(15);
        const names = found.map(({ kind, zone }) => `${kind}@${zone}`);
        expect(new Set(names).size).toBe(names.length);
      }),
      { numRuns: 1000 },
    );
  });

  it("are the same for the same lines, as the contract has them, each as grave as its worst line", () => {
    fc.assert(
      fc.property(fewOrMany, (entries) => {
        const found = matters(comparisonOf(entries), silent);
        expect(matters(comparisonOf(entries), silent)).toEqual(found);
        for (const matter of found) {
          Matter.parse(inWords(matter, silent));
          const ranks = matter.lines.map((index) => SEVERITIES.indexOf(entries[index]?.severity ?? "small"));
          expect(SEVERITIES.indexOf(matter.severity)).toBe(Math.min(...ranks));
        }
      }),
      { numRuns: 1000 },
    );
  });

  it("are of the same things with the sides exchanged, where both spoke and parted", () => {
    fc.assert(
      fc.property(fc.array(parted, { maxLength: 10 }), (entries) => {
        expect(kindsOf(entries.map(exchanged))).toEqual(kindsOf(entries));
      }),
      { numRuns: 1000 },
    );
  });
});
