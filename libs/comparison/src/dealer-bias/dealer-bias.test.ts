import { describe, expect, it } from "vitest";
import type { Finding } from "@evenhand/shared/finding";
import { finding, inspection, sheet, statement } from "../../testing/small-reports.ts";
import { compare } from "../compare/index.ts";
import { dealerBias } from "./index.ts";
import type { StatedCar } from "./index.ts";

const grade = (item: string, value: string): Finding =>
  finding(item, { kind: "grade", scale: "house", value });
const play = (value: number): Finding =>
  finding("steering.free-play", { kind: "reading", unit: "in", values: [{ value }] }, { instrument: "rule" });
const carOf = (a: Finding[], b: Finding[], dealer = "Larkspur"): StatedCar => ({
  dealer,
  entries: compare(statement(a), inspection(b), sheet).entries,
});
/** Half of the cars graded one step too high, and free play understated by half of δ. */
const cars = (count: number): StatedCar[] =>
  Array.from({ length: count }, (_, index) =>
    carOf(
      [grade("interior.headliner", index % 2 === 0 ? "as-new" : "light-wear"), play(0.75)],
      [grade("interior.headliner", "light-wear"), play(1)],
    ),
  );

describe("dealerBias", () => {
  it("gives the mean of the cars' own means, with an interval over cars", () => {
    const [interior, steering] = dealerBias(cars(20), sheet);
    expect(interior).toMatchObject({
      dealer: "Larkspur",
      section: "interior",
      step: { state: "known", n: 20 },
      shift: { state: "too-few", n: 0 },
    });
    if (interior?.step.state !== "known") throw new Error("not known");
    expect(interior.step.estimate).toBeCloseTo(0.5, 9);
    expect(interior.step.low).toBeGreaterThan(0);
    expect(steering).toMatchObject({ section: "steering", shift: { state: "known", n: 20 } });
    if (steering?.shift.state !== "known") throw new Error("not known");
    // As it was read: the use allowed between the visits is no part of a lean.
    expect(steering.shift.estimate).toBeCloseTo(0.5, 9);
  });

  it("counts a car once, however many of its items are graded", () => {
    const [row] = dealerBias(
      [
        carOf(
          [grade("interior.headliner", "as-new"), grade("interior.dash-top", "as-new")],
          [grade("interior.headliner", "even-wear"), grade("interior.dash-top", "as-new")],
        ),
      ],
      sheet,
    );
    expect(row?.step).toEqual({ state: "too-few", n: 1, needed: 20 });
  });

  it("says nothing under twenty cars", () => {
    expect(dealerBias(cars(19), sheet)[0]?.step).toEqual({ state: "too-few", n: 19, needed: 20 });
  });

  it("keeps dealers apart", () => {
    const other = carOf(
      [grade("interior.headliner", "as-new")],
      [grade("interior.headliner", "as-new")],
      "Northgate",
    );
    expect(
      dealerBias([...cars(1), other], sheet).map(({ dealer, section }) => `${dealer} ${section}`),
    ).toEqual(["Larkspur interior", "Larkspur steering", "Northgate interior"]);
  });
});
