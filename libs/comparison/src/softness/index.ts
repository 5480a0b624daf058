import type { Softness } from "@evenhand/shared/comparison";
import type { Report } from "@evenhand/shared/report";
import { isDecisive } from "@evenhand/shared/severity";
import type { SeenPlace } from "../coverage/index.ts";

/**
 * How soft the statement is where it matters: of the places that can stop a purchase, hurt somebody or
 * carry the price, how many were stated
 * hedged or at second hand, how many read by eye where an instrument is asked for, how many left silent. Somebody who
 * answers everything by eye and hedged gains nothing by it while this stands beside the coverage.
 *
 * @example softnessOf(places, statement) // { decisive: 210, hedged: 31, byEye: 12, silent: 84 }
 */
export const softnessOf = (places: readonly SeenPlace[], a: Pick<Report, "findings">): Softness => {
  const softness: Softness = { decisive: 0, hedged: 0, byEye: 0, silent: 0 };
  for (const { atStake, finding, stated } of places) {
    if (!isDecisive(atStake)) continue;
    softness.decisive += 1;
    const said = finding.a === null ? undefined : a.findings[finding.a];
    if (!stated || said === undefined) {
      softness.silent += 1;
      continue;
    }
    if (said.firmness !== "asserted") softness.hedged += 1;
    if (said.answer.kind === "reading" && said.instrument === undefined) softness.byEye += 1;
  }
  return softness;
};
