import type { CompiledLexicon } from "@evenhand/lexicon/compile-lexicon";
import type { Answer } from "@evenhand/shared/answer";
import type { Item } from "@evenhand/shared/sheet";
import { longestFirst, optionsSaid, sensesOf } from "./said.ts";
import type { SaidOf } from "./said.ts";

const working = (value: "yes" | "no" | "intermittent"): Answer => ({ kind: "working", value });

/** "No heat": the heater is there, and does nothing. */
export const NO_HEAT = /\bno heat\b/u;

/** "Hot" of a heater: words that say of one thing alone whether it works. */
const workingByOption = (item: Item, said: SaidOf): Answer | undefined => {
  const [own] = optionsSaid(item, said);
  if (own === undefined) return undefined;
  if (own.option === "intermittent") return own.negated ? undefined : working("intermittent");
  return working((own.option === "yes") === own.negated ? "no" : "yes");
};

export const workingAnswer = (item: Item, said: SaidOf, compiled: CompiledLexicon): Answer | undefined => {
  const own = workingByOption(item, said);
  if (own !== undefined) return own;
  // What every car has is not missing where somebody says there is none: "no horn", "no heat".
  if (said.noSubject && (item.equipment !== true || NO_HEAT.test(said.text))) return working("no");
  const senses = longestFirst(said.words).flatMap((word) =>
    sensesOf(word, compiled).map((sense) => ({ sense, word })),
  );
  if (
    senses.some(({ sense, word }) => "working" in sense && sense.working === "intermittent" && !word.negated)
  )
    return working("intermittent");
  for (const { sense, word } of senses)
    if ("working" in sense) return working((sense.working === "yes") === word.negated ? "no" : "yes");
  for (const { sense, word } of senses) {
    if (!("general" in sense)) continue;
    if (sense.general === "good") return working(word.negated ? "no" : "yes");
    if (sense.general === "bad" && !word.negated) return working("no");
  }
  return said.yesOrNo === undefined ? undefined : working(said.yesOrNo);
};
