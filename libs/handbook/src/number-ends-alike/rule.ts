import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { isReadTwice, VIN } from "../readers/car-numbers.ts";
import { present } from "../readers/present.ts";
import { findClaim, findRead, optionOf, vehicleOf } from "../view/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { numberEndsAlike } from "./index.ts";
import type { NumberEndsAlikeInput } from "./index.ts";
import { numberEndsAlikeRecord } from "./record.ts";

const askedOf = (view: View, unit: "engine" | "gearbox"): Inputs<NumberEndsAlikeInput> | undefined => {
  const stamp = findRead(view, "code", "identity.partial-vin", unit);
  if (stamp === undefined) return undefined;
  const known = view.maker.stampFrom?.[unit] !== undefined || view.maker.neverStamped?.includes(unit);
  const plate = findRead(view, "code", VIN, "main-plate");
  const chassisNumber = plate?.answer.text ?? vehicleOf(view)?.identification;
  if (known === true || chassisNumber === undefined) return undefined;
  const originality = findClaim(view, "choice", "identity.originality", unit);
  const claim = optionOf(originality) === "original-to-car" ? originality : undefined;
  const reads = plate === undefined ? [stamp] : [stamp, plate];
  return {
    reads,
    claim,
    bad: () => [stamp],
    input: {
      unit,
      stamp: stamp.answer.text,
      chassisNumber,
      saidToMatch: claim !== undefined,
      readTwice: reads.every((read) => isReadTwice(view, read)),
    },
  };
};

const find = (view: View): Inputs<NumberEndsAlikeInput>[] =>
  present([askedOf(view, "engine"), askedOf(view, "gearbox")]);

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
