import { describe, expect, it } from "vitest";
import { dearerFirst } from "./dearer-first.ts";
import type { Matter } from "./matter.ts";
import type { Answer, AnswerCost, AnsweredMatter } from "./page-one.ts";

const matter = (kind: string, more: Partial<Matter> = {}): AnsweredMatter => ({
  matter: {
    kind,
    zone: null,
    severity: "worth",
    certainty: "measured",
    headline: kind,
    found: "",
    decides: "",
    next: { step: "ask", words: "" },
    question: "",
    admitted: false,
    lines: [0],
    checks: [],
    costRows: [],
    ...more,
  },
  notes: [],
  lines: [],
});
const answerWith = (...matters: AnsweredMatter[]): Pick<Answer, "matters"> => ({ matters });
const likely = (costs: Record<string, number>): AnswerCost => ({
  asking: null,
  cost: {
    currency: "USD",
    table: "Own",
    total: { low: 0, likely: 0, high: 0 },
    byMatter: Object.entries(costs).map(([id, cost]) => ({ matter: id, likely: cost })),
    unset: [],
  },
});
const kindsOf = (answer: Pick<Answer, "matters">, priced: AnswerCost | null): string[] =>
  dearerFirst(answer, priced).matters.map((one) => one.matter.kind);

describe("of matters that are as grave and as sure", () => {
  it("the dearer stands first, and what no table prices behind it", () => {
    const answer = answerWith(matter("miles"), matter("paint"), matter("engine-wear"));
    expect(kindsOf(answer, likely({ paint: 300, "engine-wear": 900 }))).toEqual([
      "engine-wear",
      "paint",
      "miles",
    ]);
  });

  it("nothing moves without a table, or past what is graver, surer or not admitted", () => {
    const answer = answerWith(
      matter("brakes", { severity: "danger" }),
      matter("paint", { certainty: "seen" }),
      matter("model", { certainty: "told" }),
      matter("color", { certainty: "told", admitted: true }),
    );
    const order = ["brakes", "paint", "model", "color"];
    expect(kindsOf(answer, likely({ color: 900, model: 800, paint: 700 }))).toEqual(order);
    expect(kindsOf(answer, null)).toEqual(order);
    expect(kindsOf(answer, { asking: null, cost: null })).toEqual(order);
  });

  it("what was measured and what was seen are as sure", () => {
    const answer = answerWith(matter("paint"), matter("engine-wear", { certainty: "seen" }));
    expect(kindsOf(answer, likely({ "engine-wear": 900 }))).toEqual(["engine-wear", "paint"]);
  });

  it("places on the car are told apart", () => {
    const answer = answerWith(
      matter("structure", { zone: "left-front" }),
      matter("structure", { zone: "rear" }),
    );
    const { matters } = dearerFirst(answer, likely({ "structure:rear": 5 }));
    expect(matters.map((one) => one.matter.zone)).toEqual(["rear", "left-front"]);
  });
});
