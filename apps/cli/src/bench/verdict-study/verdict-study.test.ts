import { describe, expect, it } from "vitest";
import type { ReadingSpec } from "@evenhand/shared/sheet";
import { deltaOf } from "@evenhand/comparison/delta";
import { seededRandom } from "@evenhand/measurement/random";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { honest, readingsOf, truthAway, typicalOf } from "./people.ts";
import { confirmableItems, simulate } from "./simulate.ts";
import { cellEquality, engine, fixedTolerance } from "./verdicts.ts";

const items = confirmableItems(sheetVersion1);
const judges = [engine, cellEquality, fixedTolerance];
const people = { name: "as declared", dealer: honest, inspector: honest };
const specOf = (id: string): ReadingSpec => {
  const found = items.find((item) => item.id === id);
  if (found === undefined) throw new Error(`no ${id}`);
  return found.spec;
};

const counts = (seed: number): string => JSON.stringify(simulate(items, people, judges, 20, seed));

describe("the verdict study", () => {
  it("gives the same counts for the same seed, and others for another", () => {
    expect(counts(7)).toBe(counts(7));
    expect(counts(7)).not.toBe(counts(8));
  });

  it("sets the second truth so many δ away on every item, plausibly", () => {
    for (const { spec } of items) {
      const truth = typicalOf(spec);
      for (const deltas of [0, 1, 2]) {
        const other = truthAway(spec, truth, deltas);
        expect(Math.abs(other - truth)).toBeCloseTo(deltas * deltaOf(spec.delta, truth, other), 9);
        expect(other).toBeGreaterThanOrEqual(spec.plausible[0]);
        expect(other).toBeLessThanOrEqual(spec.plausible[1]);
      }
    }
  });

  it("reads as often and at as many spots as the sheet asks, to the instrument's step", () => {
    const spec = specOf("wheels.tread-depth");
    const { values } = readingsOf(spec, 8, 2, honest, seededRandom(1));
    expect(values).toHaveLength(spec.ask.readings * spec.ask.spots);
    expect(new Set(values.map(({ spot }) => spot)).size).toBe(spec.ask.spots);
  });

  it("counts every verdict of every judge once", () => {
    for (const { byDistance, trials } of simulate(items, people, judges, 5, 3)) {
      for (const { agree, consistent, doubtful, differ } of byDistance) {
        expect(agree + consistent + doubtful + differ).toBe(trials);
      }
    }
  });

  it("shades to the better side", () => {
    const spec = specOf("steering.free-play");
    const shaded = readingsOf(spec, 1, 0.5, { ...honest, shade: 1 }, seededRandom(1)).values[0]?.value ?? 9;
    const plain = readingsOf(spec, 1, 0.5, honest, seededRandom(1)).values[0]?.value ?? 0;
    expect(shaded).toBeCloseTo(plain - 0.5, 9);
  });
});
