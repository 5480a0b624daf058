import { exactly, judge } from "../interval/index.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { estimateOf, findRead, numberNoted, optionOf } from "../view/index.ts";
import type { Read, View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { vacuum } from "./index.ts";
import type { VacuumInput } from "./index.ts";
import { vacuumRecord } from "./record.ts";

const timingOf = (view: View, read: Read<"reading"> | undefined): VacuumInput["timing"] => {
  const timing = read === undefined ? undefined : estimateOf(view, read);
  if (timing === undefined || view.maker.timing === undefined) return "unknown";
  const slack = vacuumRecord.limit("vacuum.late-timing", view.firm).value;
  return ({ holds: "right", breaks: "late", "cannot-tell": "unknown" } as const)[
    judge(timing, { low: view.maker.timing - slack })
  ];
};

const NEEDLES: readonly string[] = ["steady", "dropping", "drifting", "fluttering"];
const isNeedle = (option: string | undefined): option is VacuumInput["needle"] =>
  option !== undefined && NEEDLES.includes(option);

const find = (view: View): Inputs<VacuumInput>[] => {
  const read = findRead(view, "reading", "engine.vacuum");
  const needleRead = findRead(view, "choice", "engine.vacuum-needle");
  const reading = read === undefined ? undefined : estimateOf(view, read);
  const needle = optionOf(needleRead);
  if (read === undefined || reading === undefined || !isNeedle(needle)) return [];
  const timing = findRead(view, "reading", "engine.timing");
  const height = numberNoted(read, "height");
  const input: VacuumInput = {
    vacuum: reading,
    height: height === undefined ? undefined : exactly(height),
    needle,
    timing: timingOf(view, timing),
    cam: view.maker.cam ?? "unknown",
  };
  return [
    {
      reads: [read, needleRead, timing].flatMap((found) => found ?? []),
      bad: ({ reason }) => [reason.startsWith("needle") && needleRead ? needleRead : read],
      input,
    },
  ];
};

/** vacuum with all that belongs to it. */
export const vacuumRule = defineRule({
  record: vacuumRecord,
  compute: vacuum,
  needs: ["engine.vacuum", "engine.vacuum-needle"],
  find,
  examples,
  trueClaims,
  growth,
});
