import { leaksOf } from "../readers/cylinders.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { leakDown, leakStates } from "./index.ts";
import type { LeakDownInput } from "./index.ts";
import { leakDownRecord } from "./record.ts";

const find = (view: View): Inputs<LeakDownInput>[] => {
  const leaks = leaksOf(view);
  if (leaks === undefined) return [];
  const { input, reads } = leaks;
  const bad = () => {
    const states = leakStates(input, view.firm);
    return reads.filter((_, index) => states.get(input.cylinders[index]?.cylinder ?? 0) === "leaks");
  };
  return [{ input, reads, bad }];
};

/** leakDown with all that belongs to it. */
export const leakDownRule = defineRule({
  record: leakDownRecord,
  compute: leakDown,
  needs: ["engine.leak-down"],
  find,
  examples,
  trueClaims,
  growth,
});
