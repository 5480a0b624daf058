import type { Comparison } from "@evenhand/shared/comparison";
import type { Softening } from "@evenhand/shared/page-one";
import { likeness } from "./likeness.ts";
import { softMessages } from "./messages.ts";
import { spokenSoftly } from "./spoken.ts";
import type { SpokenBy } from "./spoken.ts";

type Softened = Pick<
  Comparison,
  "chance" | "scatter" | "softness" | "entries" | "repeats" | "likeReadings" | "a" | "b"
>;

/** How likely it must be that both scatter more than they declared before a sentence says so. */
const MORE = 0.5;

const onlyAsDeclared = ({ scatter, chance }: Pick<Softened, "chance" | "scatter">): Softening[] => {
  if (scatter === undefined || scatter.onlyAsDeclared === 0) return [];
  const { asDeclared, onlyAsDeclared: count } = scatter;
  const more = asDeclared !== null && asDeclared < MORE ? "yes" : "no";
  const words = softMessages.say("only-as-declared", { readings: chance.readings, count, more });
  return [{ of: "only-as-declared", side: "both", words }];
};

/** More would crowd page one: the counts in the comparison have them all. */
const SHOWN = 4;

/**
 * What softens an answer over the whole report, on either side, worst first: one sentence each, made from what was counted, four at
 * most.
 *
 * @example softenings(comparison, reports)[0]?.side // "a"
 */
export const softenings = (comparison: Softened, reports: SpokenBy): Softening[] => {
  const [alike, ofBoth] = [likeness(comparison), onlyAsDeclared(comparison)];
  // What readings were copied or not read anew would undo comes first.
  const spoken = spokenSoftly(comparison, reports).slice(
    0,
    Math.max(0, SHOWN - alike.length - ofBoth.length),
  );
  return [...alike, ...spoken, ...ofBoth].slice(0, SHOWN);
};
