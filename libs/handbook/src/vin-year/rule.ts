import { FIRST_VIN_YEAR, isReadTwice, marketOf, numbersOf } from "../readers/car-numbers.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { vehicleOf } from "../view/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { vinYear } from "./index.ts";
import type { VinYearInput } from "./index.ts";
import { vinYearRecord } from "./record.ts";

/** Numbers from 1981 on, wherever they were read. */
const find = (view: View): Inputs<VinYearInput>[] => {
  const vehicle = vehicleOf(view);
  if (vehicle === undefined) return [];
  const market = marketOf(vehicle.market);
  if (vehicle.modelYear < FIRST_VIN_YEAR || market === "other") return [];
  return numbersOf(view).map((read) => ({
    reads: [read],
    claim: read,
    bad: () => [read],
    input: {
      vin: read.answer.text,
      market,
      kind: "car",
      claimedYear: vehicle.modelYear,
      readOnce: !isReadTwice(view, read),
    },
  }));
};

/** vinYear with all that belongs to it. */
export const vinYearRule = defineRule({
  record: vinYearRecord,
  compute: vinYear,
  find,
  examples,
  trueClaims,
  growth,
});
