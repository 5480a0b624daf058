import { expect, test } from "vitest";
import { placesOf } from "@evenhand/message/format-message";
import { NotSeenReason } from "@evenhand/shared/answer";
import { Basis, Firmness } from "@evenhand/shared/finding";
import { Direction, Outcome, Standing } from "@evenhand/shared/outcome";
import { ReportKind } from "@evenhand/shared/report";
import { Severity } from "@evenhand/shared/severity";
import { HouseGrade, Need } from "@evenhand/shared/sheet";
import { terms } from "../terms/index.ts";
import { say } from "./index.ts";

test("every message is one that ICU reads", () => {
  for (const template of Object.values(terms)) expect(() => placesOf(template)).not.toThrow();
});

test("every term of the contracts has words, and no words are left that no term has", () => {
  const wanted = (
    [
      ["outcome", Outcome.options],
      ["standing", Standing.options],
      ["severity", Severity.options],
      ["at-stake", Severity.options],
      ["direction", Direction.options],
      ["firmness", Firmness.options],
      ["basis", Basis.options],
      ["grade", HouseGrade.options],
      ["not-seen", NotSeenReason.options],
      ["kind", ReportKind.options],
      ["need", Need.options],
    ] as const
  ).flatMap(([group, options]) => options.map((option) => `${group}.${option}`));
  const groups = new Set(wanted.map((id) => id.split(".")[0]));
  const there = Object.keys(terms).filter(
    (id) => groups.has(id.split(".")[0]) && !id.endsWith(".means") && id !== "grade.read-as",
  );
  expect(there.toSorted()).toEqual(wanted.toSorted());
});

test("counts are told in the right number, and an unfilled place is an error", () => {
  expect(say("answer.readings.many", { count: 1, range: "4" })).toBe("1 reading, 4");
  expect(say("answer.readings.many", { count: 12, range: "4–6" })).toBe("12 readings, 4–6");
  expect(() => say("answer.readings.many", { count: 12 })).toThrow("range");
});
