import type { AnsweredMatter } from "@evenhand/shared/page-one";
import type { NextStep } from "@evenhand/shared/matter";
import type { Severity } from "@evenhand/shared/severity";
import { expect, test } from "vitest";
import { stepsOf } from "./steps.ts";

const asks = (
  headline: string,
  step: NextStep,
  minutes?: number,
  severity: Severity = "halt",
): AnsweredMatter => ({
  notes: [],
  lines: [],
  matter: {
    kind: "title",
    zone: null,
    severity,
    certainty: "seen",
    headline,
    found: "",
    decides: "",
    next: { step, words: `do ${step}`, minutes },
    question: "",
    admitted: false,
    lines: [0],
    checks: [],
    costRows: [],
  },
});

test("each step stands once, in the order of the gravest matter that asks for it, with every matter it is for", () => {
  const steps = stepsOf([
    asks("title", "see-paper"),
    asks("brakes", "do-not-drive"),
    asks("underside", "look-again", 40),
    asks("lien", "see-paper"),
    asks("road", "look-again", 25),
  ]);
  expect(steps.map(({ step, words, minutes }) => [step, words, minutes])).toEqual([
    ["see-paper", "do see-paper", null],
    ["do-not-drive", "do do-not-drive", null],
    ["look-again", "do look-again", 65],
  ]);
  expect(steps.map(({ matters }) => matters.map(({ number }) => number))).toEqual([[1, 4], [2], [3, 5]]);
});

test("nothing to do is said of nothing", () => {
  expect(stepsOf([])).toEqual([]);
});

test("trifles ask for nothing while anything else does", () => {
  const trifles = asks("Small things", "bargain", undefined, "small");
  expect(stepsOf([asks("title", "see-paper"), trifles]).map(({ step }) => step)).toEqual(["see-paper"]);
  expect(stepsOf([trifles]).map(({ step }) => step)).toEqual(["bargain"]);
});
