import { isReadTwice, VIN } from "../readers/car-numbers.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { findClaim, findRead, optionOf, vehicleOf } from "../view/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { partialVin } from "./index.ts";
import type { PartialVinInput } from "./index.ts";
import { partialVinRecord } from "./record.ts";

const find = (view: View): Inputs<PartialVinInput>[] =>
  (["engine", "gearbox"] as const).flatMap((unit): Inputs<PartialVinInput>[] => {
    const derivation = view.maker.stampFrom?.[unit];
    const neverStamped = view.maker.neverStamped?.includes(unit) ?? false;
    const stamp = findRead(view, "code", "identity.partial-vin", unit);
    const plate = findRead(view, "code", VIN, "main-plate");
    const chassisNumber = plate?.answer.text ?? vehicleOf(view)?.identification;
    if (chassisNumber === undefined || stamp === undefined || (derivation === undefined && !neverStamped))
      return [];
    const claimed = findClaim(view, "choice", "identity.originality", unit);
    return [
      {
        reads: plate === undefined ? [stamp] : [stamp, plate],
        bad: () => [stamp],
        claim: optionOf(claimed) === "original-to-car" ? claimed : undefined,
        input: {
          stamp: stamp.answer.text,
          neverStamped,
          chassisNumber,
          derivation,
          readOnce: ![stamp, ...(plate === undefined ? [] : [plate])].every((read) =>
            isReadTwice(view, read),
          ),
        },
      },
    ];
  });

/** partialVin with all that belongs to it. */
export const partialVinRule = defineRule({
  record: partialVinRecord,
  compute: partialVin,
  needs: ["identity.partial-vin"],
  find,
  examples,
  trueClaims,
  growth,
});
