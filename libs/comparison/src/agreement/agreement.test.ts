import { describe, expect, it } from "vitest";
import type { Finding } from "@evenhand/shared/finding";
import { cohenKappa } from "@evenhand/measurement/cohen-kappa";
import { gwetAgreement } from "@evenhand/measurement/gwet-agreement";
import { krippendorffAlpha } from "@evenhand/measurement/krippendorff-alpha";
import type { HouseGrade } from "@evenhand/shared/sheet";
import { applicablePlaces } from "@evenhand/sheet/expand";
import { houseGrades } from "@evenhand/sheet/grade-scale";
import { finding, form, inspection, sheet, statement } from "../../testing/small-reports.ts";
import { compare } from "../compare/index.ts";
import { agreementOf } from "./index.ts";

const all = applicablePlaces(sheet.sheet, form).filter(({ item }) => item.answer === "grade");
/** One place of each item: every one is a witness of its own. */
const places = all.filter(({ item }, index) => all.findIndex((other) => other.item === item) === index);
const panels = all.filter(({ item }) => item.id === "body.finish");
const graded = (index: number, value: HouseGrade, blind: boolean): Finding => {
  const place = places[index];
  if (place === undefined) throw new Error(`no place ${index}`);
  return finding(
    place.item.id,
    { kind: "grade", scale: "house", value },
    { position: place.position, blind },
  );
};
const grade = (rank: number): HouseGrade => houseGrades[rank] ?? "spent";
/** Ranks of the house scale by each side. */
const agreement = (pairs: [number, number][], blind = true) => {
  const a = statement(pairs.map(([rank], index) => graded(index, grade(rank), false)));
  const b = inspection(pairs.map(([, rank], index) => graded(index, grade(rank), blind)));
  return agreementOf(compare(a, b, sheet).entries, b);
};
const pairs: [number, number][] = [
  [4, 4],
  [3, 3],
  [4, 3],
  [2, 2],
  [1, 2],
  [0, 0],
  [3, 3],
  [4, 4],
  [2, 1],
  [3, 4],
];
const counts = houseGrades.map((_, a) =>
  houseGrades.map((_other, b) => pairs.filter(([x, y]) => x === a && y === b).length),
);
const near = (result: { kind: string; coefficient?: number }): unknown =>
  expect.closeTo(result.coefficient ?? Number.NaN, 12);

describe("agreementOf", () => {
  it("goes by the first look where a place was looked at twice: a second one was asked for because they part", () => {
    const once = pairs.map(([rank]) => rank);
    const a = statement(pairs.map(([rank], index) => graded(index, grade(rank), false)));
    const firsts = pairs.map(([, rank], index) => graded(index, grade(rank), true));
    const seconds = firsts.map((one, index): Finding => ({
      ...graded(index, grade(once[index] ?? 0), false),
      look: "second",
      first: { answer: one.answer, blind: true },
    }));
    const of = (findings: Finding[]) => {
      const b = inspection(findings);
      return agreementOf(compare(a, b, sheet).entries, b);
    };
    expect(of(seconds)).toEqual(of(firsts));
  });

  it("gives every coefficient with its interval over grades given blind", () => {
    const result = agreement(pairs);
    expect(result).toMatchObject({
      n: 10,
      observed: { state: "known", n: 10, estimate: expect.closeTo(0.6, 12) },
      kappaLinear: { estimate: near(cohenKappa(counts, { weights: "linear" })) },
      kappaQuadratic: { estimate: near(cohenKappa(counts, { weights: "quadratic" })) },
      gwetAC2: { estimate: near(gwetAgreement(counts, { weights: "quadratic" })) },
      krippendorffAlpha: { estimate: near(krippendorffAlpha(pairs, "ordinal")) },
    });
  });

  it("is never surer than if every place stood for itself, and says nothing of many places of few items", () => {
    const result = agreement(pairs);
    const single = gwetAgreement(counts, { weights: "quadratic" });
    if (result.gwetAC2.state !== "known" || single.kind !== "estimated") throw new Error("not known");
    expect(result.gwetAC2.low).toBeLessThanOrEqual(single.low);
    expect(result.gwetAC2.high).toBeGreaterThanOrEqual(single.high);
    const painted = panels.map(({ item, position }, index) =>
      finding(item.id, { kind: "grade", scale: "house", value: grade(index % 5) }, { position, blind: true }),
    );
    expect(painted.length).toBeGreaterThan(10);
    expect(
      agreementOf(compare(statement(painted), inspection(painted), sheet).entries, inspection(painted)),
    ).toMatchObject({
      n: 1,
      observed: { state: "too-few", n: 1, needed: 10 },
      gwetAC2: { state: "too-few", n: 1, needed: 10 },
    });
  });

  it("counts nothing that was graded after the statement was shown", () => {
    expect(agreement(pairs, false)).toMatchObject({ n: 0, observed: { state: "too-few", n: 0, needed: 10 } });
  });

  it("passes over answers of other kinds and what only one side graded, blind as they may be", () => {
    const horn = finding("electrics.horn", { kind: "working", value: "yes" }, { blind: true });
    const [a, b] = [statement([horn]), inspection([horn, graded(0, "as-new", true)])];
    expect(agreementOf(compare(a, b, sheet).entries, b).n).toBe(0);
  });

  it("says nothing of fewer than ten", () => {
    expect(agreement(pairs.slice(1))).toMatchObject({
      n: 9,
      kappaLinear: { state: "too-few", n: 9, needed: 10 },
    });
  });
});
