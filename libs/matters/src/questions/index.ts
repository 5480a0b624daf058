import { defineMessages } from "@evenhand/message/define-messages";
import { listed } from "@evenhand/message/listed";
import type { Comparison, Entry } from "@evenhand/shared/comparison";
import type { Asked } from "@evenhand/shared/page-one";
import { placeWords } from "../headline/index.ts";
import type { Reports } from "../headline/index.ts";
import type { JoinedMatter } from "../matters/index.ts";

const { say } = defineMessages("questions", { about: "{question} It is about {places}." });

/** A heap of trifles or repairs is no question. */
const HEAPS: ReadonlySet<string> = new Set(["small-things", "repairs"]);
/** What these ask about, nobody could tell who does not see the page: the places are named. */
const TO_BE_NAMED: ReadonlySet<string> = new Set([
  "unseen-opened",
  "unseen-looking",
  "no-yardstick",
  "unseen-claims",
  "unseen",
]);
const NAMED = 3;

/** Money or safety first; what nobody spoke of, made one, holds a little of everything and stands last. */
const classOf = ({ kind, severity }: JoinedMatter): number => {
  if (kind === "unseen") return 3;
  return severity === "halt" ? 0 : severity === "danger" ? 1 : 2;
};

/**
 * How little an answer could change: a paper or a word of the dealer's decides it, or it is open still · it was measured or seen ·
 * both say that it is bad.
 */
const settledOf = ({ next, certainty, admitted }: JoinedMatter): number => {
  if (next.step === "ask" || next.step === "see-paper") return 0;
  if (admitted) return 2;
  return certainty === "measured" || certainty === "seen" ? 1 : 0;
};

/** The gravest places, one an item. */
const namesOf = (places: readonly Entry[], sheet: Reports["sheet"]): string => {
  const first = places.filter(({ item }, at) => places.findIndex((one) => one.item === item) === at);
  return listed(
    first.slice(0, NAMED).map((entry) => placeWords(entry, sheet)),
    "semicolon",
  );
};

/**
 * The questions to put to the dealer, most worth asking first: what can stop the money, then what can hurt somebody, then the rest,
 * trifles last; within each what an answer could still change before what was measured or seen, and that before what the dealer said
 * already. Asking costs nothing, so that no minutes weigh. Each question once, on the gravest place of its matter, worded so that
 * whoever does not see the page can answer it.
 *
 * @param matters worst first
 * @example questionsOf(matters(comparison, reports), comparison, reports)[0]?.item // "identity.title-holder"
 */
export const questionsOf = (
  matters: readonly JoinedMatter[],
  { entries }: Pick<Comparison, "entries">,
  { sheet }: Reports,
): Asked[] => {
  const order = [...matters.entries()]
    .filter(([, { kind }]) => !HEAPS.has(kind))
    .toSorted(
      ([at, one], [atOther, other]) =>
        classOf(one) - classOf(other) || settledOf(one) - settledOf(other) || at - atOther,
    );
  const asked = new Map<string, Asked>();
  for (const [, { kind, question, lines }] of order) {
    const places = lines.flatMap((index) => entries[index] ?? []);
    const [gravest] = places;
    if (gravest === undefined || asked.has(question)) continue;
    const { item, position } = gravest;
    const words = TO_BE_NAMED.has(kind)
      ? say("about", { question, places: namesOf(places, sheet) })
      : question;
    asked.set(question, { words, item, position });
  }
  return [...asked.values()];
};
