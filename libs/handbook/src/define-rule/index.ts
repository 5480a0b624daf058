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

/** What a rule answers to one set of inputs. */
export type Ruling = Omit<Inputs<unknown>, "input" | "claim"> & {
  /** The finding whose claim was tested. */
  readonly claim: Found | undefined;
  readonly result: RuleResult;
};

const NO_RULINGS: readonly Ruling[] = [];

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
  /** What it answers in some views of one firm, each set of findings read and claim tested once. */
  readonly rule: (views: readonly View[]) => readonly Ruling[];
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

const isSamePlace = (one: Found | undefined, other: Found | undefined): boolean =>
  one === other ||
  (one !== undefined &&
    other !== undefined &&
    one.side === other.side &&
    one.position === other.position &&
    one.item === other.item);

const claimed = ({ claim }: Inputs<unknown>): Found | undefined =>
  typeof claim === "function" ? undefined : claim;

/** Inputs with the same claim and places read are one. Views list reads in one order. */
const isSame = (one: Inputs<unknown>, other: Inputs<unknown>): boolean => {
  const { length } = one.reads;
  if (length !== other.reads.length || !isSamePlace(claimed(one), claimed(other))) return false;
  for (let index = 0; index < length; index += 1)
    if (!isSamePlace(one.reads[index], other.reads[index])) return false;
  return true;
};

/** Inputs of one more view: one that finds nothing of its own repeats another. */
const addOthers = <Input>(asked: Inputs<Input>[], found: readonly Inputs<Input>[]): void => {
  for (const inputs of found) if (!asked.some((known) => isSame(known, inputs))) asked.push(inputs);
};

const rulingOf = ({ reads, claim, bad }: Inputs<unknown>, result: RuleResult): Ruling => ({
  reads,
  claim: typeof claim === "function" ? claim(result) : claim,
  bad,
  result,
});

const NOT_ON_SHEET = -1;

/** The places in the sheet of what a rule needs, looked up once a sheet: most comparisons are made on one. */
const placesIn = (needs: readonly string[]): ((view: View) => readonly number[]) => {
  let known: View["sheet"]["items"] | undefined;
  let places: readonly number[] = [];
  return ({ sheet: { items } }) => {
    if (items === known) return places;
    known = items;
    places = needs.map((item) => items.get(item)?.order ?? NOT_ON_SHEET);
    return places;
  };
};

const isAsked = (places: readonly number[], view: View): boolean => {
  for (const place of places) if (!isAnswered(view, place)) return false;
  return true;
};

const rulingsBy = <Input>({
  needs = [],
  find,
  compute,
}: Pick<RuleParts<string, LimitRecords, string, Input>, "needs" | "find" | "compute">): Rule["rule"] => {
  const placesOf = placesIn(needs);
  return (views) => {
    const asked: Inputs<Input>[] = [];
    for (const view of views) if (isAsked(placesOf(view), view)) addOthers(asked, find(view));
    const firm = views[0]?.firm ?? {};
    return asked.length === 0
      ? NO_RULINGS
      : asked.map((inputs) => rulingOf(inputs, compute(inputs.input, firm)));
  };
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
    rule: rulingsBy({ needs, find, compute }),
    examples: mapped<Reason, Input, () => RuleResult>(examples, (input) => () => run(input)),
    trueClaims:
      trueClaims === "no-figures"
        ? {}
        : mapped(trueClaims, (made) => (read: DrawnReading) => run(made(read))),
    growth: grown(growth, run),
  };
};
