import type { CompiledLexicon } from "@evenhand/lexicon/compile-lexicon";
import type { Answer } from "@evenhand/shared/answer";
import type { Item } from "@evenhand/shared/sheet";
import { isFaultElsewhere, longestFirst, optionsSaid, sensesOf } from "./said.ts";
import type { SaidOf } from "./said.ts";

const ORDER = ["spent", "heavy-wear", "even-wear", "light-wear", "as-new"];

export const gradeAnswer = (item: Item, said: SaidOf, compiled: CompiledLexicon): Answer | undefined => {
  const works = said.words.some((word) => sensesOf(word, compiled).some((sense) => "working" in sense));
  const own = optionsSaid(item, said).find(({ negated }) => !negated);
  if (own !== undefined) return { kind: "grade", scale: "house", value: own.option };
  for (const word of longestFirst(said.words))
    for (const sense of sensesOf(word, compiled))
      if (
        "grade" in sense &&
        !word.negated &&
        ORDER.includes(sense.grade) &&
        !(works && sense.grade === "even-wear") &&
        !isFaultElsewhere(word, said, compiled)
      )
        return { kind: "grade", scale: "house", value: sense.grade };
  return undefined;
};
