import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Comparison, CoverageRow } from "@evenhand/shared/comparison";
import type { Finding } from "@evenhand/shared/finding";
import type { GradeScale, Instrument, Report } from "@evenhand/shared/report";
import { arbitraryReports } from "../../testing/arbitrary-report.ts";
import { sheet } from "../../testing/small-reports.ts";
import { itemOf } from "../../testing/worse.ts";
import { analyze } from "./index.ts";

type Softer = { readonly name: string; readonly soften: (report: Report) => Report };

const eachFinding = (report: Report, soften: (finding: Finding) => Finding): Report => ({
  ...report,
  findings: report.findings.map(soften),
});

const twoWords: GradeScale = {
  id: "two",
  name: "Two words",
  grades: [
    { id: "worn", name: "worn" },
    { id: "fine", name: "fine" },
  ],
};
const COARSE: Readonly<Record<string | number, string>> = { "as-new": "fine", "light-wear": "fine" };

/** No better than the ordinary instrument at nothing, where a share of the reading alone would make it exact. */
const coarser = (item: string): Instrument[] => {
  const spec = itemOf(item).reading;
  if (spec === undefined) return [];
  const absolute = { value: spec.instrument.accuracy.absolute, unit: spec.unit };
  return [{ id: item, name: "a coarser instrument", accuracy: { absolute, share: 0.3 } }];
};

const softer: readonly Softer[] = [
  { name: "hedged", soften: (report) => eachFinding(report, (each) => ({ ...each, firmness: "hedged" })) },
  {
    name: "second-hand",
    soften: (report) => eachFinding(report, (each) => ({ ...each, firmness: "second-hand" })),
  },
  {
    name: "a coarser instrument",
    soften: (report) => ({
      ...eachFinding(report, (each) =>
        each.instrument === undefined ? each : { ...each, instrument: each.item },
      ),
      instruments: report.findings.flatMap(({ item, instrument }) =>
        instrument === undefined ? [] : coarser(item),
      ),
    }),
  },
  {
    name: "no instrument named",
    // Another named one may be worse than an ordinary one that nobody named.
    soften: (report) =>
      eachFinding(report, ({ instrument, ...each }) =>
        instrument === undefined || instrument === "ordinary" ? each : { ...each, instrument },
      ),
  },
  {
    name: "a wider scale",
    soften: (report) => ({
      ...eachFinding(report, (each) =>
        each.answer.kind === "grade" && each.answer.scale === "house"
          ? { ...each, answer: { ...each.answer, scale: "two", value: COARSE[each.answer.value] ?? "worn" } }
          : each,
      ),
      scales: [...report.scales, twoWords],
    }),
  },
  {
    name: "less denied",
    soften: (report) =>
      eachFinding(report, (each) =>
        each.answer.kind === "faults"
          ? {
              ...each,
              answer: {
                ...each.answer,
                denied: each.answer.denied === "all" ? [] : each.answer.denied.slice(1),
              },
            }
          : each,
      ),
  },
  {
    name: "faults without size and place",
    soften: (report) =>
      eachFinding(report, (each) =>
        each.answer.kind === "faults"
          ? { ...each, answer: { ...each.answer, found: each.answer.found.map(({ kind }) => ({ kind })) } }
          : each,
      ),
  },
  {
    name: "percentages in steps of a hundred",
    soften: (report) => ({
      ...report,
      scales: report.scales.map((scale) => (scale.id === "percent" ? { ...scale, step: 100 } : scale)),
    }),
  },
  {
    name: "not known",
    soften: (report) =>
      eachFinding(report, (each) => {
        const { kind } = each.answer;
        if (kind === "choice") return { ...each, answer: { kind, option: "not-known" } };
        return kind === "working" || kind === "presence"
          ? { ...each, answer: { kind, value: "not-known" } }
          : each;
      }),
  },
  {
    name: "not seen",
    soften: (report) =>
      eachFinding(report, (each) => ({ ...each, answer: { kind: "not-seen", reason: "no-time" } })),
  },
  { name: "less said", soften: (report) => ({ ...report, findings: report.findings.slice(1) }) },
];

/** What was found, atom by atom, that agrees. */
const agreed = ({ entries }: Comparison): string[] =>
  entries
    .filter(({ outcome, finding }) => outcome === "agree" && finding.a !== null && finding.b !== null)
    .map(({ item, position, atom }) => {
      if (atom.of === "answer") return `${item} ${position}`;
      return atom.of === "fault"
        ? `${item} ${position} ${atom.kind} ${String(atom.b)}`
        : `${item} ${position} no ${atom.kind}`;
    });

/** Places that have a line to be read, and are not folded into what was seen and is sound; what only a seller can claim apart. */
const listed = ({ entries }: Comparison): string[] => [
  ...new Set(
    entries
      .filter(({ coverageOnly, item }) => coverageOnly !== true && itemOf(item).asked !== "statement")
      .map(({ item, position }) => `${item} ${position}`),
  ),
];

const counts = ({ coverage }: Comparison, of: keyof Pick<CoverageRow, "stated" | "seen" | "statedAndSeen">) =>
  [...coverage.bySeverity, ...coverage.bySection, coverage.whole].map((row) => row[of]);

const gains = (before: Comparison, after: Comparison): unknown[] => {
  const known = agreed(before);
  const covered = (["stated", "seen", "statedAndSeen"] as const).filter((of) => {
    const [was, is] = [counts(before, of), counts(after, of)];
    return is.some((count, index) => count > (was[index] ?? 0));
  });
  return [...agreed(after).filter((key) => !known.includes(key)), ...covered];
};

const softened = fc.record({ reports: arbitraryReports(8), way: fc.constantFrom(...softer) });

describe("a softer report", () => {
  it("agrees no more and covers no more, whoever speaks softly, and a softer inspection silences no line", () => {
    fc.assert(
      fc.property(softened, ({ reports: { a, b }, way: { soften } }) => {
        const before = analyze(a, b, sheet);
        expect(gains(before, analyze(soften(a), b, sheet))).toEqual([]);
        const after = analyze(a, soften(b), sheet);
        expect(gains(before, after)).toEqual([]);
        const still = new Set(listed(after));
        expect(listed(before).filter((place) => !still.has(place))).toEqual([]);
      }),
      { numRuns: 2500 },
    );
  });
});
