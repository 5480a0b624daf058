import type { FirmLimits, LimitUse, RuleResult, RuleStrength, Verdict } from "@evenhand/shared/cross-check";
import { defineMessages } from "@evenhand/message/define-messages";
import type { Severity } from "@evenhand/shared/severity";
import type { Consequence, Source } from "@evenhand/shared/sheet";
import { limitInForce } from "../limit-record/index.ts";
import type { LimitRecord, LimitRecords } from "../limit-record/index.ts";
import type { ResultDetail } from "../rule-result/index.ts";

/**
 * What a reason comes to, and the message for it (ICU MessageFormat). A place is a figure, a range or a word of the result; `{alternatives}`
 * all of them, `{anyAlternative}` where one of them holds; `{limitLowestShare}` the figure of the limit `….lowest-share` that was used,
 * `{limitLowToHigh}` a band between two. What may be missing is asked for by a `select` with an option `none`.
 */
export type Outcome = {
  readonly verdict: Verdict;
  readonly says: string;
  /** How grave what was found is; with `cannot-tell` how grave it would be as one of the alternatives. */
  readonly severity: Severity | null;
};

/** The rule is kept. */
export const holds = (says: string): Outcome => ({ verdict: "holds", says, severity: null });
/** The rule is broken, and what was found is so grave. */
export const breaks = (severity: Severity, says: string): Outcome => ({ verdict: "breaks", says, severity });
/** Too little was read, or the uncertainty covers the boundary. */
export const cannotTell = (says: string): Outcome => ({ verdict: "cannot-tell", says, severity: null });
/** One of the alternatives matters, and would be so grave: this is always printed. */
export const undecided = (severity: Severity, says: string): Outcome => ({
  verdict: "cannot-tell",
  says,
  severity,
});

/** What the handbook says of a rule; the Handbook page is made from these records alone. */
export type RuleRecord<Limits extends LimitRecords = LimitRecords, Reason extends string = string> = {
  readonly title: string;
  /** What it needs to be told. */
  readonly reads: string;
  /** The formula in words. */
  readonly formula: string;
  /** The figures it judges by. */
  readonly limits: Limits;
  readonly source: Source;
  readonly consequence: Consequence;
  readonly over: "one-report" | "both-reports";
  readonly strength: RuleStrength;
  /** Cautions of the sheet that stand beside it. */
  readonly cautions: readonly string[];
  /** What it must never be read as. */
  readonly note?: string;
  /** Every reason it can give, what that comes to, and how it is said. */
  readonly outcomes: Readonly<Record<Reason, Outcome>>;
};

/** A record with what the rule's own function needs of it: its answers and the figures in force. */
export type DefinedRecord<
  Id extends string = string,
  Limits extends LimitRecords = LimitRecords,
  Reason extends string = string,
> = RuleRecord<Limits, Reason> & {
  readonly id: Id;
  /** The rule's answer: the reason alone fixes the verdict. */
  readonly answer: (reason: Reason, detail?: ResultDetail) => RuleResult;
  /** The figure in force: a firm's own where it may set one, else the handbook's. */
  readonly limit: (id: keyof Limits & string, firm?: FirmLimits) => LimitUse;
  /** A figure the maker stands behind, in place of the handbook's. */
  readonly makersLimit: (id: keyof Limits & string, value: number) => LimitUse;
};

/** Puts what one object has into another, in its order: the machine does so many times as fast as it spreads behind a name. */
const put = <Whole extends object>(into: Partial<Whole>, from: Whole): void => {
  for (const key in from) into[key] = from[key];
};

const assertWhole: (result: Partial<RuleResult>) => asserts result is RuleResult = ({ severity }) => {
  if (severity === undefined) throw new RangeError("a result lacks its severity");
};

const NO_DETAIL: ResultDetail = {};

const resultOf = (
  rule: string,
  reason: string,
  { verdict, severity }: Outcome,
  detail: ResultDetail,
): RuleResult => {
  const result: Partial<RuleResult> = { figures: detail.figures ?? {} };
  put<ResultDetail>(result, detail);
  result.rule = rule;
  result.verdict = verdict;
  result.reason = reason;
  result.severity = severity;
  assertWhole(result);
  return result;
};

const recordOf = (limits: LimitRecords, id: string): LimitRecord => {
  const limit = limits[id];
  if (limit === undefined) throw new RangeError(`no limit ${id}`);
  return limit;
};

/**
 * A rule's record, under its id; its sentences stand in the catalog.
 *
 * @example defineRecord("square", { … }).answer("square").verdict // "holds"
 */
export const defineRecord = <
  const Id extends string,
  const Limits extends LimitRecords,
  const Reason extends string,
>(
  id: Id,
  record: RuleRecord<Limits, Reason>,
): DefinedRecord<Id, Limits, Reason> => {
  const outcomes: readonly (readonly [string, Outcome])[] = Object.entries(record.outcomes);
  defineMessages(`rule.${id}`, Object.fromEntries(outcomes.map(([reason, { says }]) => [reason, says])));
  return {
    ...record,
    id,
    answer: (reason, detail = NO_DETAIL) => resultOf(id, reason, record.outcomes[reason], detail),
    limit: (limit, firm) => limitInForce(limit, recordOf(record.limits, limit), firm),
    makersLimit: (limit, value) => ({
      id: limit,
      value,
      unit: recordOf(record.limits, limit).unit,
      origin: "maker",
    }),
  };
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

/** Stands beside every limit in use. */
export const localLaw =
  "Local inspection law and the licensed mechanic decide; this is no certificate of roadworthiness.";
