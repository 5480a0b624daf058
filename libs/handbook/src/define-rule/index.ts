import type { FirmLimits, RuleResult } from "@evenhand/shared/cross-check";
import type { DrawnReading } from "../draws/index.ts";
import type { DateSet } from "../day/index.ts";
import type { LimitRecords } from "../limit-record/index.ts";
import type { DefinedRecord, Outcome, RuleRecord } from "../rule-record/index.ts";
import { isAnswered } from "../view/index.ts";
import type { Found, View } from "../view/index.ts";

/** What a rule reads of the reports, and what it makes of it. */
export type Inputs<Input> = {
  readonly reads: readonly Found[];
  /** The finding whose claim is tested; where only the result tells which, a function of it. */
  readonly claim?: Found | ((result: RuleResult) => Found | undefined);
  /**
   * The findings a break makes bad. Left out: what was read, where no claim is tested; nothing, where a claim is, since then it is
   * the claim that falls.
   */
  readonly bad?: (result: RuleResult) => readonly Found[];
  readonly input: Input;
};

/** For every reason of a rule an input that leads to it. The tests run them, and hold what they say. */
export type Examples<Record_ extends { readonly outcomes: object }, Input> = {
  readonly [Reason in keyof Record_["outcomes"] & string]: Input;
};

/**
 * Claims exactly true, at the worst place they can be: on the limit itself. They may break in no more than one reading
 * in a hundred. `no-figures` where a rule reads none.
 */
export type TrueClaims<Input> = Readonly<Record<string, (read: DrawnReading) => Input>> | "no-figures";

/**
 * Inputs over a handful of numbers from 0 to 1 with a relative uncertainty, or over two sets of dates: more uncertainty
 * and more dates may move the verdict to `cannot-tell` and nowhere else.
 */
export type Growth<Input> =
  | { readonly numbers: (numbers: readonly number[], uncertainty: number) => Input }
  | { readonly dates: Readonly<Record<string, (one: DateSet, other: DateSet) => Input>> }
  | "no-figures";

/** Everything a rule consists of. */
export type RuleParts<Id extends string, Limits extends LimitRecords, Reason extends string, Input> = {
  readonly record: DefinedRecord<Id, Limits, Reason>;
  /** The rule itself, pure. */
  readonly compute: (input: Input, firm: FirmLimits) => RuleResult;
  /** Items each of which it needs an answer to, whoever gave it; it is not asked where one of them has none. */
  readonly needs?: readonly string[];
  /** Where its inputs stand in the reports; nothing where they are not there. */
  readonly find: (view: View) => readonly Inputs<Input>[];
  readonly examples: { readonly [R in Reason]: NoInfer<Input> };
  readonly trueClaims: TrueClaims<NoInfer<Input>>;
  readonly growth: Growth<NoInfer<Input>>;
};

/** A rule with its inputs found, not yet run. */
export type Prepared = Omit<Inputs<unknown>, "input"> & { readonly run: () => RuleResult };

/** Most rules have no inputs in most views. */
const NOTHING_FOUND: readonly Prepared[] = [];

/** A rule of the handbook, whatever it reads. */
export type Rule<
  Id extends string = string,
  LimitId extends string = string,
  Reason extends string = string,
> = Omit<RuleRecord, "limits" | "outcomes"> & {
  readonly id: Id;
  readonly limits: readonly LimitId[];
  readonly limitRecords: Readonly<Record<LimitId, LimitRecords[string]>>;
  readonly outcomes: Readonly<Record<Reason, Outcome>>;
  readonly needs: readonly string[];
  /** What it finds in a view, whether or not what it needs is answered. */
  readonly find: (view: View) => readonly Inputs<unknown>[];
  readonly prepare: (view: View) => readonly Prepared[];
  readonly examples: Readonly<Record<Reason, () => RuleResult>>;
  readonly trueClaims: Readonly<Record<string, (read: DrawnReading) => RuleResult>>;
  readonly growth: {
    readonly numbers?: (numbers: readonly number[], uncertainty: number) => RuleResult;
    readonly dates: Readonly<Record<string, (one: DateSet, other: DateSet) => RuleResult>>;
  };
};

const keysOf = <Key extends string>(record: Readonly<Record<Key, unknown>>): Key[] => {
  const keys: Key[] = [];
  for (const key in record) keys.push(key);
  return keys;
};

const isWhole = <Key extends string, Value>(
  record: Partial<Record<Key, Value>>,
  keys: readonly Key[],
): record is Record<Key, Value> => keys.every((key) => Object.hasOwn(record, key));

const mapped = <Key extends string, From, To>(
  record: Readonly<Record<Key, From>>,
  of: (value: From) => To,
): Record<Key, To> => {
  const keys = keysOf(record);
  const made: Partial<Record<Key, To>> = {};
  for (const key of keys) made[key] = of(record[key]);
  if (!isWhole(made, keys)) throw new RangeError("a key was lost");
  return made;
};

const grown = <Input>(growth: Growth<Input>, run: (input: Input) => RuleResult): Rule["growth"] => {
  if (growth === "no-figures") return { dates: {} };
  return "numbers" in growth
    ? { numbers: (numbers, uncertainty) => run(growth.numbers(numbers, uncertainty)), dates: {} }
    : { dates: mapped(growth.dates, (made) => (one: DateSet, other: DateSet) => run(made(one, other))) };
};

/**
 * A rule in one piece: what the Handbook says of it, its function, where its inputs stand in a report, an example of
 * every reason, and the draws that try it. What is missing does not compile.
 *
 * @example defineRule({ record: squareRecord, compute: square, find, examples, trueClaims, growth }).id // "square"
 */
export const defineRule = <
  const Id extends string,
  Limits extends LimitRecords,
  Reason extends string,
  Input,
>({
  record,
  compute,
  needs = [],
  find,
  examples,
  trueClaims,
  growth,
}: RuleParts<Id, Limits, Reason, Input>): Rule<Id, keyof Limits & string, Reason> => {
  const { answer: _answer, limit: _limit, makersLimit: _makersLimit, limits, ...words } = record;
  const run = (input: Input) => compute(input, {});
  return {
    ...words,
    limits: keysOf(limits),
    limitRecords: limits,
    needs,
    find,
    prepare: (view) => {
      const found = needs.every((item) => isAnswered(view, item)) ? find(view) : [];
      if (found.length === 0) return NOTHING_FOUND;
      return found.map(({ input, reads, claim, bad }) => ({
        reads,
        claim,
        bad,
        run: () => compute(input, view.firm),
      }));
    },
    examples: mapped<Reason, Input, () => RuleResult>(examples, (input) => () => run(input)),
    trueClaims:
      trueClaims === "no-figures"
        ? {}
        : mapped(trueClaims, (made) => (read: DrawnReading) => run(made(read))),
    growth: grown(growth, run),
  };
};
