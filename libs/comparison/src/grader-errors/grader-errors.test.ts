import { describe, expect, it } from "vitest";
import { seededRandom } from "@evenhand/measurement/random";
import { houseGrades } from "@evenhand/sheet/grade-scale";
import { graderErrors } from "./index.ts";
import type { Grading } from "./index.ts";

const PEOPLE = ["ann", "bo", "cy"];

/** Thirty cars of five places; one person in three grades a step too high half of the time. */
const gradings = (cars = 30): Grading[] => {
  const random = seededRandom(5);
  return Array.from({ length: cars * 5 }, (_, place) => {
    const truth = Math.floor(random() * 4);
    return PEOPLE.map((person): Grading => {
      const high = person === "cy" && random() < 0.5 ? 1 : 0;
      return {
        car: `car ${Math.floor(place / 5)}`,
        place: `place ${place % 5}`,
        person,
        organization: `firm of ${person}`,
        independent: true,
        blind: true,
        state: "as found",
        grade: houseGrades[truth + high] ?? "as-new",
      };
    });
  }).flat();
};

const refusalsOf = (list: Grading[]) => {
  const result = graderErrors(list);
  return result.state === "refused" ? result.refusals : [];
};
const withFirst = (more: Partial<Grading>): Grading[] =>
  gradings().map((grading, index) => (index === 0 ? { ...grading, ...more } : grading));

describe("graderErrors", () => {
  it("finds who errs, and how often", () => {
    const result = graderErrors(gradings());
    if (result.state !== "estimated") throw new Error(result.state);
    expect(result.cars).toBe(30);
    expect(result.people.map(({ person }) => person)).toEqual(PEOPLE);
    const [ann, , cy] = result.people;
    expect(ann?.confusion[1]?.[1]).toBeCloseTo(1, 6);
    expect(cy?.confusion[1]?.[2]).toBeGreaterThan(0.35);
    expect(cy?.confusion[1]?.[2]).toBeLessThan(0.65);
    expect(result.prevalence.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
  });

  it("refuses under thirty cars", () => {
    expect(refusalsOf(gradings(29))).toEqual([{ why: "too-few-cars", cars: 29, needed: 30 }]);
  });

  it("refuses under three people, whose errors cannot be told from the truth", () => {
    const two = gradings().filter(({ person }) => person !== "cy");
    expect(refusalsOf(two)).toEqual([{ why: "too-few-people", people: 2, needed: 3 }]);
  });

  it("refuses what was not independent or not blind", () => {
    expect(refusalsOf(withFirst({ independent: false }))).toEqual([{ why: "not-independent", gradings: 1 }]);
    expect(refusalsOf(withFirst({ blind: false }))).toEqual([{ why: "not-blind", gradings: 1 }]);
  });

  it("refuses two people of one firm", () => {
    const oneFirm = gradings().map((grading) =>
      grading.person === "bo" ? { ...grading, organization: "firm of ann" } : grading,
    );
    expect(refusalsOf(oneFirm)).toEqual([{ why: "same-firm", organizations: ["firm of ann"] }]);
  });

  it("refuses grades of one car in two states", () => {
    expect(refusalsOf(withFirst({ state: "after repair" }))).toEqual([
      { why: "not-same-state", cars: ["car 0"] },
    ]);
  });

  it("names every condition that fails", () => {
    expect(refusalsOf([]).map(({ why }) => why)).toEqual(["too-few-cars", "too-few-people"]);
  });
});
