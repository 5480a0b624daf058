import { exactly } from "../interval/index.ts";
import type { OilPressureInput } from "../oil-pressure/index.ts";
import { estimateOf, findRead, numberNoted } from "../view/index.ts";
import type { Found, View } from "../view/index.ts";

/** Oil pressure at idle and at 2,000 rpm, each with the finding it is from; nothing where the engine's speed is not noted. */
export const oilPressuresOf = (view: View): { readonly input: OilPressureInput; readonly read: Found }[] =>
  (
    [
      ["engine.oil-pressure-idle", view.maker.oilPressureIdle],
      ["engine.oil-pressure-2000", view.maker.oilPressure2000],
    ] as const
  ).flatMap(([item, makersLeast]) => {
    const read = findRead(view, "reading", item);
    const pressure = read === undefined ? undefined : estimateOf(view, read);
    const speed = numberNoted(read, "engine-speed");
    if (read === undefined || pressure === undefined || speed === undefined) return [];
    const oilTemperature = numberNoted(read, "oil-temperature");
    return [{ read, input: { pressure, engineSpeed: exactly(speed), oilTemperature, makersLeast } }];
  });
