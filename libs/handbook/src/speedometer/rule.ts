import { findCircumference, findQuantity, scaled } from "../readers/axle.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { findClaim } from "../view/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { speedometer } from "./index.ts";
import type { SpeedometerInput } from "./index.ts";
import { speedometerRecord } from "./record.ts";

const find = (view: View): Inputs<SpeedometerInput>[] => {
  const indicated = findQuantity(view, "road.indicated-speed");
  const satellite = findQuantity(view, "road.gps-speed");
  if (indicated === undefined || satellite === undefined) return [];
  const circumference = findCircumference(view);
  const claim = findClaim(view, "working", "electrics.speedometer");
  const fittedDiameter = circumference === undefined ? undefined : scaled(circumference.value, 1 / Math.PI);
  return [
    {
      reads: [...indicated.reads, ...satellite.reads, ...(circumference?.reads ?? [])],
      bad: () => indicated.reads,
      claim: claim?.answer.value === "yes" ? claim : undefined,
      input: { indicated: indicated.value, satellite: satellite.value, fittedDiameter },
    },
  ];
};

/** speedometer with all that belongs to it. */
export const speedometerRule = defineRule({
  record: speedometerRecord,
  compute: speedometer,
  needs: ["road.indicated-speed", "road.gps-speed"],
  find,
  examples,
  trueClaims,
  growth,
});
