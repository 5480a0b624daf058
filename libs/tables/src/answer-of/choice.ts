import { expandPattern } from "@evenhand/lexicon/expand-pattern";
import { lexiconVersion1 } from "@evenhand/lexicon/lexicon-version-1";
import { tokenize } from "@evenhand/lexicon/tokenize";
import type { Item } from "@evenhand/shared/sheet";
import { isBadCall } from "@evenhand/shared/severity";
import { labelOf } from "../label/index.ts";
import { outcomeOf } from "../outcome-words/index.ts";
import { remembered } from "../remembered/index.ts";
import { sensedIn } from "../sensed-words/index.ts";
import { ageOption } from "./age.ts";
import { answered, unanswered } from "./context.ts";
import type { Answered, Asked } from "./context.ts";
import { asksForFault } from "./questions.ts";
import { writtenOptions } from "./written-options.ts";

type Option = NonNullable<Item["choice"]>["options"][number];
type Phrase = { readonly option: string; readonly stems: readonly string[] };

const EMPTY = new Set([
  "the",
  "a",
  "an",
  "of",
  "is",
  "it",
  "in",
  "to",
  "and",
  "or",
  "with",
  "at",
  ",",
  ".",
  "s",
]);

const stemsOf: (text: string) => readonly string[] = remembered(
  (text) =>
    tokenize(text)
      .map(({ stem }) => stem)
      .filter((stem) => !EMPTY.has(stem) && /[\p{L}\d]/u.test(stem)),
  500,
);

const plain = (name: string): string => name.replaceAll(/[/(),]/g, " ");

const phrasesOf = (item: Item): Phrase[] => {
  const own = (item.choice?.options ?? []).flatMap(({ id, words }) =>
    [words.american, words.british ?? "", ...words.synonyms, id.replaceAll("-", " ")]
      .filter((name) => name !== "")
      .map((name) => ({ option: id, stems: stemsOf(plain(name)) })),
  );
  const spoken = [...writtenOptions, ...lexiconVersion1.options]
    .filter((option) => option.item === item.id)
    .flatMap(({ option, words }) =>
      words
        .flatMap(expandPattern)
        .map((phrase) => ({ option, stems: phrase.filter((stem) => !EMPTY.has(stem)) })),
    );
  return [...own, ...spoken].filter(({ stems }) => stems.length > 0);
};

const phrases = new WeakMap<Item, readonly Phrase[]>();

const knownPhrases = (item: Item): readonly Phrase[] => {
  const known = phrases.get(item);
  if (known !== undefined) return known;
  const made = phrasesOf(item);
  phrases.set(item, made);
  return made;
};

const NEGATIONS = new Set(["not", "no", "never", "without", "cannot"]);

/** `Dark, not milky` denies what stands behind it. */
const DENIED_BEHIND = 3;
const isNear = (before: readonly string[]): boolean =>
  before.slice(-DENIED_BEHIND).some((stem) => NEGATIONS.has(stem));

/** Whether the words of a phrase stand in a text, and how much of the text they are; "not" turns a phrase over that has none itself. */
const fitIn = (stems: readonly string[], phrase: readonly string[]): number => {
  const inside = new Set(stems);
  if (!phrase.every((stem) => inside.has(stem))) return 0;
  const turned =
    !phrase.some((stem) => NEGATIONS.has(stem)) &&
    phrase.some((stem) => isNear(stems.slice(0, stems.indexOf(stem))));
  if (turned && phrase.length <= 2) return 0;
  return phrase.length + phrase.length / Math.max(stems.length, 1);
};

const bestOption = (
  asked: Asked,
  text: string,
): { readonly option: string; readonly sure: boolean } | undefined => {
  const stems = stemsOf(plain(text));
  let best: { option: string; fit: number } | undefined;
  let second = 0;
  for (const { option, stems: phrase } of knownPhrases(asked.item)) {
    const fit = fitIn(stems, phrase);
    if (fit === 0) continue;
    if (best === undefined || fit > best.fit) {
      if (best !== undefined && best.option !== option) second = best.fit;
      best = { option, fit };
    } else if (option !== best.option) second = Math.max(second, fit);
  }
  return best === undefined ? undefined : { option: best.option, sure: best.fit > second };
};

/** "Barely warm" of a heater, "negative" of a block test: what words of one item alone say, where it is no choice. */
export const ownOption = (asked: Asked): string | undefined => {
  const { text, remark = "" } = asked.value;
  const found = bestOption(asked, `${text} ${remark}`);
  return found?.sure === true ? found.option : undefined;
};

const optionsCalled = (asked: Asked, bad: boolean): Option[] =>
  (asked.item.choice?.options ?? []).filter(({ id, call }) =>
    id === "not-known" ? false : bad ? isBadCall(call) : call === "good",
  );

const badOptions = (asked: Asked): ReadonlySet<string> =>
  new Set(optionsCalled(asked, true).map(({ id }) => id));

const { marks } = lexiconVersion1;

/** Of what kind a thing is, whether original or another's, no tick, cross or mark says. */
const isOfKind = ({ id, choice }: Item): boolean =>
  marks.ofKind.includes(id) ||
  (choice?.ordered !== true &&
    marks.good[id] === undefined &&
    (choice?.options.filter(({ call }) => call === "good").length ?? 0) > 1);

/** The best of an item's options: what a tick stands for. */
const goodOption = (asked: Asked): Answered => {
  const { id } = asked.item;
  if (isOfKind(asked.item)) return unanswered("no-such-word");
  const [first, ...others] = optionsCalled(asked, false);
  if (first === undefined) return unanswered("no-such-word");
  return answered({ kind: "choice", option: marks.good[id] ?? first.id }, others.length === 0);
};

const badOption = (asked: Asked): Answered => {
  const noted = bestOption(asked, asked.note);
  if (noted !== undefined) return answered({ kind: "choice", option: noted.option }, noted.sure);
  // That a part is another's, or a paper another car's, is never said by a cross alone.
  if (asked.item.section === "identity" || isOfKind(asked.item)) return unanswered("bad-but-not-how");
  const [only, ...others] = optionsCalled(asked, true);
  return only === undefined || others.length > 0
    ? unanswered("bad-but-not-how")
    : answered({ kind: "choice", option: only.id }, false);
};

/** The option that a question names: `Musty smell?`, `Is the boot dry?`. */
const namedOption = (asked: Asked): Option | undefined => {
  const words = asked.labels.flatMap(({ stems }) => stems).join(" ");
  const ownNames = new Set(stemsOf(asked.item.words.american));
  const others = words.split(" ").filter((stem) => !ownNames.has(stem));
  const named = bestOption(asked, others.join(" ")) ?? bestOption(asked, words);
  return named?.sure === true ? asked.item.choice?.options.find(({ id }) => id === named.option) : undefined;
};

/** Whether what the item asks for is trouble by its own name, as smoke or a leak is. */
const asksForTrouble = ({ item }: Asked): boolean =>
  marks.trouble.includes(item.id) ||
  item.choice?.options.some(({ id, call }) => id === "none" && call === "good") === true;

const chosen = (option: string, sure: boolean): Answered => answered({ kind: "choice", option }, sure);

/** `Does it smoke? Yes, blue`: what the remark says, then what the question names; yes to trouble is never the good answer. */
const yesOption = (asked: Asked): Answered => {
  const question = asked.labels.map(({ text }) => text).join(" ");
  const noted = bestOption(asked, asked.note) ?? bestOption(asked, `${question} ${asked.note}`);
  const named = namedOption(asked);
  const bad = badOptions(asked);
  if (
    asked.note !== "" &&
    noted?.sure === true &&
    bad.has(noted.option) &&
    (named === undefined || bad.has(named.id))
  )
    return chosen(sideOption(asked, noted.option) ?? noted.option, false);
  if (named !== undefined && named.id !== "none") {
    const toSide = sideOption(asked, named.id);
    return chosen(toSide ?? named.id, toSide === undefined && named.call === "good");
  }
  if (asksForTrouble(asked)) return badOption(asked);
  return asksForFault(asked.labels) ? unanswered("bad-but-not-how") : goodOption(asked);
};

/** `Do the brakes pull? | yes | left`: what the question names, to the side that the remark says. */
const sideOption = ({ item, note }: Asked, named: string): string | undefined => {
  const { places } = labelOf(note);
  const [side, other] = (["left", "right"] as const).filter((one) => places.has(one));
  return side === undefined || other !== undefined
    ? undefined
    : item.choice?.options.find(({ id }) => id === `${named}-${side}`)?.id;
};

/** No to one trouble of several says nothing of the others: oil that is not milky may be low. */
const noOption = (asked: Asked): Answered => {
  const named = namedOption(asked);
  const denied = lexiconVersion1.answering.denied[asked.item.id]?.[named?.id ?? ""];
  if (denied !== undefined) return chosen(denied, false);
  const noted = asked.note === "" ? undefined : bestOption(asked, asked.note);
  const call = asked.item.choice?.options.find(({ id }) => id === noted?.option)?.call;
  if (noted?.sure === true && call !== "good") return chosen(noted.option, false);
  const good = goodOption(asked);
  const unsure = good.ok ? { ...good, sure: false } : good;
  if (asksForTrouble(asked)) {
    const made = badOption(asked);
    return made.ok && asked.note !== "" ? { ...made, sure: false } : unsure;
  }
  if (named?.call === "good" || named === undefined)
    return asksForFault(asked.labels) && named === undefined ? unsure : badOption(asked);
  return optionsCalled(asked, true).length === 1 ? unsure : unanswered("no-such-word");
};

/** Whether every word of some bad answer stands there, whatever else does. */
const hasBadWords = (asked: Asked): boolean => {
  const stems = new Set(stemsOf(plain(asked.value.text)));
  const bad = badOptions(asked);
  return knownPhrases(asked.item).some(
    ({ option, stems: phrase }) => bad.has(option) && phrase.every((stem) => stems.has(stem)),
  );
};

const bySense = (asked: Asked): Answered => {
  const senses = sensedIn(asked.value.text);
  const good = senses.some(
    ({ senses: list, denied }) =>
      !denied &&
      list.some(
        (sense) =>
          ("general" in sense && ["good", "none", "new"].includes(sense.general)) ||
          ("working" in sense && sense.working === "yes" && !asksForTrouble(asked)),
      ),
  );
  const made = good && !hasBadWords(asked) ? goodOption(asked) : unanswered("no-such-word");
  return made.ok ? { ...made, sure: false } : made;
};

/** An option whose words are all that is written. */
const exactOption = ({ item, value }: Asked): string | undefined => {
  const stems = stemsOf(plain(value.text)).join(" ");
  return knownPhrases(item).find(({ stems: phrase }) => phrase.join(" ") === stems)?.option;
};

const partsOf = (text: string): readonly string[] => text.split(/\s*[,;]\s+|\s+and\s+|\s+\/\s+/);

/** `Rusty brown; the level was low`: two bad answers in words of their own, of which only one may be given. */
const saysTwoBad = (asked: Asked, text: string): boolean => {
  const bad = badOptions(asked);
  const said = partsOf(text).flatMap((part) => bestOption(asked, part)?.option ?? []);
  return new Set(said.filter((option) => bad.has(option))).size > 1 || contradictsItself(asked, text);
};

/** `Long but firm` is neither. */
const contradictsItself = (asked: Asked, text: string): boolean => {
  const sides = text.split(/\s*,?\s+but\s+/i).map((side) => bestOption(asked, side)?.option);
  return sides.length > 1 && sides.every((side) => side !== undefined) && new Set(sides).size > 1;
};

/** Whether each part of a text is understood, so that none of them may say otherwise. */
const isUnderstood = (asked: Asked, text: string): boolean =>
  text
    .split(/\s*[,;]\s+/)
    .every((part) => bestOption(asked, part) !== undefined || outcomeOf(part) !== undefined);

const spokenOption = (asked: Asked): Answered | undefined => {
  const { text, remark = "" } = asked.value;
  const spoken = bestOption(asked, `${text} ${remark}`) ?? bestOption(asked, text);
  if (spoken === undefined) return undefined;
  if (saysTwoBad(asked, text)) return unanswered("several-answers");
  return answered({ kind: "choice", option: spoken.option }, spoken.sure && isUnderstood(asked, text));
};

/** A choice by the words of its options; a tick is the best of them, and a cross what the note says. */
export const choiceOf = (asked: Asked): Answered => {
  const exact = exactOption(asked);
  if (exact !== undefined) return answered({ kind: "choice", option: exact });
  const age = ageOption(asked);
  if (age !== undefined) return answered({ kind: "choice", option: age });
  const says = asked.value.outcome?.says;
  const own = outcomeOf(asked.value.text) === undefined ? spokenOption(asked) : undefined;
  if (own !== undefined) return own;
  if (says === "yes") return yesOption(asked);
  if (says === "good") return goodOption(asked);
  if (says === "no") return noOption(asked);
  if (says === "bad" || says === "partly") return badOption(asked);
  return bySense(asked);
};
