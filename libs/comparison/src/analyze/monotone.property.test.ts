import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Comparison, Entry } from "@evenhand/shared/comparison";
import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import { SEVERITIES, severityRank } from "@evenhand/shared/severity";
import { roadGate } from "@evenhand/handbook/road-gate";
import { arbitraryReports } from "../../testing/arbitrary-report.ts";
import { sheet } from "../../testing/small-reports.ts";
import { itemOf, worseThan } from "../../testing/worse.ts";
import { analyze } from "./index.ts";

const runs = { numRuns: 1000 };
const keyOf = ({ item, position }: Pick<Finding, "item" | "position">): string => `${item} ${position}`;
const rank = (severity: Entry["severity"]): number =>
  severity === null ? SEVERITIES.length : severityRank(severity);

const linesAt = ({ entries }: Comparison, key: string): Entry[] =>
  entries.filter((entry) => keyOf(entry) === key);
/** The gravest line of a place: 0 is halt, and past every severity where nothing is wrong. */
const gravestAt = (comparison: Comparison, key: string): number =>
  Math.min(...linesAt(comparison, key).map(({ severity }) => rank(severity)));
/** Lines that stand before the first of a place; Infinity where it is not in the order. */
const graverBefore = ({ order, entries }: Comparison, key: string): number => {
  const at = order.findIndex((index) => keyOf(entries[index] ?? { item: "", position: "" }) === key);
  return at < 0 ? Number.POSITIVE_INFINITY : rank(entries[order[at] ?? -1]?.severity ?? null);
};

/** Read better than stated, whatever a rule makes of it: miles that fell by ten speak against the statement, and less by nine. */
const readBetter = ({ item, figures }: Entry): boolean => {
  if (figures?.of !== "reading") return false;
  const betterIs = itemOf(item).reading?.betterIs;
  return betterIs === "lower" ? figures.difference > 0 : betterIs === "higher" && figures.difference < 0;
};

/** Found better than stated, or perhaps a slip of the pen: the statement is in question there, and not the car. */
const isOfTheStatement = (line: Entry): boolean =>
  line.direction === "found-better" || line.marks.includes("perhaps-unit") || readBetter(line);

const replaced = (report: Report, index: number, finding: Finding): Report => ({
  ...report,
  findings: report.findings.with(index, finding),
});

/** Two reports, and the same with one finding of the second answered worse. */
const withWorse = arbitraryReports(5)
  .map(({ a, b }) => ({
    a,
    b,
    worse: b.findings.flatMap((finding, index) =>
      worseThan(finding.answer, itemOf(finding.item)).map((answer) => ({ index, answer })),
    ),
  }))
  .filter(({ worse }) => worse.length > 0)
  .chain(({ a, b, worse }) =>
    fc.record({ a: fc.constant(a), b: fc.constant(b), one: fc.constantFrom(...worse) }),
  );

describe("a worse found answer", () => {
  it("is never milder, never later in the order, and never opens the gate to the road", () => {
    fc.assert(
      fc.property(withWorse, ({ a, b, one: { index, answer } }) => {
        const finding = b.findings[index];
        if (finding === undefined) throw new Error("no finding");
        const other = replaced(b, index, { ...finding, answer });
        const [before, after] = [analyze(a, b, sheet), analyze(a, other, sheet)];
        const key = keyOf(finding);
        const blocks = (report: Report) => roadGate(report, sheet).map(keyOf);
        expect(blocks(other)).toEqual(expect.arrayContaining(blocks(b)));
        if (linesAt(before, key).some(isOfTheStatement)) return;
        expect(gravestAt(after, key)).toBeLessThanOrEqual(gravestAt(before, key));
        expect(graverBefore(after, key)).toBeLessThanOrEqual(graverBefore(before, key));
      }),
      runs,
    );
  });
});
