import { buildOf, datedParts, originalityOf } from "../readers/part-dates.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { dateOrder } from "./index.ts";
import type { DateOrderInput } from "./index.ts";
import { dateOrderRecord } from "./record.ts";

/** The block against the build, where the engine is said to have come with the car. */
const find = (view: View): Inputs<DateOrderInput>[] => {
  const build = buildOf(view);
  const claim = originalityOf(view, "block", ["original-to-car"]);
  if (build === undefined || claim === undefined) return [];
  return datedParts(view)
    .filter(({ part }) => part === "block")
    .map(({ read, dates, yearless }) => ({
      reads: [read, build.read],
      claim,
      bad: () => [read],
      input: { cast: dates, built: build.dates, yearless },
    }));
};

/** dateOrder with all that belongs to it. */
export const dateOrderRule = defineRule({
  record: dateOrderRecord,
  compute: dateOrder,
  needs: ["identity.build-date", "identity.date-code", "identity.originality"],
  find,
  examples,
  trueClaims,
  growth,
});
