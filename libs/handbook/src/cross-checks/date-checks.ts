import { claimsAgainstDates } from "../claims-against-dates/index.ts";
import type { ClaimsAgainstDatesInput } from "../claims-against-dates/index.ts";
import { dateCandidates } from "../date-code/index.ts";
import { dateCorrect } from "../date-correct/index.ts";
import { dateOrder } from "../date-order/index.ts";
import { findIsoRange } from "../day/index.ts";
import type { DateSet } from "../day/index.ts";
import { decadeLess } from "../decade-less/index.ts";
import { tireAge } from "../tire-age/index.ts";
import { tireDate } from "../tire-identification/index.ts";
import type { Checks, Finder, Prepared } from "./prepared.ts";
import { findClaim, findClaims, findRead, findReads, makersYears, optionOf, visitDay } from "./view.ts";
import type { Found, Read, View } from "./view.ts";

/** The unit whose originality a part's date speaks of. */
const UNIT_OF: Readonly<Record<string, "engine" | "gearbox" | "axle">> = {
  block: "engine",
  "left-head": "engine",
  "right-head": "engine",
  intake: "engine",
  gearbox: "gearbox",
  axle: "axle",
};
const ASSEMBLY = ["block", "left-head", "right-head", "intake"];

/** What a code can mean in the maker's own form, where one is entered. */
const candidatesOf = (view: View, read: Read<"code">, part: string): DateSet => {
  const form = view.maker.dateForms?.[part];
  if (form === undefined) return [];
  return dateCandidates(read.answer.text, form.form, makersYears(form.from, form.to));
};

/** Everything a code can mean: by the maker's form, else as an ISO date. */
const datesOf = (view: View, read: Read<"code">, part = read.position): DateSet => {
  const candidates = candidatesOf(view, read, part);
  const iso = findIsoRange(read.answer.text);
  return candidates.length > 0 || iso === undefined ? candidates : [iso];
};

const buildOf = (view: View): { read: Read<"code">; dates: DateSet } | undefined => {
  const read = findRead(view, "code", "identity.build-date");
  const dates = read === undefined ? [] : datesOf(view, read, "build");
  return read === undefined || dates.length === 0 ? undefined : { read, dates };
};

type DatedPart = { readonly read: Read<"code">; readonly part: string; readonly dates: DateSet };

const partsOf = (view: View): DatedPart[] =>
  findReads(view, "code", "identity.date-code").flatMap((read) => {
    const dates = datesOf(view, read);
    return dates.length === 0 ? [] : [{ read, part: read.position, dates }];
  });

const originalityOf = (view: View, part: string, options: readonly string[]): Read<"choice"> | undefined => {
  const unit = UNIT_OF[part];
  const claim = unit === undefined ? undefined : findClaim(view, "choice", "identity.originality", unit);
  return options.includes(optionOf(claim) ?? "") ? claim : undefined;
};

/**
 * Whose claim a part's date tests: that its unit came with the car or is of the right date; for what is hung on the
 * engine, that the engine bay is as built. `"unclaimed"` where nothing was said of the unit; `"disclosed"` where it
 * was said to be another, or nothing makes a later date of an accessory worth a word.
 */
const dateClaimOf = (view: View, part: string): Read<"choice"> | "unclaimed" | "disclosed" => {
  const unit = UNIT_OF[part];
  if (unit === undefined) {
    const bay = findClaim(view, "choice", "engine.as-built");
    return bay !== undefined && optionOf(bay) === "as-built" ? bay : "disclosed";
  }
  if (optionOf(findClaim(view, "choice", "identity.originality", unit)) === undefined) return "unclaimed";
  return originalityOf(view, part, ["original-to-car", "right-type-and-date"]) ?? "disclosed";
};

/** Part dates against the build date, and against the claim that the unit came with the car. */
const againstBuild: Finder = (view) => {
  const build = buildOf(view);
  if (build === undefined) return [];
  return partsOf(view).flatMap(({ read, part, dates }): Prepared[] => {
    const reads = [read, build.read];
    const lowVolume = view.maker.lowVolumeParts?.includes(part) ?? false;
    const tested = dateClaimOf(view, part);
    if (tested === "disclosed") return [];
    const claim = tested === "unclaimed" ? undefined : tested;
    const run = () => dateCorrect({ part: dates, built: build.dates, lowVolume }, view.firm);
    const checks: Prepared[] = [{ rule: "date-correct", reads, claim, run }];
    const original = originalityOf(view, part, ["original-to-car"]);
    if (original === undefined) return checks;
    if (part === "block") {
      const order = () => dateOrder({ cast: dates, built: build.dates });
      checks.push({ rule: "date-order", reads, claim: original, run: order });
    }
    return [
      ...checks,
      claimCheck(view, reads, original, { claim: "original", built: build.dates, dates: [dates] }),
    ];
  });
};

const claimCheck = (
  view: View,
  reads: readonly Found[],
  claim: Found,
  input: ClaimsAgainstDatesInput,
): Prepared => ({
  rule: "claims-against-dates",
  reads,
  claim,
  run: () => claimsAgainstDates(input, view.firm),
});

/** An engine said never to have been apart. */
const untouched: Finder = (view) => {
  const build = buildOf(view);
  const claim = findClaim(view, "choice", "engine.rebuild-claim");
  if (build === undefined || claim === undefined || optionOf(claim) !== "never") return [];
  const parts = partsOf(view).filter(({ part }) => ASSEMBLY.includes(part));
  if (parts.length === 0) return [];
  const dates = parts.map((part) => part.dates);
  return [
    claimCheck(view, [...parts.map(({ read }) => read), build.read], claim, {
      claim: "untouched",
      built: build.dates,
      dates,
    }),
  ];
};

/** Parts said to have been fitted with a bill. */
const bills: Finder = (view) =>
  findClaims(view, "code", "identity.bill-date").flatMap((bill): Prepared[] => {
    const document = datesOf(view, bill);
    const part = partsOf(view).find((candidate) => candidate.part === bill.position);
    if (document.length === 0 || part === undefined) return [];
    return [
      claimCheck(view, [part.read, bill], bill, { claim: "fitted-with-bill", document, dates: [part.dates] }),
    ];
  });

/** Codes that mean more than one date in the maker's years. */
const decades: Finder = (view) =>
  findReads(view, "code", "identity.date-code").flatMap((read): Prepared[] => {
    const candidates = candidatesOf(view, read, read.position);
    if (candidates.length < 2) return [];
    const code = read.answer.text;
    return [{ rule: "decade-less", reads: [read], run: () => decadeLess({ code, candidates, facts: [] }) }];
  });

/** The most years a bracket of age claims. */
const CLAIMED_YEARS: Readonly<Record<string, number>> = { "under-three-years": 3, "three-to-six-years": 6 };

/** What is claimed of a tire's age. An age the claim itself admits contradicts nothing. */
const tireClaims: Finder = (view) =>
  findReads(view, "code", "wheels.tire-identification").flatMap((number): Prepared[] => {
    const claim = findClaim(view, "choice", "wheels.tire-age", number.position);
    const [day, visit] = [visitDay(view, view.claims), visitDay(view, number.side)];
    if (claim === undefined || day === undefined || visit === undefined) return [];
    const dates = [tireDate(number.answer.text, Math.max(day, visit)).dates];
    const stated = [{ first: day, last: day }];
    const option = optionOf(claim) ?? "";
    const years = CLAIMED_YEARS[option];
    const reads = [number, claim];
    if (option === "new") return [claimCheck(view, reads, claim, { claim: "new", stated, dates })];
    if (years === undefined) return [];
    return [claimCheck(view, reads, claim, { claim: "at-most-years", years, stated, dates })];
  });

const tireAges: Finder = (view) =>
  findReads(view, "code", "wheels.tire-identification").flatMap((read): Prepared[] => {
    const visit = visitDay(view, read.side);
    if (visit === undefined) return [];
    const number = read.answer.text;
    return [{ rule: "tire-age", reads: [read], run: () => tireAge({ number, visit }, view.firm) }];
  });

/** Rules on dates of parts, bills and tires. */
export const dateChecks: Checks = {
  oneReport: [decades, tireAges],
  bothReports: [againstBuild, untouched, bills, tireClaims],
};
