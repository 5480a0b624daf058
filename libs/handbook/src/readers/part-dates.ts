import { dateCandidates, isYearless } from "../date-code/index.ts";
import { dayOf, findIsoRange, narrow } from "../day/index.ts";
import type { DateSet } from "../day/index.ts";
import { findClaim, findRead, findReads, makersYears, optionOf, vehicleOf, visitDay } from "../view/index.ts";
import { onceAView } from "../view/once.ts";
import type { Read, View } from "../view/index.ts";

/** The unit whose originality a part's date speaks of. */
const UNIT_OF: Readonly<Record<string, "engine" | "gearbox" | "axle">> = {
  block: "engine",
  "left-head": "engine",
  "right-head": "engine",
  intake: "engine",
  gearbox: "gearbox",
  axle: "axle",
};
/** Parts that stay together while an engine is not opened. */
export const ASSEMBLY = ["block", "left-head", "right-head", "intake"];

/** What a code can mean in the maker's own form, where one is entered. */
export const candidatesOf = (view: View, read: Read<"code">, part: string): DateSet => {
  const form = view.maker.dateForms?.[part];
  if (form === undefined) return [];
  return dateCandidates(
    read.answer.text,
    form.form,
    makersYears(form.from, form.to),
    vehicleOf(view)?.modelYear,
  );
};

/** Whether a part's code holds no year, so that its days are those of the car's model year. */
const hasNoYear = (view: View, part: string, code: string): boolean => {
  const form = view.maker.dateForms?.[part]?.form;
  return form !== undefined && isYearless(form) && findIsoRange(code) === undefined;
};

/** Before this nobody dated a part of a car. */
const FIRST_CARS = dayOf(1886, 1, 1);

/** Everything a code can mean: by the maker's form, else as an ISO date. A date of no car, or after it was read, is a slip and means none. */
export const datesOf = (view: View, read: Read<"code">, part = read.position): DateSet => {
  const candidates = candidatesOf(view, read, part);
  const iso = findIsoRange(read.answer.text);
  if (candidates.length > 0 || iso === undefined) return candidates;
  const day = visitDay(view, read.side);
  return narrow([iso], { first: FIRST_CARS, last: day === undefined ? Number.POSITIVE_INFINITY : day + 1 });
};

/** The scheduled build date, with the reading it is from. */
export const buildOf = onceAView((view): { read: Read<"code">; dates: DateSet } | undefined => {
  const read = findRead(view, "code", "identity.build-date");
  const dates = read === undefined ? [] : datesOf(view, read, "build");
  return read === undefined || dates.length === 0 ? undefined : { read, dates };
});

/** A part with the days its code can mean. */
export type DatedPart = {
  readonly read: Read<"code">;
  readonly part: string;
  readonly dates: DateSet;
  /** The code holds no year: it was taken as of the car's model year. */
  readonly yearless: boolean;
};

/** The parts whose codes mean some date. Four rules ask for them. */
export const datedParts = onceAView((view): readonly DatedPart[] => {
  const parts: DatedPart[] = [];
  for (const read of findReads(view, "code", "identity.date-code")) {
    const { position: part } = read;
    const dates = datesOf(view, read);
    if (dates.length > 0)
      parts.push({ read, part, dates, yearless: hasNoYear(view, part, read.answer.text) });
  }
  return parts;
});

/** The claim on a part's unit, where it is one of some options. */
export const originalityOf = (
  view: View,
  part: string,
  options: readonly string[],
): Read<"choice"> | undefined => {
  const unit = UNIT_OF[part];
  const claim = unit === undefined ? undefined : findClaim(view, "choice", "identity.originality", unit);
  return options.includes(optionOf(claim) ?? "") ? claim : undefined;
};

/**
 * Whose claim a part's date tests: that its unit came with the car or is of the right date; for what is hung on the
 * engine, that the engine bay is as built. `"unclaimed"` where nothing was said of the unit; `"disclosed"` where it
 * was said to be another, or nothing makes a later date of an accessory worth a word.
 */
export const dateClaimOf = (view: View, part: string): Read<"choice"> | "unclaimed" | "disclosed" => {
  const unit = UNIT_OF[part];
  if (unit === undefined) {
    const bay = findClaim(view, "choice", "engine.as-built");
    return bay !== undefined && optionOf(bay) === "as-built" ? bay : "disclosed";
  }
  if (optionOf(findClaim(view, "choice", "identity.originality", unit)) === undefined) return "unclaimed";
  return originalityOf(view, part, ["original-to-car", "right-type-and-date"]) ?? "disclosed";
};
