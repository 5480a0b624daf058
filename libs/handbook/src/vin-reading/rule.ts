import { FIRST_VIN_YEAR, marketOf, VIN } from "../readers/car-numbers.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { findClaims, findRead, vehicleOf } from "../view/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { vinReading } from "./index.ts";
import type { VinReadingInput } from "./index.ts";
import { vinReadingRecord } from "./record.ts";

/** Two reports' readings of one plate. */
const find = (view: View): Inputs<VinReadingInput>[] => {
  const vehicle = vehicleOf(view);
  if (vehicle === undefined || vehicle.modelYear < FIRST_VIN_YEAR) return [];
  return findClaims(view, "code", VIN).flatMap((first): Inputs<VinReadingInput>[] => {
    const second = findRead(view, "code", VIN, first.position);
    if (second === undefined || second.side === first.side) return [];
    return [
      {
        reads: [first, second],
        claim: ({ reason }) => ({ "first-misread": first, "second-misread": second })[reason],
        input: {
          first: first.answer.text,
          second: second.answer.text,
          market: marketOf(vehicle.market),
          modelYear: vehicle.modelYear,
        },
      },
    ];
  });
};

/** vinReading with all that belongs to it. */
export const vinReadingRule = defineRule({
  record: vinReadingRecord,
  compute: vinReading,
  needs: ["identity.vin"],
  find,
  examples,
  trueClaims,
  growth,
});
