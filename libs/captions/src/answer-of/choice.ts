import type { CompiledLexicon } from "@evenhand/lexicon/compile-lexicon";
import type { Answer } from "@evenhand/shared/answer";
import type { Item } from "@evenhand/shared/sheet";
import { isOver } from "../spans/index.ts";
import { ageOption } from "./age.ts";
import { longestFirst, optionsSaid, sensesOf } from "./said.ts";
import type { OptionSaid, SaidOf, SaidWord } from "./said.ts";

const isGood = (item: Item, option: string): boolean =>
  item.choice?.options.find(({ id }) => id === option)?.call === "good";

const goodOption = (item: Item): string | undefined => {
  const good = (item.choice?.options ?? []).filter(({ id }) => isGood(item, id));
  return good.length === 1 ? good[0]?.id : undefined;
};

const NONE = new Set(["none", "absent", "dry", "never-imported", "no-title"]);

/** The second option of what leaks. */
const LEAKS = new Set(["weep", "film", "damp"]);

const generalChoice = (
  item: Item,
  said: SaidOf,
  compiled: CompiledLexicon,
  textOf: (word: SaidWord) => string,
): string | undefined => {
  if (!said.isFirst) return undefined;
  for (const word of longestFirst(said.words))
    for (const sense of sensesOf(word, compiled)) {
      if (!("general" in sense)) continue;
      // "Steering rack, no play": that nothing is loose says not that nothing leaks.
      if (LEAKS.has(item.choice?.options[1]?.id ?? "") && /^(?:tight|no play|no slop)$/u.test(textOf(word)))
        continue;
      if (sense.general === "none") return item.choice?.options.find(({ id }) => NONE.has(id))?.id;
      if (
        (sense.general === "good" || sense.general === "new") &&
        !word.negated &&
        !compiled.lexicon.answering.notByPraise.test(item.id)
      )
        return goodOption(item) ?? item.choice?.options.find(({ id }) => isGood(item, id))?.id;
    }
  return undefined;
};

const choose = (option: string | undefined): Answer | undefined =>
  option === undefined ? undefined : { kind: "choice", option };

/** Words that say less than another beside them: "leaks, like a seep". */
const VAGUE = new Set(["leak", "leaking", "leaky"]);

export const choiceAnswer = (
  item: Item,
  said: SaidOf,
  compiled: CompiledLexicon,
  textOf: (word: SaidWord) => string,
): Answer | undefined => {
  const options = optionsSaid(item, said);
  const firm = options.filter(({ word }) => !VAGUE.has(textOf(word)));
  const plain = firm.find(({ negated }) => !negated) ?? options.find(({ negated }) => !negated);
  const counted = compiled.lexicon.answering.byCount[item.id]?.[said.numbers.at(0)?.value ?? 0];
  if (counted !== undefined && plain === undefined && said.isFirst) return choose(counted);
  if (item.id === "wheels.tire-age") return choose(ageOption(said, compiled));
  if (plain?.option === "tick-warm" && /\bcold\b/u.test(said.text) && !/\b(?:warm|hot)\b/u.test(said.text))
    return choose("tick-cold");
  if (plain !== undefined && !covered(plain, options)) return choose(plain.option);
  const denied = options.find(({ negated }) => negated);
  if (denied !== undefined) {
    const opposite = compiled.lexicon.answering.denied[item.id]?.[denied.option];
    if (opposite !== undefined) return choose(opposite);
    return isGood(item, denied.option) ? undefined : choose(goodOption(item));
  }
  if (said.yesOrNo === "no" && said.isFirst && !compiled.lexicon.answering.notByNo.test(item.id)) {
    const none = item.choice?.options.find(({ id }) => NONE.has(id) && id !== "never-imported")?.id;
    if (none !== undefined) return choose(none);
  }
  if (said.noSubject && !item.id.startsWith("identity.originality")) {
    const none = item.choice?.options.find(({ id }) => NONE.has(id))?.id;
    if (none !== undefined) return choose(none);
  }
  return choose(generalChoice(item, said, compiled, textOf));
};

/** A shorter phrase within a longer one that was denied says nothing by itself. */
const covered = (one: OptionSaid, all: readonly OptionSaid[]): boolean =>
  all.some((other) => other.negated && isOver(other.word, one.word));
