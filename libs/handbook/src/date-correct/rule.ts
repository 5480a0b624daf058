import { buildOf, datedParts, dateClaimOf } from "../readers/part-dates.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { dateCorrect } from "./index.ts";
import type { DateCorrectInput } from "./index.ts";
import { dateCorrectRecord } from "./record.ts";

/** Part dates against the build date, unless the part was disclosed as another. */
const find = (view: View): Inputs<DateCorrectInput>[] => {
  const build = buildOf(view);
  if (build === undefined) return [];
  return datedParts(view).flatMap(({ read, part, dates, yearless }): Inputs<DateCorrectInput>[] => {
    const tested = dateClaimOf(view, part);
    if (tested === "disclosed") return [];
    const lowVolume = view.maker.lowVolumeParts?.includes(part) ?? false;
    return [
      {
        reads: [read, build.read],
        bad: () => [read],
        claim: tested === "unclaimed" ? undefined : tested,
        input: { part: dates, built: build.dates, lowVolume, yearless },
      },
    ];
  });
};

/** dateCorrect with all that belongs to it. */
export const dateCorrectRule = defineRule({
  record: dateCorrectRecord,
  compute: dateCorrect,
  needs: ["identity.build-date", "identity.date-code"],
  find,
  examples,
  trueClaims,
  growth,
});
