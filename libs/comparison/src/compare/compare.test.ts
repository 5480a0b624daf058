import { describe, expect, it } from "vitest";
import type { Answer } from "@evenhand/shared/answer";
import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import { applicablePlaces } from "@evenhand/sheet/expand";
import { finding, form, inspection, sheet, statement } from "../../testing/small-reports.ts";
import { analyze } from "../analyze/index.ts";
import { compare } from "./index.ts";

const HORN = "electrics.horn";
const horn = (value: "yes" | "no" | "intermittent" | "not-known", more?: Partial<Finding>) =>
  finding(HORN, { kind: "working", value }, more);
const unseen = (item: string): Finding => finding(item, { kind: "not-seen", reason: "covered" });
const entriesOf = (item: string, a: Finding[], b: Finding[]) =>
  compare(statement(a), inspection(b), sheet).entries.filter((entry) => entry.item === item);
const starting = (option: string, more?: Partial<Finding>) =>
  finding("road.cold-start", { kind: "choice", option }, more);
const light = (option: string) => finding("visit.light", { kind: "choice", option });
const miles = (value: number) =>
  finding(
    "identity.odometer",
    { kind: "reading", unit: "mi", values: [{ value }] },
    { instrument: "odometer" },
  );
const vin = (text: string) => finding("identity.vin", { kind: "code", text }, { position: "main-plate" });
const tread = (value: number) =>
  finding(
    "wheels.tread-depth",
    { kind: "reading", unit: "1/32in", values: [{ value }] },
    { position: "left-front", instrument: "gauge" },
  );
const treadOf = (a: Finding[], b: Finding[]) =>
  entriesOf("wheels.tread-depth", a, b).find(({ position }) => position === "left-front");
const headliner = (scale: string, value: string | number) =>
  finding("interior.headliner", { kind: "grade", scale, value });
const odometer = (a: number, b: number, useAllowed?: Record<string, number>) =>
  compare(statement([miles(a)]), inspection([miles(b)]), sheet, { useAllowed }).entries.find(
    ({ item }) => item === "identity.odometer",
  );
const vinFiguresAt = (modelYear: number) => {
  const vehicle = { ...statement([]).vehicle, modelYear };
  const { entries } = compare(
    statement([vin("0EVTL82633A007146")], { vehicle }),
    inspection([vin("0EVTL8Z633A007146")], { vehicle }),
    sheet,
  );
  return entries.find(({ finding: { a } }) => a === 0)?.figures;
};
const hornOf = (a: Finding[], b: Finding[]) => entriesOf(HORN, a, b)[0];

describe("compare", () => {
  it("runs over every place that applies to the car, in sheet order, answered or not", () => {
    const { entries } = compare(statement([]), inspection([]), sheet);
    const places = applicablePlaces(sheet.sheet, form).filter(
      ({ item }) => item.circumstance !== true && item.asked !== "statement",
    );
    expect(entries.map(({ item, position }) => `${item} ${position}`)).toEqual(
      places.map(({ item, position }) => `${item.id} ${position}`),
    );
    expect(entries[0]).toMatchObject({ outcome: "unseen", reason: "not-reported", standing: "unseen" });
  });

  it("gives firmness and the two findings", () => {
    const entry = hornOf([unseen("electrics.radio"), horn("yes", { firmness: "hedged" })], [horn("no")]);
    expect(entry).toMatchObject({
      firmness: { a: "hedged", b: "asserted" },
      finding: { a: 1, b: 0 },
      atom: { of: "answer" },
      outcome: "differ",
      direction: "stated-better",
    });
  });

  it("includes what either report's form has, and what was answered although it does not apply", () => {
    const eight = { ...form, cylinders: 8 };
    const vehicle = { ...statement([]).vehicle, form: eight };
    const odd = finding(
      "engine.compression",
      { kind: "reading", unit: "psi", values: [{ value: 150 }] },
      { position: "cylinder-12" },
    );
    const { entries } = compare(statement([], { vehicle }), inspection([odd]), sheet);
    const cylinders = entries
      .filter(({ item }) => item === "engine.compression")
      .map(({ position }) => position);
    expect(cylinders).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 12].map((number) => `cylinder-${number}`));
  });

  it("refuses a place the sheet does not have", () => {
    expect(() =>
      compare(
        statement([finding("electrics.cannon", { kind: "working", value: "yes" })]),
        inspection([]),
        sheet,
      ),
    ).toThrow(RangeError);
    expect(() => compare(statement([horn("yes", { position: "hood" })]), inspection([]), sheet)).toThrow(
      /hood/,
    );
  });
});

const dent: Answer = {
  kind: "faults",
  found: [{ kind: "dent", spot: "upper-front" }],
  denied: ["corrosion"],
};

const jack = (value: "present" | "absent") => finding("trunk.jack", { kind: "presence", value });
const seal = (option: string) => finding("driveline.pinion-seal", { kind: "choice", option });
describe("an entry", () => {
  it("is plain data with nothing in it that is not said", () => {
    const entry = hornOf([horn("yes")], [horn("no", { firmness: "second-hand" })]);
    expect(JSON.parse(JSON.stringify(entry))).toStrictEqual({
      item: HORN,
      position: "",
      atom: { of: "answer" },
      outcome: "differ",
      calls: { a: "good", b: "repair" },
      severity: "repair",
      marks: [],
      reason: "other-answer",
      direction: "stated-better",
      standing: "differs",
      firmness: { a: "asserted", b: "second-hand" },
      finding: { a: 0, b: 0 },
    });
  });

  it("is of one shape, said or silent, with figures or without, and whatever rules laid onto it", () => {
    const [stated, found] = [
      statement([jack("present"), miles(61_240)]),
      inspection([horn("yes"), miles(21_240)]),
    ];
    const { entries } = analyze(stated, found, sheet);
    expect(entries.some(({ coverageOnly }) => coverageOnly === true)).toBe(true);
    expect(entries.some(({ figures }) => figures?.of === "reading")).toBe(true);
    expect(new Set(entries.map((entry) => Object.keys(entry).join())).size).toBe(1);
  });

  it("names the finding of the one side that spoke", () => {
    expect(hornOf([horn("yes")], [])).toMatchObject({
      finding: { a: 0, b: null },
      firmness: { a: "asserted", b: null },
    });
    expect(hornOf([], [horn("no")])).toMatchObject({
      finding: { a: null, b: 0 },
      firmness: { a: null, b: "asserted" },
    });
  });

  it("reads each side with the instruments of its own report", () => {
    const psi = finding(
      "engine.compression",
      { kind: "reading", unit: "psi", values: [{ value: 150 }, { value: 150 }] },
      { position: "cylinder-1", instrument: "gauge" },
    );
    const tools = { instruments: [{ id: "gauge", name: "gauge" }] };
    const outcome = (a: Partial<Report>, b: Partial<Report>) =>
      compare(statement([psi], a), inspection([psi], b), sheet).entries.find(
        ({ finding: { a: index } }) => index === 0,
      )?.outcome;
    expect([outcome(tools, tools), outcome(tools, {}), outcome({}, tools)]).toEqual([
      "agree",
      "agree",
      "agree",
    ]);
  });

  it("goes by presence and by the options' order", () => {
    expect(entriesOf("trunk.jack", [jack("present")], [jack("absent")])[0]).toMatchObject({
      outcome: "differ",
      direction: "stated-better",
    });
    expect(entriesOf("driveline.pinion-seal", [seal("drip")], [seal("none")])[0]).toMatchObject({
      outcome: "differ",
      direction: "found-better",
    });
  });
});

describe("silence", () => {
  it.each([
    [
      "bad, not stated",
      [],
      [horn("no")],
      {
        outcome: "unstated",
        reason: "found-bad-not-stated",
        standing: "not-mentioned",
        direction: "neither",
      },
    ],
    [
      "bad, not seen by the statement",
      [unseen(HORN)],
      [horn("no")],
      { outcome: "unstated", reason: "found-bad-statement-unseen" },
    ],
    [
      "sound, not stated",
      [],
      [horn("yes")],
      {
        outcome: "consistent",
        reason: "seen-sound-not-stated",
        coverageOnly: true,
        standing: "not-mentioned",
      },
    ],
    [
      "sound, not seen by the statement",
      [unseen(HORN)],
      [horn("yes")],
      { outcome: "consistent", reason: "seen-sound-statement-unseen", coverageOnly: true },
    ],
    [
      "stated, not inspected",
      [horn("yes")],
      [],
      { outcome: "unseen", reason: "stated-not-inspected", standing: "unseen" },
    ],
    [
      "stated, not seen",
      [horn("yes")],
      [unseen(HORN)],
      { outcome: "unseen", reason: "not-seen-covered", standing: "unseen" },
    ],
    ["neither stated nor seen", [], [unseen(HORN)], { outcome: "unseen", reason: "not-seen-covered" }],
    ["seen by neither", [unseen(HORN)], [], { outcome: "unseen", reason: "not-reported" }],
    ["not known, not stated", [], [horn("not-known")], { outcome: "unseen", reason: "not-known-nor-stated" }],
    [
      "not known by the statement, not inspected",
      [horn("not-known")],
      [],
      { outcome: "unseen", reason: "stated-not-inspected" },
    ],
    [
      "not known by the statement, not seen",
      [horn("not-known")],
      [unseen(HORN)],
      { outcome: "unseen", reason: "not-seen-covered" },
    ],
    [
      "known by neither",
      [horn("not-known")],
      [horn("not-known")],
      { outcome: "unseen", reason: "not-known-by-either" },
    ],
  ])("%s", (_name, a, b, expected) => {
    expect(hornOf(a, b)).toMatchObject(expected);
  });

  it("never lists as coverage only what is not", () => {
    expect(hornOf([], [horn("no")])?.coverageOnly).toBeUndefined();
  });

  it("splits a lone answer of faults into its atoms", () => {
    const at = { position: "hood" };
    const found = entriesOf("body.faults", [], [finding("body.faults", dent, at)]).filter(
      ({ position }) => position === "hood",
    );
    expect(found).toMatchObject([
      { outcome: "unstated", atom: { of: "fault", kind: "dent", spot: "upper-front", b: 0 } },
      { outcome: "consistent", coverageOnly: true, atom: { of: "denial", kind: "corrosion", by: "b" } },
    ]);
    const stated = entriesOf("body.faults", [finding("body.faults", dent, at)], []).filter(
      ({ position }) => position === "hood",
    );
    expect(stated).toMatchObject([
      { outcome: "unseen", atom: { of: "fault", a: 0 } },
      { outcome: "unseen", atom: { of: "denial", by: "a" } },
    ]);
  });

  it("never calls sound a lone answer that lists and denies nothing", () => {
    const nothing = finding("trunk.floor", { kind: "faults", found: [], denied: [] });
    expect(entriesOf("trunk.floor", [], [nothing])).toMatchObject([
      { outcome: "unstated", marks: ["no-yardstick"], atom: { of: "answer" } },
    ]);
  });

  it("judges a lone reading against its limits", () => {
    expect(treadOf([], [tread(1)])).toMatchObject({
      outcome: "unstated",
      limits: [{ a: null, b: { plain: "fail" } }],
    });
    expect(treadOf([], [tread(8)])).toMatchObject({
      outcome: "consistent",
      coverageOnly: true,
      limits: [{ a: null, b: { plain: "pass" } }],
    });
    expect(treadOf([tread(1)], [])).toMatchObject({
      outcome: "unseen",
      limits: [{ a: { plain: "fail" }, b: null }],
    });
  });
});

const gap = (value: number) =>
  finding(
    "gaps.width-top",
    { kind: "reading", unit: "mm", values: [{ value }] },
    { position: "left-fender-door" },
  );
const dented = finding("trunk.floor", {
  kind: "faults",
  found: [{ kind: "dent", extent: { value: 40, unit: "mm" } }],
  denied: [],
});
const codeAt = (item: string, code: string, position = "") =>
  finding(item, { kind: "code", text: code }, { position });
const squeeze = (value: number) =>
  finding(
    "engine.compression",
    { kind: "reading", unit: "psi", values: [{ value }] },
    { position: "cylinder-1" },
  );

describe("answers of both sides", () => {
  it("compares faults atom by atom", () => {
    const at = { position: "hood" };
    const entries = entriesOf(
      "body.faults",
      [finding("body.faults", dent, at)],
      [finding("body.faults", dent, at)],
    );
    expect(entries.filter(({ position }) => position === "hood")).toMatchObject([
      { outcome: "consistent", standing: "agreed-fault", atom: { a: 0, b: 0 } },
      { outcome: "agree", reason: "denied-by-both" },
    ]);
  });

  it("cannot set answers of two kinds against each other", () => {
    const listed = finding(HORN, { kind: "faults", found: [], denied: "all" });
    expect(hornOf([horn("yes")], [listed])?.reason).toBe("other-kind");
    expect(hornOf([listed], [horn("yes")])?.reason).toBe("other-kind");
    expect(hornOf([horn("yes")], [finding(HORN, { kind: "presence", value: "present" })])).toMatchObject({
      outcome: "incomparable",
      reason: "other-kind",
      standing: "not-comparable",
    });
  });

  it("compares grades on two scales, and knows the same grade", () => {
    const item = "interior.headliner";
    const ownScale = {
      scales: [
        {
          id: "percent",
          name: "Per cent",
          step: 5,
          grades: [
            { id: "low", name: "low" },
            { id: "high", name: "high" },
          ],
        },
      ],
    };
    const graded = (a: Finding, b: Finding) =>
      compare(statement([a]), inspection([b], ownScale), sheet).entries.find((entry) => entry.item === item);
    expect(graded(headliner("house", "light-wear"), headliner("house", "light-wear"))).toMatchObject({
      outcome: "agree",
      reason: "same-grade",
    });
    expect(graded(headliner("house", "light-wear"), headliner("percent", 70))).toMatchObject({
      outcome: "agree",
      reason: "grades-overlap",
    });
    expect(graded(headliner("house", "as-new"), headliner("percent", 30))).toMatchObject({
      outcome: "differ",
      direction: "stated-better",
    });
    expect(graded(headliner("percent", 70), headliner("percent", 70))).toMatchObject({
      outcome: "incomparable",
      reason: "unknown-scale",
    });
  });

  it("softens what drifts between days: in doubt where bad, else consistent", () => {
    expect(entriesOf("road.cold-start", [starting("at-once")], [starting("several-tries")])[0]).toMatchObject(
      {
        outcome: "doubtful",
        reason: "changed-bad-between-days",
        standing: "in-doubt",
        direction: "stated-better",
      },
    );
    const time = "2026-05-12T16:00:00Z";
    expect(
      entriesOf("road.cold-start", [starting("at-once", { time })], [starting("several-tries")])[0],
    ).toMatchObject({
      outcome: "differ",
    });
  });

  it("marks what was read by eye, in whatever unit, and never the extent of a fault", () => {
    const gaps = entriesOf("gaps.width-top", [gap(4)], [gap(4)]);
    expect(gaps.find(({ finding: { a } }) => a === 0)?.marks).toContain("by-eye");
    expect(entriesOf("trunk.floor", [dented], [dented])[0]?.marks).toEqual(["both-bad"]);
  });

  it("is as grave as the item says where neither answer is bad by itself", () => {
    const severityOf = (item: string, position?: string) =>
      entriesOf(item, [codeAt(item, "AAAA", position)], [codeAt(item, "ZXZX", position)])[0]?.severity;
    expect(severityOf("identity.vin", "main-plate")).toBe("halt");
    expect(severityOf("identity.title-number")).toBe("halt");
    expect(severityOf("identity.paint-code")).toBe("worth");
    expect(entriesOf("engine.compression", [squeeze(190)], [squeeze(130)])[0]).toMatchObject({
      outcome: "differ",
      calls: { a: "good", b: "good" },
      severity: "worth",
    });
  });

  it("has no line for a circumstance", () => {
    expect(entriesOf("visit.light", [light("daylight")], [light("overcast")])).toEqual([]);
  });

  it("allows the sheet's own use between visits, or the caller's", () => {
    expect(odometer(61204, 61204)).toMatchObject({ outcome: "agree" });
    expect(odometer(61204, 61250)).toMatchObject({ outcome: "consistent", reason: "within-use" });
    expect(odometer(61204, 61404)).toMatchObject({ outcome: "differ", direction: "stated-better" });
    expect(odometer(61204, 61404, { "identity.odometer": 250 })).toMatchObject({
      outcome: "consistent",
    });
    expect(odometer(61204, 61100)).toMatchObject({ outcome: "differ", direction: "found-better" });
  });

  it("judges a check digit from model year 1981", () => {
    expect(vinFiguresAt(1981)).toMatchObject({ passes: "a" });
    expect(vinFiguresAt(1980)).toMatchObject({ passes: null });
  });
});
