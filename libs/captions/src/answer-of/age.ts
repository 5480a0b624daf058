import type { CompiledLexicon } from "@evenhand/lexicon/compile-lexicon";
import { isLikened, sensesOf } from "./said.ts";
import type { SaidOf } from "./said.ts";

const YEARS_NEW = 1;

export const ageOption = (said: SaidOf, compiled: CompiledLexicon): string | undefined => {
  const since = said.numbers.find(
    ({ unit, value }) => unit === undefined && value >= 1950 && value <= said.year,
  );
  // "Two are from 2015 and two from 2019": nobody says which.
  if (/\b(?:one|two|three) (?:are |is )?(?:from|of them)\b/u.test(said.text)) return undefined;
  const years =
    since === undefined
      ? said.numbers.findLast(({ unit }) => unit === "years")?.value
      : said.year - since.value;
  if (years !== undefined && (since !== undefined || /\b(?:old|aged|age|year)\b/u.test(said.text))) {
    if (years > 10 || (years === 10 && /\b(?:over|more|than)\b/u.test(said.text))) return "over-ten-years";
    if (years > 6) return "over-six-years";
    return years >= 3 ? "three-to-six-years" : years < YEARS_NEW ? "new" : "under-three-years";
  }
  const isNew = said.words.some(
    (word) =>
      !word.negated &&
      !isLikened(word, said, compiled) &&
      sensesOf(word, compiled).some((sense) => "general" in sense && sense.general === "new"),
  );
  return isNew ? "new" : undefined;
};
