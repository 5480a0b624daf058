import { describe, expect, it } from "vitest";
import type { Entry } from "@evenhand/shared/comparison";
import { Comparison } from "@evenhand/shared/comparison";
import type { HistoryTable } from "@evenhand/shared/history";
import type { Report } from "@evenhand/shared/report";
import { finding, inspection, sheet, statement } from "../../testing/small-reports.ts";
import { analyze } from "../analyze/index.ts";
import { pastReadings } from "../past-readings/index.ts";
import { sentence, sentenceContext } from "../sentence/index.ts";
import { correct } from "./index.ts";
import type { KnownReader } from "./index.ts";

const KIND = "tread depth gauge";
const learned = { kind: KIND, unit: "1/32in", pairs: 34 } as const;
const gaugeHigh = { ...learned, gauge: "tread", calibrated: null, effect: 2.3, standardError: 0.1 };
const adaHigh = { ...learned, inspector: "ada", effect: 0.5, standardError: 0.2, pairs: 21 };

const known = (more: Partial<HistoryTable> = {}): KnownReader => ({
  table: { format: "evenhand-history", version: 1, leans: [], gauges: [gaugeHigh], ...more },
  hash: "a".repeat(64),
  inspector: "ada",
});

const tread = (position: string, ...values: number[]) =>
  finding(
    "wheels.tread-depth",
    { kind: "reading", unit: "1/32in", values: values.map((value) => ({ value })) },
    { position, instrument: "tread", blind: true, basis: "measured" },
  );
const gauges = { instruments: [{ id: "tread", name: "Tread gauge 2" }] };
const stated = (value = 8) => statement([tread("left-front", value, value, value)], gauges);
const found = (value = 6.2, more: Partial<Report> = {}) =>
  inspection([tread("left-front", value, value, value)], { ...gauges, ...more });

const lineOf = (a: Report, b: Report, history?: { a?: KnownReader; b?: KnownReader }): Entry => {
  const comparison = analyze(a, b, sheet, history === undefined ? {} : { history });
  expect(Comparison.safeParse(comparison).error).toBeUndefined();
  const line = comparison.entries.find(
    ({ item, position }) => item === "wheels.tread-depth" && position === "left-front",
  );
  if (line === undefined) throw new Error("no line");
  return line;
};

const said = (a: Report, b: Report, line: Entry): string =>
  sentence(line, sentenceContext(line, sheet.sheet, a, b)).replaceAll("\u00A0", " ");

const block = (nominal: number | undefined, ...values: number[]) => ({
  ...tread("", ...values),
  item: "visit.tread-gauge-check",
  ...(nominal === undefined ? {} : { conditions: { "step-depth": nominal } }),
});

const pair = (values: readonly number[], more: Partial<Report> = {}) => {
  const corners = ["left-front", "right-front", "left-rear", "right-rear"];
  const a = statement(
    corners.map((corner) => tread(corner, 8, 8, 8)),
    gauges,
  );
  const b = inspection(
    corners.map((corner, index) => tread(corner, ...Array.from({ length: 3 }, () => values[index] ?? 8))),
    { ...gauges, ...more },
  );
  return { a, b };
};
const told = ({ a, b }: { a: Report; b: Report }, history?: KnownReader) =>
  pastReadings(analyze(a, b, sheet, history === undefined ? {} : { history: { b: history } }), b, sheet);

const onVisit = (nominal: number | undefined, ...values: number[]): Report =>
  inspection([...found().findings, block(nominal, ...values)], gauges);

const correctionOf = (report: Report, of?: KnownReader) => {
  const [read] = report.findings;
  return read && correct(report, sheet, of)?.correctionOf(read);
};

describe("correct", () => {
  it("takes off what past pairs tell of the gauge, and says so, with what was read", () => {
    const line = lineOf(stated(), found(), { b: known() });
    expect(line.outcome).toBe("differ");
    expect(line.corrections?.b).toEqual({
      effect: 2.3,
      standardError: 0.1,
      parts: [{ of: "gauge", effect: 2.3, standardError: 0.1, pairs: 34 }],
    });
    expect(said(stated(), found(), line)).toMatch(
      /^Stated 8\.0⁄32 in, found 6\.20⁄32 in \(this gauge reads 2\.30⁄32 in high over 34 past pairs of reports: taken as 3\.90⁄32 in\): the difference of 1\.8\d*⁄32 in as read, \(4\.1 ± 1\.\d\)⁄32 in \(0\.5⁄32 in of use is allowed between the visits\) as taken, is more than/,
    );
  });

  it("takes off hand and gauge as one, each by its own name", () => {
    const table = { leans: [adaHigh] };
    const line = lineOf(stated(), found(), { b: known(table) });
    expect(line.corrections?.b).toMatchObject({ effect: 2.8, standardError: Math.hypot(0.1, 0.2) });
    expect(said(stated(), found(), line)).toContain(
      "this inspector with this gauge reads 2.80⁄32 in high over past pairs of reports, 21 of the hand and 34 of the gauge",
    );
    const alone = lineOf(stated(), found(), {
      b: known({ leans: [{ ...adaHigh, effect: -0.5 }], gauges: [] }),
    });
    expect(said(stated(), found(), alone)).toContain(
      "this inspector reads 0.50⁄32 in low over 21 past pairs of reports: taken as 6.70",
    );
  });

  it("knows another's hand, another gauge, and one calibrated since, for what they are", () => {
    const other = { gauges: [], leans: [{ ...adaHigh, inspector: "ben" }] };
    expect(correct(found(), sheet, known(other))).toBeUndefined();
    expect(correct(found(), sheet, known({ gauges: [{ ...gaugeHigh, gauge: "other" }] }))).toBeUndefined();
    expect(correct(found(), sheet, known({ gauges: [{ ...gaugeHigh, kind: "tape" }] }))).toBeUndefined();
    const calibrated = found(6.2, {
      instruments: [{ id: "tread", name: "Tread gauge 2", calibrated: "2026-03-01" }],
    });
    expect(correct(calibrated, sheet, known())).toBeUndefined();
    expect(correct(found(), sheet)).toBeUndefined();
  });

  it("never corrects a dealer's reading, whatever is said of the gauge", () => {
    expect(correct(stated(), sheet, known())).toBeUndefined();
    const [plain, tried] = [lineOf(stated(), found()), lineOf(stated(), found(), { a: known() })];
    expect(JSON.stringify(tried)).toBe(JSON.stringify(plain));
    expect(analyze(stated(), found(), sheet, { history: { a: known() } }).history).toBeUndefined();
  });

  it("names the table it was given in what is stored, and changes not a byte without one", () => {
    const plain = analyze(stated(), found(), sheet);
    expect(JSON.stringify(analyze(stated(), found(), sheet, { history: {} }))).toBe(JSON.stringify(plain));
    const empty = known({ gauges: [] });
    const { history, ...rest } = analyze(stated(), found(), sheet, { history: { b: empty } });
    expect(history).toEqual({ b: empty.hash });
    expect(JSON.stringify(rest)).toBe(JSON.stringify(plain));
  });

  it("calls and limits go by what was taken, also where the inspector alone read it", () => {
    const silent = statement([]);
    const [plain, line] = [lineOf(silent, found(3)), lineOf(silent, found(3), { b: known() })];
    expect([plain.calls.b, line.calls.b]).toEqual(["good", "danger"]);
    expect(line.limits?.[0]?.b?.plain).toBe("fail");
    expect(said(silent, found(3), line)).toContain(
      "; this gauge reads 2.30⁄32 in high over 34 past pairs of reports, which was taken off before it was judged; at least",
    );
    const depthInRule = (history?: { b: KnownReader }): number | undefined => {
      const { crossChecks } = analyze(silent, found(3), sheet, history === undefined ? {} : { history });
      return crossChecks.find(({ rule }) => rule === "in-use-tread")?.figures["reading"]?.value;
    };
    expect([depthInRule(), depthInRule({ b: known() })]).toEqual([3, expect.closeTo(0.7, 9)]);
  });
});

describe("a check standard read on the visit", () => {
  it("gives the gauge its offset of the day, as unsure as both are, instead of what it was before", () => {
    const correction = correctionOf(onVisit(6.35, 8.4, 8.6), known());
    // 6.35 mm are 8/32 in.
    expect(correction?.effect).toBeCloseTo(0.5, 12);
    expect(correction?.parts.map(({ of }) => of)).toEqual(["check-standard"]);
    expect(correction?.standardError).toBeGreaterThan(0.025 / Math.sqrt(3));
    expect(
      correctionOf(onVisit(6.35, 8.4, 8.6), known({ leans: [adaHigh] }))?.parts.map(({ of }) => of),
    ).toEqual(["inspector", "check-standard"]);
    const report = onVisit(6.35, 8.4, 8.6);
    expect(said(stated(), report, lineOf(stated(), report))).toContain(
      "found 6.20⁄32 in (by the check standard of this visit this gauge reads 0.50⁄32 in high: taken as 5.70⁄32 in)",
    );
  });

  it("is no line of the comparison", () => {
    const { entries } = analyze(stated(), onVisit(6.35, 8.5), sheet);
    expect(entries.some(({ item }) => item === "visit.tread-gauge-check")).toBe(false);
  });

  it("says nothing without the standard's own figure, or of a gauge so far off that a figure must be wrong", () => {
    expect(correctionOf(onVisit(undefined, 8.5))).toBeUndefined();
    expect(correctionOf(onVisit(8, 8.5))).toBeUndefined();
  });

  it("corrects no dealer", () => {
    expect(correctionOf({ ...onVisit(6.35, 8.5), author: stated().author })).toBeUndefined();
  });
});

describe("pastReadings", () => {
  it("is the middle of what a gauge read more than was said, as read, whatever one tire was lied about", () => {
    const expected = { kind: KIND, unit: "1/32in", gauge: "tread", calibrated: null, places: 4, delta: 2 };
    expect(told(pair([8.3, 8.3, 2, 8.3]))).toEqual([{ ...expected, difference: expect.closeTo(0.3, 9) }]);
    expect(told(pair([8.3, 8.3, 2, 8.3]), known())).toEqual([
      { ...expected, difference: expect.closeTo(0.3, 9) },
    ]);
  });

  it("takes only what was answered blind, with a named gauge, by another house", () => {
    const { a, b } = pair([8.3, 8.3, 8.3, 8.3]);
    const seen = b.findings.map((one) => ({ ...one, blind: false }));
    expect(told({ a, b: { ...b, findings: seen } })).toEqual([]);
    expect(told({ a, b: { ...b, instruments: [] } })).toEqual([]);
    expect(told({ a, b: { ...b, author: a.author } })).toEqual([]);
  });
});
