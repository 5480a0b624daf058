import { describe, expect, it } from "vitest";
import type { Answer } from "@evenhand/shared/answer";
import type { Finding } from "@evenhand/shared/finding";
import { finding, inspection, sheet, statement } from "../../testing/small-reports.ts";
import { compare } from "../compare/index.ts";

type Noted = Finding["conditions"];

const lineOf = (item: string, a: Answer, b: Answer, noted: { a?: Noted; b?: Noted } = {}, position = "") => {
  const one = finding(item, a, { position, conditions: noted.a, instrument: "gauge" });
  const other = finding(item, b, { position, conditions: noted.b, instrument: "gauge" });
  const instruments = [{ id: "gauge", name: "gauge" }];
  const { entries } = compare(statement([one], { instruments }), inspection([other], { instruments }), sheet);
  return entries.find((entry) => entry.item === item && entry.position === position);
};
const said = (...of: Parameters<typeof lineOf>): string => {
  const line = lineOf(...of);
  return `${line?.outcome}: ${line?.reason}, ${line?.direction}`;
};
const choice = (option: string, ...also: string[]): Answer => ({
  kind: "choice",
  option,
  ...(also.length === 0 ? {} : { also }),
});

const pull = (b: string) => said("road.braking", choice("slight-pull"), choice(b));

describe("several options of one answer", () => {
  const smell = "interior.smell";

  it.each<[string, Answer, Answer, string]>([
    ["the same ones", choice("smoke", "musty"), choice("smoke", "musty"), "agree: same-answer, neither"],
    [
      "the same in another order",
      choice("musty", "smoke"),
      choice("smoke", "musty"),
      "agree: same-answer, neither",
    ],
    [
      "one more of them found",
      choice("smoke"),
      choice("smoke", "fuel"),
      "differ: worse-than-said, stated-better",
    ],
    [
      "one more found, beside others",
      choice("smoke", "musty"),
      choice("musty", "smoke", "fuel"),
      "differ: worse-than-said, stated-better",
    ],
    [
      "a grave one found, and a trifle stated",
      choice("smoke"),
      choice("musty", "fuel"),
      "differ: worse-than-said, stated-better",
    ],
    [
      "a grave one stated, and a trifle found",
      choice("musty", "fuel"),
      choice("smoke"),
      "differ: other-answer, found-better",
    ],
    [
      "another one found, graver and not grave",
      choice("smoke"),
      choice("musty"),
      "agree: both-bad-worse, stated-better",
    ],
    [
      "none stated, some found",
      choice("none"),
      choice("smoke", "fuel"),
      "differ: other-answer, stated-better",
    ],
    [
      "some stated, none found",
      choice("smoke", "fuel"),
      choice("none"),
      "differ: other-answer, found-better",
    ],
    ["fewer found than stated", choice("smoke", "musty"), choice("smoke"), "agree: same-answer, neither"],
    ["none stated nor found", choice("none"), choice("none"), "agree: same-answer, neither"],
    [
      "not known by the inspection",
      choice("smoke", "musty"),
      choice("not-known"),
      "unseen: not-known-by-inspection, neither",
    ],
  ])("%s", (_name, a, b, expected) => {
    expect(said(smell, a, b)).toBe(expected);
  });

  it("stand for the gravest that one found beyond the other", () => {
    const line = lineOf(smell, choice("none"), choice("smoke", "fuel", "musty"));
    expect(line).toMatchObject({ outcome: "differ", calls: { b: "danger" }, severity: "danger" });
    const worse = lineOf(smell, choice("smoke"), choice("smoke", "fuel"));
    expect(worse).toMatchObject({ standing: "differs", marks: [] });
  });

  it("rank by the gravest of them where one list is another", () => {
    // Used oil is good, low oil small, milky oil a mark of something graver, which whoever speaks of low oil did not disclose.
    expect(said("engine.oil", choice("used", "low"), choice("milky"))).toBe(
      "differ: worse-than-said, stated-better",
    );
    expect(said("engine.oil", choice("milky"), choice("used", "low"))).toBe(
      "differ: other-answer, found-better",
    );
    expect(said("engine.oil", choice("clean", "low"), choice("used", "milky"))).toBe(
      "differ: worse-than-said, stated-better",
    );
    expect(said("engine.oil", choice("clean", "low"), choice("low"))).toBe("agree: same-answer, neither");
  });

  it("disclose a graver degree of the same, and nothing else that is grave", () => {
    expect(pull("pulls-left")).toBe("agree: both-bad-worse, stated-better");
    expect(pull("locks-one")).toBe("differ: worse-than-said, stated-better");
  });

  it("of one alone are an answer as any", () => {
    const alone: Answer = { kind: "choice", option: "smoke", also: [] };
    expect(said(smell, alone, choice("smoke"))).toBe("agree: same-answer, neither");
    expect(said(smell, choice("none"), alone)).toBe("differ: other-answer, stated-better");
    expect(said(smell, choice("musty"), alone)).toBe("agree: both-bad, found-better");
  });
});

const origin = (a: string, b: string) => said("identity.originality", choice(a), choice(b), {}, "engine");

describe("a claim of which no more can be shown by looking", () => {
  it("is not contradicted by a weaker good answer, where the item says so", () => {
    expect(origin("original-to-car", "right-type-and-date")).toBe(
      "consistent: weaker-not-otherwise, stated-better",
    );
    expect(origin("original-to-car", "other-type")).toBe("differ: other-answer, stated-better");
    expect(origin("original-to-car", "not-known")).toBe("consistent: not-known-by-inspection, stated-better");
  });

  it("is not contradicted where only a seller can claim it", () => {
    expect(said("identity.miles-claim", choice("actual"), choice("believed"))).toBe(
      "consistent: weaker-not-otherwise, stated-better",
    );
  });

  it("is as any other elsewhere", () => {
    expect(said("identity.lien", choice("none"), choice("released"))).toBe(
      "doubtful: neighbors, stated-better",
    );
    expect(said("identity.lien", choice("none"), choice("not-known"))).toBe(
      "unseen: not-known-by-inspection, neither",
    );
  });
});

const presence = (value: "present" | "absent" | "not-known"): Answer => ({ kind: "presence", value });

const buildSheet = (a: Answer, b: Answer) => lineOf("identity.build-sheet", a, b);

describe("a paper nobody promised", () => {
  it("and nobody found is no fault of anybody", () => {
    expect(buildSheet(presence("absent"), presence("absent"))).toMatchObject({
      outcome: "agree",
      standing: "confirmed",
      marks: [],
    });
    expect(buildSheet(presence("present"), presence("present"))).toMatchObject({
      outcome: "agree",
      standing: "confirmed",
    });
  });

  it("is missed where it was promised, and a jack is missed by both", () => {
    expect(buildSheet(presence("present"), presence("absent"))).toMatchObject({
      outcome: "differ",
      direction: "stated-better",
    });
    expect(buildSheet(presence("absent"), presence("present"))?.direction).toBe("found-better");
    expect(buildSheet(presence("not-known"), presence("not-known"))?.reason).toBe("not-known-by-either");
    expect(lineOf("trunk.jack", presence("absent"), presence("absent"))).toMatchObject({
      outcome: "agree",
      standing: "agreed-fault",
      marks: ["both-bad"],
    });
  });
});

const oilAs = (a: string, b: string) => said("engine.oil", choice(a), choice(b));

describe("options that move from day to day", () => {
  it("are those the item names, on either side", () => {
    expect(oilAs("clean", "low")).toBe("doubtful: changed-bad-between-days, stated-better");
    expect(oilAs("low", "clean")).toBe("consistent: changed-between-days, found-better");
    expect(oilAs("clean", "milky")).toBe("differ: other-answer, stated-better");
    expect(oilAs("clean", "used")).toBe("consistent: neighbors, stated-better");
  });

  it("must be what is bad of the two: nothing makes used oil milky overnight", () => {
    expect(oilAs("used", "milky")).toBe("differ: other-answer, stated-better");
    expect(oilAs("milky", "low")).toBe("differ: other-answer, found-better");
    expect(said("road.cold-start", choice("at-once"), choice("no-start"))).toBe(
      "differ: other-answer, stated-better",
    );
  });

  it("are softened where they are in doubt too, and never where nothing is apart", () => {
    expect(said("engine.coolant", choice("clean"), choice("low"))).toBe(
      "doubtful: changed-bad-between-days, stated-better",
    );
    expect(said("road.cold-start", choice("at-once"), choice("within-ten-seconds"))).toBe(
      "consistent: neighbors, stated-better",
    );
    expect(said("road.cold-start", choice("at-once"), choice("at-once"))).toBe("agree: same-answer, neither");
    expect(said("road.cold-start", choice("at-once"), choice("not-known"))).toBe(
      "unseen: not-known-by-inspection, neither",
    );
  });
});

const psi = (value: number): Answer => ({ kind: "reading", unit: "psi", values: [{ value }, { value }] });
const squeezed = (a: Noted, b: Noted, found = 150) => {
  const noted = { ...(a === undefined ? {} : { a }), ...(b === undefined ? {} : { b }) };
  return said("engine.compression", psi(150), psi(found), noted, "cylinder-1");
};
const vacuum = (value: number): Answer => ({ kind: "reading", unit: "inHg", values: [{ value }, { value }] });

const turnedIn = (a: number, b: number) =>
  said(
    "road.revolutions",
    { kind: "reading", unit: "1/min", values: [{ value: 2500 }] },
    { kind: "reading", unit: "1/min", values: [{ value: 2500 }] },
    { a: { gear: a }, b: { gear: b } },
  );

describe("conditions that decide a reading", () => {
  const agreed = "agree: within-delta, neither";
  const other = "incomparable: other-conditions, neither";

  it.each<[string, Noted, Noted, string]>([
    ["noted alike", { warm: true }, { warm: true }, agreed],
    ["noted otherwise", { warm: true }, { warm: false }, other],
    [
      "one of two noted otherwise",
      { warm: true, "throttle-open": true },
      { warm: true, "throttle-open": false },
      other,
    ],
    ["noted by neither", undefined, undefined, agreed],
    ["noted by the statement alone", { warm: false }, undefined, agreed],
    ["noted by the inspection alone", {}, { warm: false }, agreed],
    ["noted in words on one side and as yes or no on the other", { warm: "lukewarm" }, { warm: true }, other],
    ["noted as a figure on one side", { warm: 1 }, { warm: true }, other],
    ["noted as a figure on the other", { warm: true }, { warm: 1 }, other],
  ])("%s", (_name, a, b, expected) => {
    expect(squeezed(a, b)).toBe(expected);
  });

  it("may lie a fifth apart where they are figures, and are the same", () => {
    expect([turnedIn(4, 5), turnedIn(5, 4)]).toEqual([agreed, agreed]);
    expect([turnedIn(3, 5), turnedIn(5, 3), turnedIn(4, 5.1)]).toEqual([other, other, other]);
  });

  it("explain nothing where nobody knows by how much they move it", () => {
    expect(squeezed({ warm: true }, { warm: false }, 90)).toBe(other);
  });

  it("contradict nothing where they explain it: neither side is better, and nothing is marked", () => {
    const line = lineOf("engine.vacuum", vacuum(19), vacuum(14), { a: { height: 0 }, b: { height: 5000 } });
    expect(line).toMatchObject({
      outcome: "consistent",
      reason: "explained-by-conditions",
      direction: "neither",
      standing: "not-contradicted",
      marks: [],
      figures: { difference: 5 },
    });
  });

  it("explain nothing that is no reading", () => {
    const height = { a: { height: 0 }, b: { height: 5000 } };
    expect(said("engine.vacuum", vacuum(19), { kind: "code", text: "19" }, height)).toBe(other);
    expect(said("engine.vacuum", { kind: "code", text: "19" }, vacuum(19), height)).toBe(other);
    expect(
      said("engine.vacuum", vacuum(19), vacuum(19), { a: { height: "low" }, b: { height: "high" } }),
    ).toBe(other);
  });
});
