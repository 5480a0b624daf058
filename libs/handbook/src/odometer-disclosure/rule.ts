import { yearOf } from "../day/index.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { findClaim, optionOf, vehicleOf, visitDay } from "../view/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { odometerDisclosure } from "./index.ts";
import type { OdometerDisclosureInput } from "./index.ts";
import { odometerDisclosureRecord } from "./record.ts";

const find = (view: View): Inputs<OdometerDisclosureInput>[] => {
  const claim = findClaim(view, "choice", "identity.odometer-disclosure");
  const [modelYear, day] = [vehicleOf(view)?.modelYear, visitDay(view, view.claims)];
  if (claim === undefined || modelYear === undefined || day === undefined) return [];
  const input = { modelYear, transferYear: yearOf(day), claimedExempt: optionOf(claim) === "exempt" };
  return [{ reads: [claim], claim, input }];
};

/** odometerDisclosure with all that belongs to it. */
export const odometerDisclosureRule = defineRule({
  record: odometerDisclosureRecord,
  compute: odometerDisclosure,
  needs: ["identity.odometer-disclosure"],
  find,
  examples,
  trueClaims,
  growth,
});
