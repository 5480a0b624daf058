import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { isReadTwice, VIN } from "../readers/car-numbers.ts";
import { findClaim, findRead, optionOf, vehicleOf } from "../view/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { numberEndsAlike } from "./index.ts";
import type { NumberEndsAlikeInput } from "./index.ts";
import { numberEndsAlikeRecord } from "./record.ts";

const find = (view: View): Inputs<NumberEndsAlikeInput>[] =>
  (["engine", "gearbox"] as const).flatMap((unit): Inputs<NumberEndsAlikeInput>[] => {
    const known = view.maker.stampFrom?.[unit] !== undefined || view.maker.neverStamped?.includes(unit);
    const stamp = findRead(view, "code", "identity.partial-vin", unit);
    const plate = findRead(view, "code", VIN, "main-plate");
    const chassisNumber = plate?.answer.text ?? vehicleOf(view)?.identification;
    if (known === true || stamp === undefined || chassisNumber === undefined) return [];
    const originality = findClaim(view, "choice", "identity.originality", unit);
    const claim = optionOf(originality) === "original-to-car" ? originality : undefined;
    return [
      {
        reads: plate === undefined ? [stamp] : [stamp, plate],
        claim,
        bad: () => [stamp],
        input: {
          unit,
          stamp: stamp.answer.text,
          chassisNumber,
          saidToMatch: claim !== undefined,
          readTwice: [stamp, ...(plate === undefined ? [] : [plate])].every((read) =>
            isReadTwice(view, read),
          ),
        },
      },
    ];
  });

/** numberEndsAlike with all that belongs to it. */
export const numberEndsAlikeRule = defineRule({
  record: numberEndsAlikeRecord,
  compute: numberEndsAlike,
  needs: ["identity.partial-vin"],
  find,
  examples,
  trueClaims,
  growth,
});
