import type { RuleStrength, Verdict } from "@evenhand/shared/cross-check";
import type { Consequence, Source } from "@evenhand/shared/sheet";
import type { LimitId } from "../limits/index.ts";

/** What the handbook says of a rule; the Handbook page is made from these records alone. */
export type RuleRecord = {
  readonly title: string;
  /** What it needs to be told. */
  readonly reads: string;
  /** The formula in words. */
  readonly formula: string;
  readonly limits: readonly LimitId[];
  readonly source: Source;
  readonly consequence: Consequence;
  readonly over: "one-report" | "both-reports";
  readonly strength: RuleStrength;
  /** Cautions of the sheet that stand beside it. */
  readonly cautions: readonly string[];
  /** What it must never be read as. */
  readonly note?: string;
  /** Every reason it can give, and the verdict that reason carries. */
  readonly outcomes: Readonly<Record<string, Verdict>>;
};

/** The words for a rule or limit that nobody published. */
export const commonPractice = {
  kind: "common-practice",
  text: "common practice, no source",
} as const satisfies Source;
/** A rule that is nothing but arithmetic on what it reads. */
export const arithmetic = {
  kind: "handbook",
  text: "arithmetic on the figures read",
} as const satisfies Source;
/** A rule whose pattern the firm enters for the make at hand. */
export const firmsEntry = {
  kind: "maker",
  text: "the maker's form, as the firm entered it",
} as const satisfies Source;
/** A regulation, by its citation. */
export const regulation = <Text extends string>(text: Text) => ({ kind: "regulation", text }) as const;
