import type { Comparison } from "@evenhand/shared/comparison";
import type { Softening } from "@evenhand/shared/page-one";
import { softMessages } from "./messages.ts";

type Softened = Pick<Comparison, "chance" | "scatter">;

/** How likely it must be that both scatter more than they declared before a sentence says so. */
const MORE = 0.5;

const onlyAsDeclared = ({ scatter, chance }: Softened): Softening[] => {
  if (scatter === undefined || scatter.onlyAsDeclared === 0) return [];
  const { asDeclared, onlyAsDeclared: count } = scatter;
  const more = asDeclared !== null && asDeclared < MORE ? "yes" : "no";
  const words = softMessages.say("only-as-declared", { readings: chance.readings, count, more });
  return [{ of: "only-as-declared", side: "both", words }];
};

/**
 * What softens an answer over the whole report, on either side, worst first: one sentence each, made from what was counted.
 *
 * @example softenings(comparison)[0]?.side // "both"
 */
export const softenings = (comparison: Softened): Softening[] => [...onlyAsDeclared(comparison)];
