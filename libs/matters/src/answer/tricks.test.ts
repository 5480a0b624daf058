import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { analyze } from "@evenhand/comparison/analyze";
import { roadGate } from "@evenhand/handbook/road-gate";
import type { Comparison, Entry } from "@evenhand/shared/comparison";
import { worstSeverity } from "@evenhand/comparison/worst-severity";
import { Report } from "@evenhand/shared/report";
import { isBadCall, isDecisive, SEVERITIES, severityRank } from "@evenhand/shared/severity";
import { sheet } from "../../testing/lines.ts";
import {
  accurateTo,
  byEye,
  coarseResolution,
  dayEarlier,
  flawless,
  hedged,
  notKnown,
  percentIn,
  twoReadings,
  unseen,
  withoutExtents,
} from "../../testing/tricks.ts";
import { matters } from "../matters/index.ts";
import { answer } from "./index.ts";

const demo = new URL("../../../../fixtures/demo/reports/", import.meta.url);
const demoReport = (name: string): Report =>
  Report.parse(JSON.parse(readFileSync(new URL(`${name}.json`, demo), "utf8")));
const pair = (name: string) => ({ a: demoReport(`${name}-statement`), b: demoReport(`${name}-inspection`) });
type Pair = ReturnType<typeof pair>;

/** Much of the first statement is not so; of the second nearly all is. Its grades stand on the house's scale. */
const shading = pair("sovrano");
const honest = pair("larksong");

const compared = ({ a, b }: Pair): Comparison => analyze(a, b, sheet);
const pageOne = ({ a, b }: Pair, comparison: Comparison) => {
  const reports = { a, b, sheet };
  return answer({ comparison, matters: matters(comparison, reports), reports });
};

const keyOf = ({ item, position, atom }: Entry): string => {
  if (atom.of === "answer") return `${item} ${position}`;
  return atom.of === "fault"
    ? `${item} ${position} ${atom.kind} ${atom.b}`
    : `${item} ${position} no ${atom.kind}`;
};
const rank = ({ severity }: Entry): number =>
  severity === null ? SEVERITIES.length : severityRank(severity);

const agreed = ({ entries }: Comparison): string[] =>
  entries.filter(({ outcome, finding }) => outcome === "agree" && finding.a !== null).map(keyOf);

/** Lines that are worse for the buyer to lose: all that is bad by what was found, or all that is open besides. */
const lost = (before: Comparison, after: Comparison, isKept: (entry: Entry) => boolean): string[] => {
  const later = new Map(after.entries.map((entry) => [keyOf(entry), entry]));
  return before.entries
    .filter((entry) => isKept(entry) && entry.coverageOnly !== true)
    .filter((entry) => {
      const kept = later.get(keyOf(entry));
      return kept === undefined || rank(kept) > rank(entry);
    })
    .map((entry) => `${keyOf(entry)}: ${entry.outcome} ${entry.severity}`);
};

/** A rule that reads the statement too needs the statement's figure: it says what it cannot tell, and the line stays. */
const isBad = ({ calls, marks }: Entry): boolean => isBadCall(calls.b) && !marks.includes("by-figures");
const isOpen = ({ outcome, marks }: Entry): boolean =>
  (outcome === "doubtful" || outcome === "differ") && !marks.includes("by-figures");
const isBadOrOpen = (entry: Entry): boolean => isBad(entry) || isOpen(entry);

const gate = ({ b }: Pair): string[] => roadGate(b, sheet).map(({ item, position }) => `${item} ${position}`);

const saidOf = (trick: Pair, side: "a" | "b", way: string) =>
  pageOne(trick, compared(trick)).soft?.find((said) => said.side === side && said.of === way)?.words;

type Trick = readonly [
  name: string,
  play: (report: Report) => Report,
  side: "a" | "b",
  way: string,
  said: RegExp,
  kept: (entry: Entry) => boolean,
];

const tricks: readonly Trick[] = [
  [
    "all hedged",
    hedged,
    "a",
    "hedged",
    /^The statement hedges (\d+) of its \1 answers that count/u,
    isBadOrOpen,
  ],
  [
    "all by eye",
    byEye,
    "a",
    "unmeasured",
    /^The statement names no instrument for (\d+) of its \1 readings, \d+ of them by eye\.$/u,
    isBad,
  ],
  [
    "instruments right to anything",
    accurateTo(1),
    "a",
    "coarse",
    /^The statement names an instrument over three times as coarse as ordinary for \d+ of its \d+ readings\.$/u,
    isBadOrOpen,
  ],
  [
    "a hundred times the resolution",
    coarseResolution,
    "a",
    "coarse",
    /^The statement names an instrument over three times as coarse/u,
    isBadOrOpen,
  ],
  [
    "percentages in steps of a hundred",
    percentIn(100),
    "a",
    "wide-scale",
    /^The statement gives (\d+) of its \1 grades in steps wider than a fifth/u,
    isBadOrOpen,
  ],
  [
    "flawless over the middle",
    flawless,
    "a",
    "praised",
    /^The statement calls \d+ of its \d+ grades “flawless”, which its own scale puts no higher than the middle\.$/u,
    isBadOrOpen,
  ],
  [
    "two readings 30 % apart",
    twoReadings,
    "a",
    "scattered",
    /^The statement gives \d+ of its \d+ readings as values too far apart for one place\.$/u,
    isBad,
  ],
  [
    "faults with no place and no extent",
    withoutExtents,
    "a",
    "vague",
    /^The statement does not say how large or where at (\d+) of its \1 places with faults\.$/u,
    isBadOrOpen,
  ],
  [
    "everything not seen",
    unseen,
    "a",
    "open",
    /^The statement leaves (\d+) of the \1 places that count open \(.*\d+ not seen\)\.$/u,
    isBad,
  ],
  [
    "not known to all lists",
    notKnown,
    "a",
    "open",
    /^The statement leaves \d+ of the \d+ places that count open \(.*\d+ not known\)\.$/u,
    isBad,
  ],
  [
    "an inspector's accuracy of 30 %",
    accurateTo(0.3),
    "b",
    "coarse",
    /^The inspection names an instrument over three times as coarse/u,
    isBadOrOpen,
  ],
  [
    "an inspection all hedged",
    hedged,
    "b",
    "hedged",
    /^The inspection hedges (\d+) of its \1 answers that count/u,
    isBadOrOpen,
  ],
  ["an inspection all by eye", byEye, "b", "unmeasured", /^The inspection names no instrument for/u, isBad],
  [
    "an inspection that saw nothing",
    unseen,
    "b",
    "open",
    /^The inspection leaves (\d+) of the \1 places that count open/u,
    () => false,
  ],
];

const played = ({ a, b }: Pair, play: Trick[1], side: "a" | "b"): Pair =>
  side === "a" ? { a: play(a), b } : { a, b: play(b) };

describe.each([
  ["a statement that is nearly all so", honest],
  ["a statement of which much is not", shading],
])("%s, softened", (_name, before) => {
  const base = compared(before);

  it.each(tricks)(
    "%s: gains no agree, loses nothing bad, opens no gate",
    (_trick, play, side, _way, _said, kept) => {
      const trick = played(before, play, side);
      const after = compared(trick);
      const known = new Set(agreed(base));
      expect(agreed(after).filter((key) => !known.has(key))).toEqual([]);
      expect(lost(base, after, kept)).toEqual([]);
      if (play === unseen) return;
      expect(gate(trick)).toEqual(expect.arrayContaining(gate(before)));
    },
  );
});

it.each(tricks)("%s: page one says so, and whose it is, with counts", (_trick, play, side, way, said) => {
  expect(saidOf(played(honest, play, side), side, way)).toMatch(said);
});

it("percentages in steps of a hundred agree with no more than those in steps of five", () => {
  const [fine, coarse] = [percentIn(5), percentIn(100)].map((play) => compared(played(honest, play, "a")));
  expect(coarse === undefined ? undefined : agreed(coarse)).toEqual(fine === undefined ? null : agreed(fine));
});

/** A statement of what counts alone, and the same with true trifles added to it. */
const trifling = ({ a, b }: Pair) => {
  const { entries } = compared({ a, b });
  const held = new Set(
    entries
      .filter(({ item, position, outcome }) => {
        const compiled = sheet.items.get(item);
        return (
          outcome === "agree" && compiled !== undefined && !isDecisive(worstSeverity(compiled, position))
        );
      })
      .map(({ item, position }) => `${item} ${position}`),
  );
  const isTrifle = ({ item, position }: Report["findings"][number]) => held.has(`${item} ${position}`);
  const trifles = a.findings.filter(isTrifle).slice(0, 113);
  const without = a.findings.filter((finding) => !trifles.includes(finding));
  return { few: { a: { ...a, findings: without }, b }, count: trifles.length };
};

it("113 true trifles more: they swell no count of what matters, and page one tells the two apart", () => {
  const { few, count } = trifling(honest);
  expect(count).toBe(113);
  const [less, more] = [few, honest].map((one) => pageOne(one, compared(one)).claims);
  expect((more?.stated ?? 0) - (less?.stated ?? 0)).toBe(113);
  expect(more?.decisive).toEqual(less?.decisive);
  expect(more?.decisive?.stated).toBeLessThan(more?.decisive?.onSheet ?? 0);
  expect([more?.fell, more?.doubtful]).toEqual([less?.fell, less?.doubtful]);
});

const today = (finding: Report["findings"][number]) => ({ ...finding, time: undefined });

const starting =
  (option: string) =>
  (finding: Report["findings"][number]): Report["findings"][number] =>
    finding.item === "road.cold-start" ? { ...finding, answer: { kind: "choice", option } } : finding;

/** Both on one day, and what drifts found otherwise than stated. */
const sameDay = (): Pair => {
  const { a, b } = honest;
  const levels = b.findings.map(today).map((finding) => {
    const drifts = sheet.items.get(finding.item)?.item;
    const isPressure =
      drifts?.time === "drifts" &&
      finding.answer.kind === "reading" &&
      drifts.reading?.dayToDayShare !== undefined;
    if (!isPressure || finding.answer.kind !== "reading") return finding;
    const values = finding.answer.values.map((one) => ({ ...one, value: 0.93 * one.value }));
    return { ...finding, answer: { ...finding.answer, values } };
  });
  return {
    a: { ...a, visit: b.visit, findings: a.findings.map(today).map(starting("at-once")) },
    b: { ...b, findings: levels.map(starting("several-tries")) },
  };
};

it("a statement dated a day earlier: gains no agree, and page one says what is put down to the days", () => {
  const before = sameDay();
  const earlier = played(before, dayEarlier, "a");
  const [base, after] = [compared(before), compared(earlier)];
  const known = new Set(agreed(base));
  expect(agreed(after).filter((key) => !known.has(key))).toEqual([]);
  expect(lost(base, after, isBad)).toEqual([]);
  const softened = base.tally.differ - after.tally.differ;
  expect(softened).toBeGreaterThan(0);
  expect(base.softness.betweenDays).toEqual([]);
  expect(after.softness.betweenDays?.length).toBeGreaterThanOrEqual(softened);
  expect(saidOf(earlier, "a", "days")).toMatch(
    /^\d+ differences? from the statement \(dated 2026-04-28\) (?:is|are) put down to the days between\.$/u,
  );
});

/** Every reading word for word what the statement says, after it was shown. */
const copied = ({ a, b }: Pair): Pair => {
  const stated = new Map(
    a.findings.map((finding) => [`${finding.item} ${finding.position}`, finding.answer]),
  );
  const findings = b.findings.map((finding) => {
    const said = stated.get(`${finding.item} ${finding.position}`);
    return finding.answer.kind === "reading" && said?.kind === "reading"
      ? { ...finding, answer: said, blind: false }
      : finding;
  });
  return { a, b: { ...b, findings } };
};

const isOfReading = (key: string): boolean =>
  sheet.items.get(key.split(" ")[0] ?? "")?.item.answer === "reading";

describe.each([
  ["a statement that is nearly all so", honest],
  ["a statement of which much is not", shading],
])("the statement copied, %s", (_name, base) => {
  it("page one asks whether it was, with counts, and nothing that is not read changes", () => {
    const copy = copied(base);
    const [before, after] = [compared(base), compared(copy)];
    expect(saidOf(base, "b", "copied")).toBeUndefined();
    const said = saidOf(copy, "b", "copied");
    expect(said).toMatch(/was the inspection written from the statement\? Ask how each was read\.$/u);
    const [, compare, same] =
      /^Of (\d+) readings .* (\d+) are the same to the last digit/u.exec(said ?? "") ?? [];
    expect(same).toBe(compare);
    // What it gains is agrees of readings, all of them among those that are asked about.
    const known = new Set(agreed(before));
    const gained = agreed(after).filter((key) => !known.has(key));
    expect(gained.filter((key) => !isOfReading(key))).toEqual([]);
    expect(gained.length).toBeLessThanOrEqual(Number(same));
  });
});
