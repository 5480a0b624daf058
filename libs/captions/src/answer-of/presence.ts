import type { CompiledLexicon } from "@evenhand/lexicon/compile-lexicon";
import type { Answer } from "@evenhand/shared/answer";
import type { Item } from "@evenhand/shared/sheet";
import { longestFirst, optionsSaid, sensesOf } from "./said.ts";
import type { SaidOf } from "./said.ts";

const presence = (value: "present" | "absent"): Answer => ({ kind: "presence", value });

/** "The build sheet is framed", "the window sticker says": there it is. */
export const TOLD =
  /\b(?:is|s|say|show|go|go back|list|confirm|agree|support|back|prove|match|hang)\b(?! not)/u;

export const presenceAnswer = (item: Item, said: SaidOf, compiled: CompiledLexicon): Answer | undefined => {
  const [own] = optionsSaid(item, said);
  if (own !== undefined) return presence((own.option === "present") === own.negated ? "absent" : "present");
  if (said.noSubject) return presence("absent");
  for (const word of longestFirst(said.words))
    for (const sense of sensesOf(word, compiled)) {
      const ofPatch = sensesOf(word, compiled).some((one) => "fault" in one && one.fault === "patch");
      if (!said.isFirst && !ofPatch) continue;
      if ("presence" in sense)
        return presence((sense.presence === "present") === word.negated ? "absent" : "present");
      if ("general" in sense && (sense.general === "none" || sense.general === "not-fitted"))
        return presence("absent");
    }
  if (said.yesOrNo === "no") return presence("absent");
  const isPraised =
    item.presence?.goodIs === "present" &&
    said.isFirst &&
    said.named &&
    said.words.some(({ negated }) => !negated);
  const isTold =
    compiled.lexicon.answering.presentIfTold.test(item.id) &&
    said.isFirst &&
    said.named &&
    TOLD.test(said.text);
  return isPraised || said.has || isTold || said.yesOrNo === "yes" ? presence("present") : undefined;
};
