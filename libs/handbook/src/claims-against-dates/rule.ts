import { ASSEMBLY, buildOf, datedParts, datesOf, originalityOf } from "../readers/part-dates.ts";
import { tireDate } from "../tire-identification/index.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { findClaim, findClaims, findReads, optionOf, visitDay } from "../view/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { claimsAgainstDates } from "./index.ts";
import type { ClaimsAgainstDatesInput } from "./index.ts";
import { claimsAgainstDatesRecord } from "./record.ts";

type Found = readonly Inputs<ClaimsAgainstDatesInput>[];

/** A unit said to have come with the car. */
const original = (view: View): Found => {
  const build = buildOf(view);
  if (build === undefined) return [];
  return datedParts(view).flatMap(({ read, part, dates }): Found => {
    const claim = originalityOf(view, part, ["original-to-car"]);
    if (claim === undefined) return [];
    const input = { claim: "original", built: build.dates, dates: [dates] } as const;
    return [{ reads: [read, build.read], claim, bad: () => [read], input }];
  });
};

/** An engine said never to have been apart. */
const untouched = (view: View): Found => {
  const build = buildOf(view);
  const claim = findClaim(view, "choice", "engine.rebuild-claim");
  if (build === undefined || claim === undefined || optionOf(claim) !== "never") return [];
  const parts = datedParts(view).filter(({ part }) => ASSEMBLY.includes(part));
  if (parts.length === 0) return [];
  const dates = parts.map((part) => part.dates);
  return [
    {
      reads: [...parts.map(({ read }) => read), build.read],
      claim,
      bad: () => parts.map(({ read }) => read),
      input: { claim: "untouched", built: build.dates, dates },
    },
  ];
};

/** Parts said to have been fitted with a bill. */
const bills = (view: View): Found =>
  findClaims(view, "code", "identity.bill-date").flatMap((bill): Found => {
    const document = datesOf(view, bill);
    const part = datedParts(view).find((candidate) => candidate.part === bill.position);
    if (document.length === 0 || part === undefined) return [];
    return [
      {
        reads: [part.read, bill],
        claim: bill,
        input: { claim: "fitted-with-bill", document, dates: [part.dates] },
      },
    ];
  });

/** The most years a bracket of age claims. */
const CLAIMED_YEARS: Readonly<Record<string, number>> = { "under-three-years": 3, "three-to-six-years": 6 };

/** What is claimed of a tire's age. An age the claim itself admits contradicts nothing. */
const tires = (view: View): Found =>
  findReads(view, "code", "wheels.tire-identification").flatMap((number): Found => {
    const claim = findClaim(view, "choice", "wheels.tire-age", number.position);
    const option = optionOf(claim) ?? "";
    const years = CLAIMED_YEARS[option];
    if (claim === undefined || (option !== "new" && years === undefined)) return [];
    const [day, visit] = [visitDay(view, view.claims), visitDay(view, number.side)];
    if (day === undefined || visit === undefined) return [];
    const dates = [tireDate(number.answer.text, Math.max(day, visit)).dates];
    const stated = [{ first: day, last: day }];
    const reads = [number, claim];
    if (years === undefined) return [{ reads, claim, input: { claim: "new", stated, dates } }];
    return [{ reads, claim, input: { claim: "at-most-years", years, stated, dates } }];
  });

const find = (view: View): Inputs<ClaimsAgainstDatesInput>[] =>
  [original, untouched, bills, tires].flatMap((claims) => claims(view));

/** claimsAgainstDates with all that belongs to it. */
export const claimsAgainstDatesRule = defineRule({
  record: claimsAgainstDatesRecord,
  compute: claimsAgainstDates,
  find,
  examples,
  trueClaims,
  growth,
});
