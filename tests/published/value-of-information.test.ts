import { worthOfSeeing } from "@evenhand/decision/worth-of-looking";
import { evsi, readingTells, spreadAfter, unitNormalLoss } from "@evenhand/decision/worth-of-reading";
import { normalCdf } from "@evenhand/measurement/normal-distribution";
import integrate from "integrate-adaptive-simpson";
import { expect, test } from "vitest";
import published from "../../fixtures/published/value-of-information.json" with { type: "json" };

const density = (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
/** Over ± ten standard deviations, split where the act changes. */
const overNormal = (of: (z: number) => number, split = 0): number =>
  [
    [-10, split],
    [split, 10],
  ].reduce((sum, [from = 0, to = 0]) => sum + integrate((z) => of(z) * density(z), from, to, 1e-12, 40), 0);

test.each(published.loss.values)("unit normal loss of $z is $loss in the tables", ({ z, loss }) => {
  expect(Number(unitNormalLoss(z).toPrecision(4))).toBe(loss);
  expect(unitNormalLoss(z)).toBeCloseTo(
    overNormal((x) => Math.max(0, x - z), z),
    9,
  );
});

test.each(published.spreadAfter.values)(
  "spread of the mean after the look: $spread, read to $uncertainty",
  ({ after, ...look }) => expect(spreadAfter(look)).toBeCloseTo(after, 6),
);

test.each([
  { left: 0, spread: 1, uncertainty: 0 },
  { left: 500, spread: 800, uncertainty: 600 },
  { left: -500, spread: 800, uncertainty: 600 },
  { left: 30, spread: 20, uncertainty: 15 },
])("a reading worth going by is worth what integrating over every reading gives: %o", (look) => {
  const { left, spread, uncertainty } = look;
  const sd = Math.hypot(spread, uncertainty);
  const weight = spread ** 2 / sd ** 2;
  // After reading m + sd·z the mean is m + weight·sd·z: whoever sees it goes on only where that is above 0.
  const turns = -left / (weight * sd);
  const after = overNormal((z) => Math.max(0, left + weight * sd * z), turns);
  const closed = evsi(look);
  expect(closed / spread).toBeCloseTo((after - Math.max(0, left)) / spread, 8);
});

test.each([
  { probability: 0.5, spread: 1, uncertainty: 1 },
  { probability: 0.1, spread: 2, uncertainty: 0.5 },
  { probability: 0.9, spread: 0.4, uncertainty: 1 },
])("what a reading tells of a limit is what integrating over the truth gives: %o", (against) => {
  const { probability, spread, uncertainty } = against;
  // The truth is standard, so that the limit stands where so much is above it; read with an error of u/σ.
  const told = readingTells(against);
  const ratio = uncertainty / spread;
  let limit = 0;
  for (let step = 4; step > 1e-13; step /= 2) limit += 1 - normalCdf(limit) > probability ? step : -step;
  const both = integrate((t) => normalCdf((t - limit) / ratio) * density(t), limit, 10, 1e-12, 40);
  expect(told.says * told.ifSaid).toBeCloseTo(both, 8);
});

test("one thing in doubt, read against its limit: between nothing and what the truth is worth", () => {
  const thing = { id: "a", probability: 0.5, mean: 240, minutes: 5, first: false };
  const worth = (uncertainty: number): number =>
    worthOfSeeing(100, [{ ...thing, reading: { spread: 1, uncertainty } }], new Set(["a"]));
  // Room 100, due 120 on the mean: he leaves. The truth: half the time nothing is due, 100 stay: 50.
  expect(worth(0)).toBeCloseTo(50, 10);
  // Read to its own spread, "not past" leaves 1/4 of 240 due, 40 of 100: half the time. 20.
  expect(worth(1)).toBeCloseTo(20, 10);
  expect(worth(1e9)).toBeCloseTo(0, 10);
});
