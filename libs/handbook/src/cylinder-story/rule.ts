import { compressionStates } from "../compression/index.ts";
import type { CompressionInput } from "../compression/index.ts";
import { leakStates } from "../leak-down/index.ts";
import type { LeakDownInput } from "../leak-down/index.ts";
import { compressionOf, leaksOf } from "../readers/cylinders.ts";
import type { CylinderState } from "./index.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { findRead } from "../view/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { cylinderStory } from "./index.ts";
import type { CylinderStoryInput } from "./index.ts";
import { cylinderStoryRecord } from "./record.ts";

const statesOf = (
  view: View,
  pressures: CompressionInput | undefined,
  leaks: LeakDownInput,
): CylinderState[] => {
  const low = pressures === undefined ? undefined : compressionStates(pressures, view.firm);
  const leaking = leakStates(leaks, view.firm);
  const cylinders = new Set([...(low?.keys() ?? []), ...leaking.keys()]);
  return [...cylinders].map((cylinder) => ({
    cylinder,
    compression: low?.get(cylinder),
    leak: leaking.get(cylinder),
    escapes: leaks.cylinders.find((state) => state.cylinder === cylinder)?.escapes,
  }));
};

const find = (view: View): Inputs<CylinderStoryInput>[] => {
  const [pressures, leaks] = [compressionOf(view), leaksOf(view)];
  const gas = findRead(view, "presence", "engine.combustion-gas");
  const known =
    gas?.answer.value === "present" || gas?.answer.value === "absent" ? gas.answer.value : undefined;
  if (leaks === undefined || (pressures === undefined && known === undefined)) return [];
  return [
    {
      reads: [
        ...(pressures?.reads ?? []),
        ...leaks.reads,
        ...(gas === undefined || known === undefined ? [] : [gas]),
      ],
      // The tests contradict each other; which cylinder is bad they do not say. Gas in the coolant is bad by itself.
      bad: () => (gas !== undefined && known === "present" ? [gas] : []),
      input: {
        cylinders: statesOf(view, pressures?.input, leaks.input),
        coolantGas: known,
        neighbors: view.maker.cylinderNeighbors,
      },
    },
  ];
};

/** cylinderStory with all that belongs to it. */
export const cylinderStoryRule = defineRule({
  record: cylinderStoryRecord,
  compute: cylinderStory,
  needs: ["engine.leak-down"],
  find,
  examples,
  trueClaims,
  growth,
});
