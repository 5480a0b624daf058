import type { Subject } from "@evenhand/lexicon/lexicon-version-1";
import type { Piece } from "../pieces/index.ts";
import type { Breath } from "./breath.ts";
import type { Entry } from "./entries.ts";
import { hasWords } from "./talk.ts";
import type { Talk } from "./talk.ts";

/** What a clock shows from here on is miles. */
const LEAST_MILES = 1000;

/** "Three seventy-three gears", "3.55 gears". */
const isRatio = (value: number, subject: string): boolean =>
  (value > 2 && value < 7.5 && !Number.isInteger(value)) ||
  (subject === "axle" && value > 200 && value < 750);

const isYear = (value: number, now: number): boolean => value >= 1900 && value <= now;

/** Tokens after a trunk within which a floor is the trunk's. */
const IN_TRUNK = 30;

/** What a word means in a list of gauges. */
const GAUGES: Readonly<Record<string, string>> = {
  oil: "oil-gauge",
  "running-temperature": "temperature-gauge",
  "leak-fuel": "fuel-gauge",
  volts: "charge-gauge",
};

/** The words of a sentence before a piece. */
const before = ({ tokens }: Talk, { from }: Piece): string => {
  const words: string[] = [];
  for (let at = from - 1; at >= Math.max(0, from - 20); at -= 1) {
    const stem = tokens[at]?.stem ?? "";
    if (/^[.?!;]$/u.test(stem)) break;
    words.push(stem);
  }
  return words.join(" ");
};

/** What a name means on such a car: a hood that is the top, a window of plastic, a wing behind. */
const ofForm = (talk: Talk, { id }: Subject, { text }: Breath, entry: Entry): string | undefined => {
  const isHood = talk.tokens.slice(entry.from, entry.to).some(({ stem }) => stem === "hood");
  if (id === "hood" && talk.hoodIsTop && isHood) return "top";
  const isOpen = /^(?:convertible|roadster)$/u.test(talk.context.form.body);
  if (id === "rear-window" && isOpen && !/\bglass\b/u.test(`${entry.context} ${text}`)) return "top-window";
  // "The right rear light" is a tail light.
  const isOneBehind =
    !entry.plural &&
    entry.sides.adds.includes("rear") &&
    entry.sides.adds.some((add) => /^(?:left|right|driver|passenger)$/u.test(add));
  if (id === "lamps" && isOneBehind) return "tail-lamp";
  // "Right rear wing" is the quarter.
  return id === "fender" && entry.sides.adds.includes("rear") ? "quarter" : undefined;
};

/** What a name means where somebody stands at the trunk, or spoke of its floor last. */
const ofTrunk = (talk: Talk, { id }: Subject, breath: Breath, entry: Entry): string | undefined => {
  const { trunkAt, lastAt } = talk.inView();
  const isInTrunk = trunkAt + IN_TRUNK > breath.piece.from;
  if (id === "mat") return isInTrunk ? "trunk-lining" : undefined;
  if (id !== "floors") return undefined;
  const isOnlySided = entry.sides.adds.every((add) => add === "left" || add === "right");
  if (isInTrunk && !entry.plural && isOnlySided) return "trunk-floor";
  const isLastFloor = breath.entries.length === 0 && entry.from <= lastAt;
  return isLastFloor && talk.wasLast("trunk.floor") ? "trunk-floor" : undefined;
};

/** What a name means beside such a figure, or in a list of gauges. */
const byFigure = (talk: Talk, { id }: Subject, { numbers }: Breath): string | undefined => {
  const figure = numbers.find(({ unit }) => unit === undefined)?.value ?? 0;
  const isMiles = figure >= LEAST_MILES && !isYear(figure, talk.context.year);
  if (/^(?:clock|speedometer)$/u.test(id) && isMiles) return "odometer";
  if (/^(?:shifts|axle)$/u.test(id) && isRatio(figure, id)) return "axle-ratio";
  return talk.inView().gauges ? GAUGES[id] : undefined;
};

/** "The door's rusty at the bottom, you can poke a finger through it": what was spoken of last still is. */
const keptBy = (
  talk: Talk,
  { id }: Subject,
  { entries, text }: Breath,
  { from: named }: Entry,
): string | undefined => {
  const { compiled } = talk.context;
  if (entries.length > 0 || named > talk.inView().lastAt || !/\b(?:it|that|there)\b/u.test(text))
    return undefined;
  const own = compiled.subjects.get(id)?.items[0];
  return compiled.lexicon.refinements.find(({ from, to }) => {
    const [item] = compiled.subjects.get(to)?.items ?? [];
    return from === id && item !== own && talk.wasLast(item ?? "");
  })?.to;
};

/** The part that is meant by a name, by the car, by where somebody stands and by the words and figures beside it. */
export const refinedSubject = (talk: Talk, subject: Subject, breath: Breath, entry: Entry): Subject => {
  const { compiled } = talk.context;
  const own =
    ofForm(talk, subject, breath, entry) ??
    ofTrunk(talk, subject, breath, entry) ??
    byFigure(talk, subject, breath);
  if (own !== undefined) return compiled.subjects.get(own) ?? subject;
  const text = subject.id === "hoses" ? `${before(talk, breath.piece)} ${breath.text}` : breath.text;
  const found = compiled.lexicon.refinements.find(
    ({ from, words }) => from === subject.id && words.some((word) => hasWords(text, word)),
  );
  const better = compiled.subjects.get(found?.to ?? keptBy(talk, subject, breath, entry) ?? "");
  // A car without such a part has the one that was named.
  return better?.items.some((id) => talk.items.has(id)) === true ? better : subject;
};
