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

/** Rules that read one report at a time, and rules that test the claims of one against the readings of another. */
export type Checks = { readonly oneReport: readonly Finder[]; readonly bothReports: readonly Finder[] };

/** Where a finding stands. */
export const referenceTo = ({ side, item, position }: Found): EntryReference => ({ side, item, position });

/** Rule, claim and places read, as one text: two checks with the same are one check. Views list reads in one order. */
export const keyOf = ({ rule, reads, claim }: Prepared): string => {
  let key: string = rule;
  if (claim !== undefined && typeof claim !== "function")
    key += `|${claim.side} ${claim.item} ${claim.position}|`;
  for (const { side, item, position } of reads) key += `|${side} ${item} ${position}`;
  return key;
};

export type CheckParts = Pick<CrossCheck, "reads" | "claim">;

/** The references of a check, those read and the one tested. */
export const partsOf = ({ reads, claim }: Prepared, result: RuleResult): CheckParts => {
  const tested = typeof claim === "function" ? claim(result) : claim;
  return { reads: reads.map(referenceTo), claim: tested === undefined ? null : referenceTo(tested) };
};
