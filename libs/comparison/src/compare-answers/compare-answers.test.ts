import { describe, expect, it } from "vitest";
import type { Answer } from "@evenhand/shared/answer";
import type { Finding } from "@evenhand/shared/finding";
import type { GradeScale, Report } from "@evenhand/shared/report";
import type { UnitSymbol } from "@evenhand/shared/unit";
import { finding, form, inspection, sheet, statement } from "../../testing/small-reports.ts";
import { applicablePlaces } from "@evenhand/sheet/expand";
import { planOf } from "../plan/index.ts";
import { findSharing } from "../sharing/index.ts";
import { compareAnswers } from "./index.ts";

type Parts = {
  a?: Partial<Report>;
  b?: Partial<Report>;
  useAllowed?: Record<string, number>;
  miles?: number;
  conditions?: { a: Finding["conditions"]; b: Finding["conditions"] };
  more?: Partial<Finding>;
};

const places = applicablePlaces(sheet.sheet, form);

const sideOf = (report: Report) => ({
  report,
  instruments: new Map(report.instruments.map((one) => [one.id, one])),
});
const compare = (item: string, a: Answer, b: Answer, parts: Parts = {}) => {
  const position = places.find((place) => place.item.id === item)?.position ?? "";
  const [first, second] = [statement([], parts.a), inspection([], parts.b)];
  return compareAnswers({
    a: finding(item, a, { position, conditions: parts.conditions?.a, ...parts.more }),
    b: finding(item, b, { position, conditions: parts.conditions?.b, ...parts.more }),
    place: planOf(sheet).place(item, position),
    contexts: {
      a: { position, scales: first.scales, conditions: parts.more?.conditions },
      b: { position, scales: second.scales, conditions: parts.more?.conditions },
    },
    sides: {
      a: sideOf(first),
      b: sideOf(second),
      sharing: findSharing(first, second, {}),
      useAllowed: parts.useAllowed ?? {},
      milesBetween: () => parts.miles ?? 0,
    },
  });
};
const working = (value: "yes" | "no" | "intermittent"): Answer => ({ kind: "working", value });
const choice = (option: string): Answer => ({ kind: "choice", option });
const grade = (value: string | number, scale = "house"): Answer => ({ kind: "grade", scale, value });
const code = (text: string): Answer => ({ kind: "code", text });
const color = (L: number): Answer => ({
  kind: "color",
  geometry: "45/0",
  metallic: false,
  values: [{ L, a: 10, b: -20 }],
});
const read = (unit: UnitSymbol, ...values: number[]): Answer => ({
  kind: "reading",
  unit,
  values: values.map((value) => ({ value })),
});
const tools = { instruments: [{ id: "gauge", name: "gauge" }] };
const measured: Parts = { a: tools, b: tools, more: { instrument: "gauge" } };

const psi = (value: number) => read("psi", value, value);
const passes = (modelYear: number) => {
  const vehicle = { vehicle: { ...statement([]).vehicle, modelYear } };
  return compare("identity.vin", code("0EVTL82633A007146"), code("0EVTL8Z633A007146"), {
    a: vehicle,
    b: vehicle,
  }).figures;
};
describe("lists", () => {
  it("know what stands halfway, and only for what works", () => {
    expect(compare("electrics.radio", working("yes"), working("intermittent")).outcome).toBe("doubtful");
    expect(compare("electrics.horn", working("yes"), working("intermittent"))).toMatchObject({
      outcome: "doubtful",
      reason: "works-at-times",
    });
    expect(
      compare("trunk.jack", { kind: "presence", value: "present" }, { kind: "presence", value: "absent" }),
    ).toMatchObject({ outcome: "differ", reason: "other-answer" });
    expect(compare("driveline.pinion-seal", choice("none"), choice("drip"))).toMatchObject({
      outcome: "differ",
      reason: "other-answer",
      direction: "stated-better",
    });
  });

  it("take an option the item does not have for one that claims nothing", () => {
    expect(compare("driveline.pinion-seal", choice("elsewhere"), choice("drip"))).toMatchObject({
      outcome: "differ",
      direction: "stated-better",
    });
    expect(compare("driveline.pinion-seal", choice("drip"), choice("elsewhere"))).toMatchObject({
      outcome: "differ",
      direction: "found-better",
    });
    expect(compare("driveline.pinion-seal", choice("elsewhere"), choice("elsewhere"))).toMatchObject({
      standing: "confirmed",
    });
    expect(compare("driveline.pinion-seal", choice("drip"), choice("drip"))).toMatchObject({
      standing: "agreed-fault",
    });
  });
});

const scale = (id: string, count: number): GradeScale => ({
  id,
  name: id,
  grades: Array.from({ length: count }, (_, index) => ({ id: `g${index}`, name: `g${index}` })),
});

describe("grades", () => {
  const item = "interior.headliner";

  it("are the same by scale, value and stretch", () => {
    const scales = { scales: [scale("one", 5), scale("two", 5)] };
    const reasonOf = (a: Answer, b: Answer, other: Partial<Report> = scales) =>
      compare(item, a, b, { a: scales, b: other }).reason;
    expect(reasonOf(grade("g0", "one"), grade("g0", "one"))).toBe("same-grade");
    expect(reasonOf(grade("g0", "one"), grade("g0", "two"))).toBe("grades-overlap");
    expect(reasonOf(grade("g0", "one"), grade("g1", "one"))).not.toBe("same-grade");
    // Two reports that mean two scales by one name.
    expect(reasonOf(grade("g0", "one"), grade("g0", "one"), { scales: [scale("one", 6)] })).toBe(
      "grades-overlap",
    );
    expect(reasonOf(grade("g4", "one"), grade("g4", "one"), { scales: [scale("one", 9)] })).not.toBe(
      "same-grade",
    );
  });

  it("cannot be set against a scale a report does not describe", () => {
    const unknown = {
      outcome: "incomparable",
      reason: "unknown-scale",
      direction: "neither",
      standing: "not-comparable",
    };
    expect(compare(item, grade("g0", "one"), grade("spent"))).toEqual(unknown);
    expect(compare(item, grade("spent"), grade("g0", "one"))).toEqual(unknown);
  });

  it("are an agreed fault where both are bad, not where one is", () => {
    expect(compare(item, grade("spent"), grade("spent")).standing).toBe("agreed-fault");
    expect(compare(item, grade("heavy-wear"), grade("even-wear")).standing).toBe("not-contradicted");
    expect(compare(item, grade("even-wear"), grade("heavy-wear")).standing).toBe("not-contradicted");
    expect(compare(item, grade("as-new"), grade("as-new")).standing).toBe("confirmed");
  });

  it("are judged more strictly where the item is", () => {
    expect(compare("interior.belt-webbing", grade("as-new"), grade("light-wear")).outcome).toBe("doubtful");
    expect(compare(item, grade("as-new"), grade("light-wear")).outcome).toBe("consistent");
  });
});

const boils = (at: number) => read("degC", at, at);

describe("readings", () => {
  it("are read with the instrument each finding names in its own report", () => {
    expect(compare("engine.compression", psi(150), psi(150), measured).outcome).toBe("agree");
    const uncertainty = (parts: Parts) => {
      const { figures } = compare("engine.compression", psi(150), psi(150), parts);
      return figures?.of === "reading" ? figures.expandedUncertainty : 0;
    };
    expect(uncertainty({ ...measured, b: {} })).toBeGreaterThan(uncertainty(measured));
    expect(uncertainty({ ...measured, a: {} })).toBeGreaterThan(uncertainty(measured));
    expect(uncertainty({})).toBeGreaterThan(uncertainty({ ...measured, a: {} }));
  });

  it("drift only where the item does", () => {
    expect(
      compare("electrics.volts-rest", read("V", 12.9, 12.9), read("V", 12.7, 12.7), measured).outcome,
    ).not.toBe("differ");
    expect(compare("engine.compression", psi(150), psi(90), measured)).toMatchObject({
      outcome: "differ",
      reason: "beyond-delta",
    });
  });

  it("are not excused by the day where a limit is failed", () => {
    expect(compare("brakes.fluid-boiling-point", boils(230), boils(100), measured)).toMatchObject({
      outcome: "differ",
    });
    expect(compare("brakes.fluid-boiling-point", boils(232), boils(228), measured).outcome).not.toBe(
      "differ",
    );
  });

  it("are allowed use only where the item rises, the caller's before the sheet's", () => {
    const miles = (a: number, b: number, useAllowed?: Record<string, number>) =>
      compare("identity.odometer", read("mi", a), read("mi", b), { ...measured, useAllowed }).outcome;
    expect(miles(1000, 1045)).toBe("consistent");
    expect(miles(1000, 1045, { "identity.odometer": 0 })).toBe("differ");
    expect(miles(1000, 1200, { "identity.odometer": 200 })).toBe("consistent");
    const steady = { ...measured, useAllowed: { "engine.compression": 60 } };
    expect(compare("engine.compression", psi(150), psi(90), steady).outcome).toBe("differ");
  });

  it("are allowed more use the more miles were driven between the visits", () => {
    const tread = (miles: number) =>
      compare("wheels.tread-depth", read("1/32in", 9, 9, 9), read("1/32in", 6, 6, 6), { ...measured, miles });
    expect(tread(0).figures).toMatchObject({ difference: 3, useAllowed: 0.5 });
    expect(tread(2000).figures).toMatchObject({ difference: 3, useAllowed: 1 });
    expect([tread(0).outcome, tread(6000).outcome]).toEqual(["doubtful", "consistent"]);
    expect(
      compare("wheels.tread-depth", read("1/32in", 6, 6, 6), read("1/32in", 9, 9, 9), {
        ...measured,
        miles: 6000,
      }).figures,
    ).toMatchObject({ difference: -3 });
  });
});

const vacuum = (value: number, height: number) => ({
  answer: read("inHg", value, value),
  conditions: { height },
});

const compared = (a: ReturnType<typeof vacuum>, b: ReturnType<typeof vacuum>) =>
  compare("engine.vacuum", a.answer, b.answer, {
    ...measured,
    conditions: { a: a.conditions, b: b.conditions },
  });

describe("readings under other conditions", () => {
  it("are consistent where the height explains what lies between them, shown as it was read", () => {
    expect(compared(vacuum(19, 0), vacuum(14.5, 5000))).toMatchObject({
      outcome: "consistent",
      reason: "explained-by-conditions",
      figures: { difference: 4.5 },
    });
  });

  it("cannot be set against each other where it does not", () => {
    expect(compared(vacuum(19, 0), vacuum(8, 5000)).outcome).toBe("incomparable");
    expect(compared(vacuum(19, 5000), vacuum(14.5, 0)).outcome).toBe("incomparable");
  });
});

const turned = (one: number | undefined, other: number | undefined) =>
  compare("electrics.volts-charging", read("V", 14.1), read("V", 14.1), {
    ...measured,
    conditions: {
      a: one === undefined ? undefined : { "engine-speed": one },
      b: other === undefined ? undefined : { "engine-speed": other },
    },
  }).outcome;

describe("conditions noted on both sides", () => {
  it("are the same as near as a person notes them", () => {
    expect(compared(vacuum(19, 0), vacuum(19, 500)).outcome).toBe("agree");
    expect(compared(vacuum(19, 500), vacuum(19, 0)).outcome).toBe("agree");
    expect(compared(vacuum(19, 4000), vacuum(19, 4500)).outcome).toBe("agree");
    expect(compared(vacuum(19, 0), vacuum(19, 2000)).outcome).not.toBe("agree");
  });

  it("decide nothing where one side noted none, or where the item does not hang on them", () => {
    expect([turned(1500, undefined), turned(undefined, 1500), turned(1500, 2900)]).toEqual([
      "agree",
      "agree",
      "agree",
    ]);
  });
});

describe("one answer for several of them", () => {
  it("differs where some do not work, and is in doubt where it is one thing", () => {
    expect(compare("electrics.warning-lamps", working("yes"), working("intermittent"))).toMatchObject({
      outcome: "differ",
      reason: "some-do-not-work",
    });
    expect(compare("electrics.wipers", working("yes"), working("intermittent")).outcome).toBe("doubtful");
  });
});

describe("colors and codes", () => {
  it("are compared by their own rules", () => {
    expect(compare("body.color", color(40), color(40.2)).reason).toBe("color-within-delta");
    expect(compare("identity.paint-code", code("M2"), code("m 2")).reason).toBe("same-code");
  });

  it("have their check digits asked from model year 1981 on", () => {
    expect([passes(1981), passes(1980)]).toMatchObject([{ passes: "a" }, { passes: null }]);
  });
});

const degrees = (value: number): Answer => ({ kind: "reading", unit: "K", values: [{ value }] });

describe("how a visit was", () => {
  const item = "visit.warmed-beforehand";
  const warmed: Answer = { kind: "presence", value: "present" };
  const not: Answer = { kind: "presence", value: "absent" };

  it("each side tells of its own: nobody is contradicted, and what is bad stands", () => {
    expect(compare(item, not, warmed)).toMatchObject({
      outcome: "incomparable",
      reason: "own-visit",
      direction: "neither",
    });
    expect(compare(item, warmed, not)).toMatchObject({ outcome: "consistent", reason: "own-visit" });
    expect(compare(item, warmed, warmed).outcome).toBe("agree");
    expect(compare("visit.engine-cold", degrees(1), degrees(9)).reason).toBe("own-visit");
  });
});

describe("what drifts from day to day", () => {
  const item = "road.cold-start";

  it("is in doubt where what was found is bad, and contradicts nothing where it is not", () => {
    expect(compare(item, choice("at-once"), choice("several-tries"))).toMatchObject({
      outcome: "doubtful",
      reason: "changed-bad-between-days",
      direction: "stated-better",
      standing: "in-doubt",
    });
    expect(compare(item, choice("several-tries"), choice("at-once"))).toMatchObject({
      outcome: "consistent",
      direction: "found-better",
    });
    expect(compare("road.gear", choice("third"), choice("fourth"))).toMatchObject({
      outcome: "consistent",
      reason: "changed-between-days",
      standing: "not-contradicted",
    });
  });

  it("stays what it is on one day, or where it agrees", () => {
    const more = { time: "2026-05-04T15:00:00Z" };
    expect(compare(item, choice("at-once"), choice("several-tries"), { more }).outcome).toBe("differ");
    expect(compare(item, choice("several-tries"), choice("no-start")).outcome).toBe("agree");
  });
});

describe("answers that cannot be set against each other", () => {
  const other = {
    outcome: "incomparable",
    reason: "other-kind",
    direction: "neither",
    standing: "not-comparable",
  };

  it("are of two kinds", () => {
    const answers = [
      working("yes"),
      choice("none"),
      { kind: "presence", value: "present" } as const,
      grade("spent"),
      code("M2"),
      color(40),
      read("psi", 150),
    ];
    for (const [index, a] of answers.entries()) {
      const b = answers[(index + 1) % answers.length] ?? a;
      expect(compare("electrics.horn", a, b)).toEqual(other);
      expect(compare("electrics.horn", b, a)).toEqual(other);
    }
  });

  it("are not of the kind the item asks for", () => {
    for (const answer of [code("M2"), color(40), read("psi", 150)])
      expect(compare("electrics.horn", answer, answer)).toEqual(other);
  });
});
