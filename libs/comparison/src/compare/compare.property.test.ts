import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Answer } from "@evenhand/shared/answer";
import type { Entry } from "@evenhand/shared/comparison";
import type { Report } from "@evenhand/shared/report";
import { checkReport } from "@evenhand/sheet/check-report";
import { applicablePlaces } from "@evenhand/sheet/expand";
import { arbitraryReports } from "../../testing/arbitrary-report.ts";
import { sheet } from "../../testing/small-reports.ts";
import { inOtherUnits } from "../../testing/ways-of-writing.ts";
import { coversKind } from "../fault-stages/index.ts";
import { isClaim } from "../silence/index.ts";
import { compare } from "./index.ts";

const runs = { numRuns: 1000 };
/** The entries of what either side answered; the hundreds of silent ones are all alike. */
const entriesOf = (a: Report, b: Report): Entry[] =>
  compare(a, b, sheet).entries.filter(({ finding }) => finding.a !== null || finding.b !== null);
const keyOf = ({ item, position }: { item: string; position: string }): string => `${item} ${position}`;
/** "Not known" claims nothing, and not fitted has a table of its own. */
const wasSeen = (report: Report, index: number | null): boolean =>
  index !== null && isClaim(report.findings[index]) && report.findings[index]?.answer.kind !== "not-fitted";

const withoutFinding = (entry: Entry): object => ({ ...entry, finding: null });
const withoutFaultIndexes = ({ atom, ...rest }: Entry) => ({
  ...rest,
  atom: atom.of === "fault" ? { kind: atom.kind, spot: atom.spot } : atom,
});
const copy = (report: Report): Report => structuredClone(report);

const shuffled = (report: Report): fc.Arbitrary<Report> =>
  fc
    .shuffledSubarray(report.findings, { minLength: report.findings.length })
    .map((findings) => ({ ...report, findings }));

describe("reports the tests make", () => {
  it("are reports the sheet accepts", () => {
    fc.assert(
      fc.property(arbitraryReports(), ({ a, b }) => {
        expect(checkReport(a, sheet.sheet)).toMatchObject({ ok: true });
        expect(checkReport(b, sheet.sheet)).toMatchObject({ ok: true });
      }),
      { numRuns: 200 },
    );
  });
});

describe("purity", () => {
  it("gives the same bytes for the same input", () => {
    fc.assert(
      fc.property(arbitraryReports(), ({ a, b }) => {
        expect(JSON.stringify(entriesOf(copy(a), copy(b)))).toBe(JSON.stringify(entriesOf(a, b)));
      }),
      runs,
    );
  });

  it("does not care for the order of findings", () => {
    const pair = arbitraryReports().chain(({ a, b }) =>
      fc.record({ a: fc.constant(a), b: fc.constant(b), otherA: shuffled(a), otherB: shuffled(b) }),
    );
    fc.assert(
      fc.property(pair, ({ a, b, otherA, otherB }) => {
        expect(entriesOf(otherA, otherB).map(withoutFinding)).toEqual(entriesOf(a, b).map(withoutFinding));
      }),
      runs,
    );
  });
});

/** The faults of every answer in another order. */
const withFaultsReversed = (report: Report): Report => ({
  ...report,
  findings: report.findings.map((finding) =>
    finding.answer.kind === "faults"
      ? { ...finding, answer: { ...finding.answer, found: finding.answer.found.toReversed() } }
      : finding,
  ),
});

describe("the order of faults in an answer", () => {
  it("changes nothing but the indexes that name them", () => {
    fc.assert(
      fc.property(arbitraryReports(), ({ a, b }) => {
        const reversed = entriesOf(withFaultsReversed(a), withFaultsReversed(b));
        expect(reversed.map(withoutFaultIndexes)).toEqual(entriesOf(a, b).map(withoutFaultIndexes));
      }),
      runs,
    );
  });
});

const MIRROR = {
  "stated-better": "found-better",
  "found-better": "stated-better",
  neither: "neither",
} as const;

const bothSaw =
  (a: Report, b: Report) =>
  (entry: Entry): boolean =>
    wasSeen(a, entry.finding.a) && wasSeen(b, entry.finding.b);

/** What was disclosed and found better accuses nobody: these exchange by a table of their own. */
const ONE_WAY: ReadonlySet<string> = new Set([
  "opposite-calls",
  "opposite-calls-unsure",
  "changed-between-days",
  "changed-bad-between-days",
  "own-visit",
]);

const isSeveral = ({ item }: Entry): boolean => sheet.items.get(item)?.item.choice?.several === true;
/** Faults, denials and lists of several too: what was disclosed beyond what was found agrees. */
const hasBothSides = (entry: Entry): boolean => entry.atom.of === "answer" && !isSeveral(entry);

/** Readings whose limits the two sides pass differently, and what drifts, by place. */
const oneWay = (entries: readonly Entry[]): Set<string> =>
  new Set(
    entries
      .filter(
        ({ reason, limits = [] }) =>
          ONE_WAY.has(reason) || limits.some(({ a, b }) => a !== null && b !== null && a.plain !== b.plain),
      )
      .map(keyOf),
  );

const signed = ({ figures }: Entry): number => {
  if (figures?.of === "reading") return figures.difference;
  return figures?.of === "grade" ? figures.steps : 0;
};

/** What an entry says, in the words of the exchange: its place, the atoms of each side, outcome, direction, figure. */
const row = (entry: Entry): unknown[] => {
  const { atom, outcome, direction } = entry;
  const sides = atom.of === "fault" ? [atom.a, atom.b] : [];
  return [keyOf(entry), sides, outcome, direction, signed(entry)];
};

const mirroredRow = (entry: Entry): unknown[] => {
  const { atom, outcome, direction } = entry;
  const sides = atom.of === "fault" ? [atom.b, atom.a] : [];
  return [keyOf(entry), sides, outcome, MIRROR[direction], 0 - signed(entry)];
};

const sorted = (rows: readonly unknown[][]): string[] => rows.map((one) => JSON.stringify(one)).sort();

describe("swap", () => {
  it("mirrors difference and direction and keeps the outcome of what both answered", () => {
    fc.assert(
      fc.property(arbitraryReports(), ({ a, b }) => {
        const [all, others] = [entriesOf(a, b), entriesOf(b, a)];
        const excepted = new Set([...oneWay(all), ...oneWay(others)]);
        const isMirrored = (entry: Entry) => hasBothSides(entry) && !excepted.has(keyOf(entry));
        const there = all.filter(bothSaw(a, b)).filter(isMirrored);
        const back = others.filter(bothSaw(b, a)).filter(isMirrored);
        expect(sorted(back.map(row))).toEqual(sorted(there.map(mirroredRow)));
      }),
      runs,
    );
  });
});

describe("units", () => {
  it("change no outcome, and figures by no more than 1e-9 of δ", () => {
    fc.assert(
      fc.property(arbitraryReports(), fc.nat(50), fc.nat(50), ({ a, b }, pickA, pickB) => {
        const there = entriesOf(a, b);
        for (const [index, entry] of entriesOf(inOtherUnits(a, pickA), inOtherUnits(b, pickB)).entries()) {
          const { outcome, direction, standing, figures, marks } = there[index] ?? entry;
          // Whether the unit slipped hangs on the digits that were written.
          if (marks.includes("perhaps-unit") || entry.marks.includes("perhaps-unit")) continue;
          expect(entry).toMatchObject({ outcome, direction, standing });
          if (figures?.of !== "reading" || entry.figures?.of !== "reading") continue;
          const most = 1e-9 * figures.delta;
          expect(Math.abs(entry.figures.difference - figures.difference)).toBeLessThanOrEqual(most);
          expect(
            Math.abs(entry.figures.expandedUncertainty - figures.expandedUncertainty),
          ).toBeLessThanOrEqual(most);
        }
      }),
      runs,
    );
  });
});

describe("identity", () => {
  it("a report against itself only agrees, is unseen, or is too coarse", () => {
    fc.assert(
      fc.property(arbitraryReports(), ({ a, b }) => {
        for (const report of [a, b]) {
          for (const { outcome, coverageOnly } of entriesOf(report, report)) {
            expect(["agree", "unseen", "consistent"]).toContain(outcome);
            expect(coverageOnly).toBeUndefined();
          }
        }
      }),
      runs,
    );
  });
});

/** The atoms of an answer by name. */
const atomsOf = (answer: Answer): string[] => {
  if (answer.kind !== "faults") return ["answer"];
  const denied = answer.denied === "all" ? ["all"] : Array.from(new Set(answer.denied));
  return [...answer.found.map((_, index) => `fault ${index}`), ...denied.map((kind) => `denial ${kind}`)];
};

const stages = { kinds: new Map(sheet.sheet.faultKinds.map((kind) => [kind.id, kind])) };
const FITTED: ReadonlySet<string> = new Set(["not-fitted-found", "fitted-found"]);
const CONTRADICTS = { a: "denied-found", b: "disclosed-not-found" } as const;

/** Entries that speak of an atom first: its own, or for a denial that a fault contradicts, the first such fault's. */
const primaryEntries = (entries: Entry[], side: "a" | "b", name: string): Entry[] => {
  const own = entries.filter(({ atom, reason }) => {
    // That there is none speaks of everything said of it.
    if (FITTED.has(reason)) return true;
    if (atom.of === "answer") return name === "answer";
    if (atom.of === "fault") return atom[side] !== undefined && name === `fault ${atom[side]}`;
    return (atom.by === side || atom.by === "both") && name === `denial ${atom.kind}`;
  });
  if (!name.startsWith("denial ")) return own;
  const kind = name.slice("denial ".length);
  const contradicting = entries.filter(
    ({ reason, atom }) =>
      // Left taken for right speaks of the denial on either side as the fault it was did.
      (reason === CONTRADICTS[side] || reason === "perhaps-other-side") &&
      atom.of === "fault" &&
      atom[side] === undefined &&
      (kind === "all" || coversKind(kind, atom.kind, stages)),
  );
  return [...own, ...contradicting.slice(0, 1)];
};

const placesOf = (report: Report): string[] =>
  applicablePlaces(sheet.sheet, report.vehicle.form)
    .filter(({ item }) => item.circumstance !== true && item.asked !== "statement")
    .map(({ item, position }) => keyOf({ item: item.id, position }));

describe("atoms", () => {
  it("have exactly one primary entry each, and every place at least one", () => {
    fc.assert(
      fc.property(arbitraryReports(), ({ a, b }) => {
        const entries = Map.groupBy(compare(a, b, sheet).entries, keyOf);
        const missing = placesOf(a).filter((place) => !entries.has(place));
        expect(missing).toEqual([]);
        for (const [side, report] of [
          ["a", a],
          ["b", b],
        ] as const) {
          for (const finding of report.findings) {
            const isCircumstance = sheet.items.get(finding.item)?.item.circumstance === true;
            if (finding.answer.kind === "not-seen" || isCircumstance) continue;
            const ofPlace = entries.get(keyOf(finding)) ?? [];
            for (const atom of atomsOf(finding.answer))
              expect(primaryEntries(ofPlace, side, atom)).toHaveLength(1);
          }
        }
      }),
      runs,
    );
  });
});
