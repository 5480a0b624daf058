import { ODOMETER } from "../readers/items.ts";
import { paperEntries } from "../readers/miles.ts";
import type { MilesRead } from "../readers/miles.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { estimateOf, findClaim, numberNoted, readFrom, visitDay } from "../view/index.ts";
import type { Side, View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { odometer } from "./index.ts";
import type { OdometerInput } from "./index.ts";
import { odometerRecord } from "./record.ts";

/** What the odometer showed on each side's visit. */
const shownOn = (view: View, side: Side): MilesRead[] => {
  const read = readFrom(view, side, ODOMETER, "", "reading");
  const [miles, day] = [read === undefined ? undefined : estimateOf(view, read), visitDay(view, side)];
  return read === undefined || miles === undefined || day === undefined
    ? []
    : [{ read, reading: { day, miles, place: view.reports[side]?.report.kind ?? side } }];
};

const find = (view: View): Inputs<OdometerInput>[] => {
  const entries = [
    ...paperEntries(view),
    ...view.readings.toReversed().flatMap((side) => shownOn(view, side)),
  ];
  if (entries.length < 2) return [];
  const shown = entries.filter(({ read }) => read.item === ODOMETER);
  // Five digits start again at 100,000: what a lower reading then means is for `actual-miles` to say.
  if (shown.some(({ read }) => numberNoted(read, "odometer-digits") === 5)) return [];
  const claim = findClaim(view, "reading", ODOMETER);
  return [
    {
      reads: entries.map(({ read }) => read),
      claim,
      input: { readings: entries.map(({ reading }) => reading), digits: 6 },
    },
  ];
};

/** odometer with all that belongs to it. */
export const odometerRule = defineRule({
  record: odometerRecord,
  compute: odometer,
  find,
  examples,
  trueClaims,
  growth,
});
