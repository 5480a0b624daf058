import { FIRST_VIN_YEAR, isReadTwice, marketOf, numbersOf } from "../readers/car-numbers.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { vehicleOf } from "../view/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { chassisPattern } from "./index.ts";
import type { ChassisPatternInput } from "./index.ts";
import { chassisPatternRecord } from "./record.ts";

/** Older numbers and those of other markets, by the maker's form where the firm entered one. */
const find = (view: View): Inputs<ChassisPatternInput>[] => {
  const vehicle = vehicleOf(view);
  const { chassisPattern: pattern } = view.maker;
  if (vehicle === undefined || pattern === undefined) return [];
  if (vehicle.modelYear >= FIRST_VIN_YEAR && marketOf(vehicle.market) !== "other") return [];
  return numbersOf(view).map((read) => ({
    reads: [read],
    claim: read,
    bad: () => [read],
    input: { number: read.answer.text, pattern, readOnce: !isReadTwice(view, read) },
  }));
};

/** chassisPattern with all that belongs to it. */
export const chassisPatternRule = defineRule({
  record: chassisPatternRecord,
  compute: chassisPattern,
  find,
  examples,
  trueClaims,
  growth,
});
