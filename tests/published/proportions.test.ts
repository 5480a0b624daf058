import { describe, expect, it } from "vitest";
import {
  clopperPearsonInterval,
  jeffreysInterval,
  wilsonInterval,
} from "@evenhand/measurement/proportion-interval";
import proportions from "../../fixtures/published/proportions.json" with { type: "json" };

const digitsOf = (values: readonly number[]): number =>
  Math.max(...values.map((value) => (String(value).split(".")[1] ?? "").length));

/** Both ends, to as many digits as are published of the longer one; eleven suffice. */
const asPublished = ({ low, high }: { readonly low: number; readonly high: number }, published: number[]) => {
  const scale = 10 ** Math.min(digitsOf(published), 11);
  return [low, high, ...published].map((end) => Math.round(end * scale) / scale);
};

/** R package binom by way of statsmodels; Newcombe (1998), table I. Marks stand in the fixture. */
describe("intervals for a share", () => {
  it.each(proportions.cases)("Wilson, $x of $n", ({ x, n, wilson }) => {
    const [low, high, ...ends] = asPublished(wilsonInterval(x, n), wilson);
    expect([low, high]).toEqual(ends);
  });

  it.each(proportions.cases.filter(({ jeffreys }) => jeffreys !== undefined))(
    "Jeffreys, $x of $n",
    ({ x, n, jeffreys }) => {
      const [low, high, ...ends] = asPublished(jeffreysInterval(x, n), jeffreys ?? []);
      expect([low, high]).toEqual(ends);
    },
  );

  it.each(proportions.cases.filter(({ clopperPearson }) => clopperPearson !== undefined))(
    "Clopper–Pearson, $x of $n",
    ({ x, n, clopperPearson }) => {
      const [low, high, ...ends] = asPublished(clopperPearsonInterval(x, n), clopperPearson ?? []);
      expect([low, high]).toEqual(ends);
    },
  );

  /** Brown, Cai and DasGupta (2001): Jeffreys ends at 0 where nothing, and at 1 where everything succeeded; from memory. */
  it("Jeffreys, none and all of 20", () => {
    const [none, all] = [jeffreysInterval(0, 20), jeffreysInterval(20, 20)];
    expect([none.low, all.high]).toEqual([0, 1]);
    expect(none.high).toBeCloseTo(1 - all.low, 12);
  });
});
