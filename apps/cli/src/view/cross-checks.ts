import { listed } from "@evenhand/message/listed";
import type { Comparison } from "@evenhand/shared/comparison";
import type { SheetWords } from "@evenhand/wording/sheet-words";
import { catalog } from "../words/catalog.ts";
import type { BrokenRule, CrossCheckView, Sentences } from "./index.ts";

type Check = Comparison["crossChecks"][number];

/** Whose words and figures a check set against each other. */
const sidesOf = ({ reads, claim }: Check): BrokenRule["over"] => {
  const sides = new Set([...reads, ...(claim === null ? [] : [claim])].map(({ side }) => side));
  if (sides.size > 1) return "both";
  return sides.has("b") ? "b" : "a";
};

/** Where it was read, where one place is meant; a rule over many places names them itself. */
const placeOf = ({ reads }: Check, words: SheetWords): string[] => {
  const places = new Set(
    reads.flatMap(({ item, position }) =>
      position === "" ? [] : [words.position(words.findItem(item), position)],
    ),
  );
  return places.size === 1 ? [...places] : [];
};

const brokenRule = (
  check: Check,
  checks: readonly Check[],
  sentences: Sentences,
  words: SheetWords,
): BrokenRule => {
  const under = checks.filter((each) => each.under !== undefined && checks[each.under] === check);
  const others = [...new Set(under.map(({ rule }) => sentences.rule(rule)))];
  return {
    title: sentences.rule(check.rule),
    places: placeOf(check, words),
    over: sidesOf(check),
    strength: check.strength,
    sentence: [
      sentences.crossCheck(check),
      ...(others.length === 0 ? [] : [catalog.alsoBreaks(others)]),
    ].join(" "),
  };
};

const spoken = ({ title, over, sentence }: BrokenRule): string => [title, over, sentence].join("|");

const joined = ([first, ...rest]: readonly BrokenRule[]): BrokenRule[] => {
  if (first === undefined) return [];
  return [{ ...first, places: [...new Set([first, ...rest].flatMap(({ places }) => places))] }];
};

/** The same thing said of four tires is said once, with their places. */
const saidOnce = (rules: readonly BrokenRule[]): BrokenRule[] =>
  [...Map.groupBy(rules, spoken).values()].flatMap(joined);

/** Broken rules one by one, contradictions before hints; what holds is only counted. */
export const crossCheckView = (
  checks: readonly Check[],
  sentences: Sentences,
  words: SheetWords,
): CrossCheckView => {
  const breaking = checks.filter(({ verdict, under }) => verdict === "breaks" && under === undefined);
  const broken = saidOnce(breaking.map((check) => brokenRule(check, checks, sentences, words)));
  const holding = Map.groupBy(
    checks.filter(({ verdict }) => verdict === "holds"),
    ({ rule }) => rule,
  );
  return {
    broken: [
      ...broken.filter(({ strength }) => strength === "contradicts"),
      ...broken.filter(({ strength }) => strength !== "contradicts"),
    ],
    holding: [...holding].map(([rule, group]) => ({ title: sentences.rule(rule), checks: group.length })),
    untold: checks.filter(({ verdict }) => verdict === "cannot-tell").length,
  };
};

/** What a broken rule is called, with its places. */
export const ruleTitle = ({ title, places }: BrokenRule): string =>
  places.length === 0 ? title : catalog.noted(title, listed(places));
