import { describe, expect, test } from "vitest";
import type { CostAtStake } from "../costs-at-stake/index.ts";
import { costByMatter } from "./index.ts";

const cost = (likely: number, entries: number[], probability = 1): CostAtStake => ({
  row: "row",
  group: "body",
  entries,
  probability,
  low: likely,
  likely,
  high: likely,
});
const matter = (kind: string, ...lines: number[]) => ({ kind, zone: null, lines });
const priced = (costs: CostAtStake[], matters: ReturnType<typeof matter>[]) =>
  costByMatter({
    atStake: { currency: "USD", correlation: 0, costs, unset: [] },
    matters,
    table: "Own",
    draws: 100,
    seed: 1,
  });

describe("costByMatter", () => {
  test("gives each matter its own costs, dearest first, with its chance counted in", () => {
    const { byMatter } = priced(
      [cost(100_000, [4]), cost(60_000, [7, 9]), cost(300_000, [9], 0.5)],
      [matter("brakes", 4), matter("engine-wear", 7, 9)],
    );
    expect(byMatter).toEqual([
      { matter: "engine-wear", likely: 210_000 },
      { matter: "brakes", likely: 100_000 },
    ]);
  });

  test("counts a cost two matters ask for once, at the graver", () => {
    const { byMatter } = priced([cost(100_000, [3, 8])], [matter("tires", 8), matter("wheels", 3)]);
    expect(byMatter).toEqual([{ matter: "tires", likely: 100_000 }]);
  });

  test("keeps in the total what no matter holds", () => {
    const { total, byMatter } = priced([cost(123_456, [1]), cost(100_000, [2])], [matter("tires", 2)]);
    expect(total).toEqual({ low: 220_000, likely: 220_000, high: 220_000 });
    expect(byMatter).toEqual([{ matter: "tires", likely: 100_000 }]);
  });
});
