import { describe, expect, it } from "vitest";
import type { Finding } from "@evenhand/shared/finding";
import type { Instrument, Report } from "@evenhand/shared/report";
import { normalDeviate, seededRandom } from "@evenhand/measurement/random";
import type { Random } from "@evenhand/measurement/random";
import { roundsAlike } from "@evenhand/measurement/rounds-alike";
import { applicablePlaces } from "@evenhand/sheet/expand";
import { compare } from "../compare/index.ts";
import { entry, readingFigures } from "../../testing/small-entries.ts";
import { finding, form, inspection, sheet, statement } from "../../testing/small-reports.ts";
import { likeReadings } from "./index.ts";

const tool: Instrument = { id: "tool", name: "tool" };
const places = applicablePlaces(sheet.sheet, form);

/** Every reading of the sheet as somebody takes it who scatters as the sheet says and rounds as the ordinary instrument does. */
const readAll = (
  random: Random,
  truths: ReadonlyMap<string, number>,
  more: Partial<Finding> = {},
): Finding[] =>
  places.flatMap(({ item, position }) => {
    const spec = item.reading;
    const truth = truths.get(`${item.id}@${position}`);
    if (spec === undefined || truth === undefined) return [];
    const { value, share } = spec.repeatability;
    const step = spec.instrument.resolution;
    const values = Array.from({ length: spec.ask.readings }, () => {
      const read = truth + Math.hypot(value, share * truth) * normalDeviate(random);
      return { value: step === 0 ? read : step * Math.round(read / step) };
    });
    return [
      finding(
        item.id,
        { kind: "reading", unit: spec.unit, values },
        { position, instrument: "tool", ...more },
      ),
    ];
  });

const car = (random: Random): Map<string, number> =>
  new Map(
    places.map(({ item, position }) => {
      const spec = item.reading;
      return [`${item.id}@${position}`, (spec?.typical ?? 0) + (spec?.delta.absolute ?? 0) * random()];
    }),
  );

const told = (a: Finding[], b: Finding[], more: Partial<Report> = {}) => {
  const stated = statement(a, { instruments: [tool] });
  const found = inspection(b, { instruments: [tool], ...more });
  return likeReadings(compare(stated, found, sheet).entries, stated, found, sheet);
};

const reportsOf = (findings: Finding[]): [Report, Report] => [
  statement(findings, { instruments: [tool] }),
  inspection(findings, { instruments: [tool] }),
];

/** As many lines on paint, each of the findings at its place. */
const entriesOf = (count: number) =>
  Array.from({ length: count }, (_, at) =>
    entry({ item: "body.paint-highest", finding: { a: at, b: at }, figures: readingFigures(0) }),
  );

const blind = (findings: Finding[]): Finding[] => findings.map((one) => ({ ...one, blind: true }));

const read = (unit: "psi" | "bar", ...values: number[]) => [
  finding(
    "engine.compression",
    { kind: "reading", unit, values: values.map((value) => ({ value })) },
    { position: "cylinder-1", instrument: "tool" },
  ),
];

describe("likeReadings", () => {
  it("accuses no two people who each read the same car, and expects at least as many as there are", () => {
    const random = seededRandom(21);
    let [same, expected] = [0, 0];
    for (let round = 0; round < 60; round += 1) {
      const truths = car(random);
      const like = told(readAll(random, truths), readAll(random, truths));
      expect(like?.moreThanChance).toBe(false);
      same += like?.same ?? 0;
      expected += like?.expected ?? 0;
    }
    expect(same).toBeGreaterThan(60);
    expect(same).toBeLessThan(expected);
  });

  it("finds a report that was written from the other, and one that was in large part", () => {
    const random = seededRandom(22);
    const truths = car(random);
    const [stated, found] = [readAll(random, truths), readAll(random, truths)];
    const copied = told(stated, stated);
    expect(copied).toMatchObject({ same: copied?.compared, moreThanChance: true, later: "b", blind: 0 });
    expect(copied?.chance).toBeLessThan(1e-9);
    const most = stated.map((one, at) => (at % 4 === 0 ? (found[at] ?? one) : one));
    expect(told(stated, most)?.moreThanChance).toBe(true);
  });

  it("counts apart what the later side answered blind, whichever it is", () => {
    const random = seededRandom(23);
    const stated = readAll(random, car(random));
    const all = told(stated, blind(stated));
    expect(all?.blind).toBe(all?.same);
    expect(told(blind(stated), stated)).toMatchObject({ blind: 0, later: "b" });
    const earlier = { visit: { started: "2026-05-01T15:00:00Z", zone: "America/Chicago" } };
    expect(told(blind(stated), stated, earlier)).toMatchObject({ blind: all?.same, later: "a" });
    const atOnce = { visit: { started: "2026-05-04T15:00:00Z", zone: "America/Chicago" } };
    expect(told(stated, blind(stated), atOnce)).toMatchObject({ later: null, blind: 0 });
  });

  it("expects what repeatability, placement and the coarser of both roundings give", () => {
    const height = finding(
      "steering.ride-height",
      { kind: "reading", unit: "mm", values: [{ value: 381 }] },
      { position: "left-front", instrument: "tool" },
    );
    expect(told([height], [height])?.expected).toBeCloseTo(
      roundsAlike(1, Math.sqrt(2 * (2.5 ** 2 + 1.5 ** 2))),
      9,
    );
    const coarse: Instrument = { ...tool, resolution: { value: 9, unit: "mm" } };
    expect(told([height], [height], { instruments: [coarse] })?.expected).toBeCloseTo(
      roundsAlike(9, Math.sqrt(2 * (2.5 ** 2 + 1.5 ** 2))),
      9,
    );
  });

  it("asks about no fewer than five, and takes a reading for blind only where it is said to be", () => {
    const paint = [131, 118, 127, 143, 122].map((value, at) =>
      finding(
        "body.paint-highest",
        { kind: "reading", unit: "um", values: [{ value }] },
        { position: `panel-${at}`, instrument: "tool", blind: false },
      ),
    );
    const like = (count: number) =>
      likeReadings(entriesOf(count), ...reportsOf(paint.slice(0, count)), sheet);
    expect(like(4)).toMatchObject({ same: 4, moreThanChance: false, blind: 0 });
    expect(like(4)?.chance).toBeLessThan(1e-4);
    expect(like(5)).toMatchObject({ same: 5, moreThanChance: true, blind: 0 });
  });

  it("takes round figures for what they are", () => {
    const rounded = ["1", "2", "3", "4", "5", "6"].map((cylinder) =>
      finding(
        "engine.compression",
        { kind: "reading", unit: "psi", values: [{ value: 150 }] },
        { position: `cylinder-${cylinder}`, instrument: "tool" },
      ),
    );
    const like = told(rounded, rounded);
    expect(like).toMatchObject({ compared: 6, same: 6, moreThanChance: false });
    expect(like?.expected).toBeGreaterThan(5);
  });

  it("takes the same values in another unit or order for the same, and others not", () => {
    const same = (a: Finding[], b: Finding[]) => told(a, b)?.same;
    expect(same(read("psi", 147, 151), read("psi", 151, 147))).toBe(1);
    expect(same(read("bar", 10), read("psi", 145.037_737_730_209_22))).toBe(1);
    expect(same(read("psi", 147, 151), read("psi", 148, 150))).toBe(0);
    expect(told(read("psi", 147), read("psi", 147, 147))).toBeUndefined();
  });

  it("says nothing of spread over spots that somebody named, of one house's own reports, or where nothing was read", () => {
    const spots = ["inner", "center", "outer"].map((spot, at) => ({ spot, value: 7 - at / 2 }));
    const tread = finding(
      "wheels.tread-depth",
      { kind: "reading", unit: "1/32in", values: spots },
      { position: "left-front", instrument: "tool" },
    );
    expect(told([tread], [tread])).toBeUndefined();
    const random = seededRandom(24);
    const stated = readAll(random, car(random));
    const author = { organization: "Larkspur Motor House", role: "dealer" } as const;
    expect(told(stated, stated, { author })).toBeUndefined();
    expect(told([], [])).toBeUndefined();
  });
});
