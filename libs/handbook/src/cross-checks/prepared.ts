import type { CrossCheck, EntryReference, RuleResult } from "@evenhand/shared/cross-check";
import type { RuleId } from "../rules/index.ts";
import type { Found, View } from "./view.ts";

/** A rule with its inputs found, not yet run. */
export type Prepared = {
  readonly rule: RuleId;
  readonly reads: readonly Found[];
  /** The finding whose claim is tested; where only the result tells which, a function of it. */
  readonly claim?: Found | ((result: RuleResult) => Found | undefined);
  readonly run: () => RuleResult;
};

/** Finds the inputs of some rules in a view; nothing where they are not there. */
export type Finder = (view: View) => Prepared[];

/** Where a finding stands. */
export const referenceTo = ({ side, item, position }: Found): EntryReference => ({ side, item, position });

/** Sides and places a check reads, as one text: two checks of a rule with the same are one check. */
export const keyOf = ({ rule, reads, claim }: Prepared): string => {
  const places = reads.map(({ side, item, position }) => `${side} ${item} ${position}`).toSorted();
  const tested =
    claim === undefined || typeof claim === "function" ? "" : `${claim.side} ${claim.item} ${claim.position}`;
  return `${rule}|${tested}|${places.join("|")}`;
};

export type CheckParts = Pick<CrossCheck, "reads" | "claim">;

/** The references of a check, those read and the one tested. */
export const partsOf = ({ reads, claim }: Prepared, result: RuleResult): CheckParts => {
  const tested = typeof claim === "function" ? claim(result) : claim;
  return { reads: reads.map(referenceTo), claim: tested === undefined ? null : referenceTo(tested) };
};
