import { listed } from "@evenhand/message/listed";
import type { RuleResult } from "@evenhand/shared/cross-check";
import type { Escape } from "../leak-down/index.ts";
import { cylinderStoryRecord } from "./record.ts";

export type CylinderState = {
  readonly cylinder: number;
  readonly compression?: "low" | "normal" | "unclear";
  readonly leak?: "tight" | "leaks" | "unclear";
  readonly escapes?: readonly Escape[];
};

export type CylinderStoryInput = {
  readonly cylinders: readonly CylinderState[];
  readonly coolantGas?: "present" | "absent";
  readonly neighbors?: readonly (readonly [number, number])[];
};

const named = (cylinders: readonly CylinderState[]): string =>
  listed(cylinders.map(({ cylinder }) => String(cylinder)));

const escapesInto = (path: Escape) => (state: CylinderState) => state.escapes?.includes(path) ?? false;

/** The first contradiction between the tests, and the cylinders it is about. */
const findContradiction = ({ cylinders, coolantGas }: CylinderStoryInput) => {
  const lowButTight = cylinders.filter(({ compression, leak }) => compression === "low" && leak === "tight");
  if (lowButTight.length > 0) return { reason: "low-but-tight", cylinders: lowButTight } as const;
  const leaksButNotLow = cylinders.filter(
    ({ compression, leak }) => compression === "normal" && leak === "leaks",
  );
  if (leaksButNotLow.length > 0) return { reason: "leaks-but-not-low", cylinders: leaksButNotLow } as const;
  const intoCoolant = cylinders.filter(escapesInto("coolant"));
  if (coolantGas === "absent" && intoCoolant.length > 0) {
    return { reason: "escape-without-gas", cylinders: intoCoolant } as const;
  }
  const allTested =
    cylinders.length > 0 && cylinders.every(({ leak }) => leak === "tight" || leak === "leaks");
  return coolantGas === "present" && intoCoolant.length === 0 && allTested
    ? ({ reason: "gas-without-escape", cylinders } as const)
    : undefined;
};

/** Whether at least two of the three tests spoke of the same thing. */
const overlap = ({ cylinders, coolantGas }: CylinderStoryInput): boolean =>
  cylinders.some(
    ({ compression, leak }) => leak !== undefined && (compression !== undefined || coolantGas !== undefined),
  );

const findGasket = ({ cylinders, neighbors = [] }: CylinderStoryInput) => {
  const low = new Set(
    cylinders
      .filter((state) => state.compression === "low" && escapesInto("neighbor")(state))
      .map(({ cylinder }) => cylinder),
  );
  return neighbors.find(([a, b]) => low.has(a) && low.has(b));
};

/**
 * Compression, leak-down, escape path and coolant gas as one story: a low cylinder leaks, a leaking one is low, air
 * into the coolant and gas in the coolant come together, and neighbors low together leak into each other.
 *
 * Source: common practice, no source.
 *
 * @example
 * cylinderStory({ cylinders: [{ cylinder: 3, compression: "low", leak: "tight" }] }).reason // "low-but-tight"
 */
export const cylinderStory = (input: CylinderStoryInput): RuleResult => {
  const contradiction = findContradiction(input);
  if (contradiction !== undefined) {
    return cylinderStoryRecord.answer(contradiction.reason, {
      words: { cylinders: named(contradiction.cylinders) },
    });
  }
  if (!overlap(input)) return cylinderStoryRecord.answer("too-few");
  const unclear = input.cylinders.filter(
    ({ compression, leak }) => compression === "unclear" || leak === "unclear",
  );
  if (unclear.length > 0)
    return cylinderStoryRecord.answer("not-clear", { words: { cylinders: named(unclear) } });
  const gasket = findGasket(input);
  return gasket === undefined
    ? cylinderStoryRecord.answer("one-story")
    : cylinderStoryRecord.answer("gasket-between", {
        words: { cylinders: listed(gasket.map(String), "and") },
      });
};
