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

type Asked = Inputs<ClaimsAgainstDatesInput>;

/** A unit said to have come with the car. */
const addOriginal = (view: View, asked: Asked[]): void => {
  const build = buildOf(view);
  if (build === undefined) return;
  for (const { read, part, dates } of datedParts(view)) {
    const claim = originalityOf(view, part, ["original-to-car"]);
    if (claim === undefined) continue;
    const input = { claim: "original", built: build.dates, dates: [dates] } as const;
    asked.push({ reads: [read, build.read], claim, bad: () => [read], input });
  }
};

/** An engine said never to have been apart. */
const addUntouched = (view: View, asked: Asked[]): void => {
  const claim = findClaim(view, "choice", "engine.rebuild-claim");
  if (claim === undefined || optionOf(claim) !== "never") return;
  const build = buildOf(view);
  const parts = datedParts(view).filter(({ part }) => ASSEMBLY.includes(part));
  if (build === undefined || parts.length === 0) return;
  asked.push({
    reads: [...parts.map(({ read }) => read), build.read],
    claim,
    bad: () => parts.map(({ read }) => read),
    input: { claim: "untouched", built: build.dates, dates: parts.map(({ dates }) => dates) },
  });
};

/** Parts said to have been fitted with a bill. */
const addBills = (view: View, asked: Asked[]): void => {
  for (const bill of findClaims(view, "code", "identity.bill-date")) {
    const document = datesOf(view, bill);
    const part = datedParts(view).find((candidate) => candidate.part === bill.position);
    if (document.length === 0 || part === undefined) continue;
    const input = { claim: "fitted-with-bill", document, dates: [part.dates] } as const;
    asked.push({ reads: [part.read, bill], claim: bill, input });
  }
};

/** The most years a bracket of age claims. */
const CLAIMED_YEARS: Readonly<Record<string, number>> = { "under-three-years": 3, "three-to-six-years": 6 };

/** What is claimed of a tire's age. An age the claim itself admits contradicts nothing. */
const addTires = (view: View, asked: Asked[]): void => {
  for (const number of findReads(view, "code", "wheels.tire-identification")) {
    const claim = findClaim(view, "choice", "wheels.tire-age", number.position);
    const option = optionOf(claim) ?? "";
    const years = CLAIMED_YEARS[option];
    if (claim === undefined || (option !== "new" && years === undefined)) continue;
    const [day, visit] = [visitDay(view, view.claims), visitDay(view, number.side)];
    if (day === undefined || visit === undefined) continue;
    const dates = [tireDate(number.answer.text, Math.max(day, visit)).dates];
    const stated = [{ first: day, last: day }];
    const input: ClaimsAgainstDatesInput =
      years === undefined
        ? { claim: "new", stated, dates }
        : { claim: "at-most-years", years, stated, dates };
    asked.push({ reads: [number, claim], claim, input });
  }
};

const find = (view: View): readonly Asked[] => {
  const asked: Asked[] = [];
  addOriginal(view, asked);
  addUntouched(view, asked);
  addBills(view, asked);
  addTires(view, asked);
  return asked;
};

/** claimsAgainstDates with all that belongs to it. */
export const claimsAgainstDatesRule = defineRule({
  record: claimsAgainstDatesRecord,
  compute: claimsAgainstDates,
  find,
  examples,
  trueClaims,
  growth,
});
