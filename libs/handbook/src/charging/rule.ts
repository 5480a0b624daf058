import { systemVolts } from "../readers/system-volts.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { estimateOf, findRead, numberNoted, optionOf } from "../view/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { charging } from "./index.ts";
import type { ChargingInput } from "./index.ts";
import { chargingRecord } from "./record.ts";

const find = (view: View): Inputs<ChargingInput>[] => {
  const running = findRead(view, "reading", "electrics.volts-charging");
  const volts = running === undefined ? undefined : estimateOf(view, running);
  if (running === undefined || volts === undefined) return [];
  const kind = findRead(view, "choice", "electrics.charger-kind");
  return [
    {
      reads: kind === undefined ? [running] : [running, kind],
      bad: () => [running],
      input: {
        volts,
        engineSpeed: numberNoted(running, "engine-speed"),
        system: systemVolts(view),
        // A machine that is not known is held to the milder rule: a generator is never judged at idle.
        machine: optionOf(kind) === "alternator" ? "alternator" : "generator",
      },
    },
  ];
};

/** charging with all that belongs to it. */
export const chargingRule = defineRule({
  record: chargingRecord,
  compute: charging,
  needs: ["electrics.volts-charging"],
  find,
  examples,
  trueClaims,
  growth,
});
