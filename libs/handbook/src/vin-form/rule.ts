import { FIRST_VIN_YEAR, isReadTwice, marketOf, numbersOf } from "../readers/car-numbers.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { vehicleOf } from "../view/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { vinForm } from "./index.ts";
import type { VinFormInput } from "./index.ts";
import { vinFormRecord } from "./record.ts";

/** Numbers from 1981 on, wherever they were read. */
const find = (view: View): Inputs<VinFormInput>[] => {
  const vehicle = vehicleOf(view);
  if (vehicle === undefined) return [];
  const { modelYear } = vehicle;
  const market = marketOf(vehicle.market);
  if (modelYear < FIRST_VIN_YEAR || market === "other") return [];
  return numbersOf(view).map((read) => ({
    reads: [read],
    claim: read,
    bad: () => [read],
    input: { vin: read.answer.text, market, modelYear, readOnce: !isReadTwice(view, read) },
  }));
};

/** vinForm with all that belongs to it. */
export const vinFormRule = defineRule({
  record: vinFormRecord,
  compute: vinForm,
  find,
  examples,
  trueClaims,
  growth,
});
