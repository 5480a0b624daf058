import { exactly } from "../interval/index.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { estimateOf, findRead, numberNoted } from "../view/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { oilPressure } from "./index.ts";
import type { OilPressureInput } from "./index.ts";
import { oilPressureRecord } from "./record.ts";

const find = (view: View): Inputs<OilPressureInput>[] =>
  (
    [
      ["engine.oil-pressure-idle", view.maker.oilPressureIdle],
      ["engine.oil-pressure-2000", view.maker.oilPressure2000],
    ] as const
  ).flatMap(([item, makersLeast]): Inputs<OilPressureInput>[] => {
    const read = findRead(view, "reading", item);
    const pressure = read === undefined ? undefined : estimateOf(view, read);
    const speed = numberNoted(read, "engine-speed");
    if (read === undefined || pressure === undefined || speed === undefined) return [];
    const oilTemperature = numberNoted(read, "oil-temperature");
    return [{ reads: [read], input: { pressure, engineSpeed: exactly(speed), oilTemperature, makersLeast } }];
  });

/** oilPressure with all that belongs to it. */
export const oilPressureRule = defineRule({
  record: oilPressureRecord,
  compute: oilPressure,
  find,
  examples,
  trueClaims,
  growth,
});
