import type { AnswerOf } from "@evenhand/shared/answer";
import { compareReading } from "../src/compare-reading/index.ts";
import type { ReadingPair } from "../src/compare-reading/index.ts";
import type { Judgment } from "../src/judgment/index.ts";
import { gauge, readingItem, treadSpec } from "./small-items.ts";

type Reading = AnswerOf<"reading">;

/** Two readings against each other, each with the ordinary gauge, on one day, with no use between; else as `more` says. */
export const judgeReadings = (a: Reading, b: Reading, more: Partial<ReadingPair> = {}): Judgment => {
  const spec = more.spec ?? treadSpec();
  return compareReading({
    a,
    b,
    item: readingItem(spec),
    spec,
    contextA: {},
    contextB: {},
    instrumentA: gauge,
    instrumentB: gauge,
    shared: false,
    drifts: false,
    useAllowed: () => 0,
    times: () => ({ differentDays: false, later: null }),
    ...more,
  });
};

/** A tread across its width: at its inner edge, its center and its outer edge, in 1/32 in. */
export const acrossTread = (...values: number[]): Reading => ({
  kind: "reading",
  unit: "1/32in",
  values: values.map((value, index) => ({ spot: ["inner", "center", "outer"][index] ?? `${index}`, value })),
});
