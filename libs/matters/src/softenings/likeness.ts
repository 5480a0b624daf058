import type { Comparison, LikeReadings, RepeatsOfSide } from "@evenhand/shared/comparison";
import type { Softening } from "@evenhand/shared/page-one";
import { capital } from "@evenhand/message/first-letter";
import { reportWords } from "@evenhand/comparison/sentence";
import { alikeMessages as messages } from "./messages.ts";

type Compared = Pick<Comparison, "repeats" | "likeReadings" | "a" | "b">;

/** A chance as one says it. */
const chanceWords = (chance: number): string =>
  chance < 0.001 ? messages.say("rare") : messages.say("chance", { p: Number(chance.toPrecision(2)) });

/** The two by what they are, and by who wrote them where both are of one kind. */
const namesOf = ({ a, b }: Compared): Readonly<Record<"a" | "b", string>> => {
  if (a.kind !== b.kind) return { a: reportWords(a.kind), b: reportWords(b.kind) };
  const named = ({ kind, organization }: Compared["a"]) =>
    messages.say("by", { report: reportWords(kind), organization });
  return { a: named(a), b: named(b) };
};

const ofRepeats = (side: "a" | "b", own: RepeatsOfSide, name: string): Softening[] => {
  const { found, places, degreesOfFreedom, ratio, chance } = own;
  if (found !== "too-alike" && found !== "scatters-more") return [];
  if (ratio === undefined || chance === undefined) return [];
  const times = Number(Math.sqrt(ratio).toFixed(1));
  return [
    {
      of: found,
      side,
      words: messages.say(found, { Side: capital(name), places, times }),
      figures: messages.say("repeats.figures", {
        degrees: degreesOfFreedom,
        ratio: Number(ratio.toPrecision(2)),
        chance: chanceWords(chance),
      }),
    },
  ];
};

const askWords = (
  { later, blind, same }: LikeReadings,
  names: Readonly<Record<"a" | "b", string>>,
): string => {
  if (later === null) return messages.say("ask.either");
  const said = { later: names[later], earlier: names[later === "b" ? "a" : "b"], blind };
  if (blind === 0) return messages.say("ask.none-blind", said);
  return blind === same ? messages.say("ask.all-blind", said) : messages.say("ask.some-blind", said);
};

const ofLike = (like: LikeReadings, names: Readonly<Record<"a" | "b", string>>): Softening[] => {
  if (!like.moreThanChance) return [];
  const { compared, same, expected, chance } = like;
  const most = Math.ceil(expected);
  return [
    {
      of: "copied",
      side: like.later ?? "both",
      words: messages.say("copied", { compared, same, most, ask: askWords(like, names) }),
      figures: messages.say("copied.figures", { chance: chanceWords(chance) }),
    },
  ];
};

/**
 * What readings say by being alike, or too far apart, over the whole report: a question with its evidence first, then what each side's
 * repeats are worth. It accuses nobody: there may be a reason that no figure knows.
 *
 * @example likeness(comparison)[0]?.of // "copied"
 */
export const likeness = (comparison: Compared): Softening[] => {
  const { repeats, likeReadings } = comparison;
  const names = namesOf(comparison);
  const copied = likeReadings === undefined ? [] : ofLike(likeReadings, names);
  if (repeats === undefined) return copied;
  const all = [...ofRepeats("a", repeats.a, names.a), ...ofRepeats("b", repeats.b, names.b)];
  return [
    ...copied,
    ...all.filter(({ of }) => of === "too-alike"),
    ...all.filter(({ of }) => of === "scatters-more"),
  ];
};
