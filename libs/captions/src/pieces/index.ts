import type { Mention } from "@evenhand/lexicon/find-mentions";
import type { RepairedToken } from "@evenhand/lexicon/repair";

/** How a piece is joined to the one before it. `start`: a sentence or a turn begins. */
export type Join = "start" | "comma" | "colon" | "and" | "but" | "except" | "inner";

/** The least part of talk that can claim something: tokens `from` up to `to`, and what they speak of. */
export type Piece = {
  readonly from: number;
  readonly to: number;
  readonly join: Join;
  readonly mentions: readonly Mention[];
  /** The sentence it stands in ends as a question. */
  readonly question: boolean;
};

const SENTENCE_ENDS = new Set([".", "?", "!", ";", "…", ">>"]);
const MARKS: Readonly<Record<string, Join>> = {
  ",": "comma",
  ":": "colon",
  "(": "comma",
  ")": "comma",
  "—": "comma",
  "–": "comma",
};
const WORDS: ReadonlyMap<string, Join> = new Map([
  ["and", "and"],
  ["plus", "and"],
  ["but", "but"],
  ["though", "but"],
  ["although", "but"],
  ["otherwise", "but"],
  ["so", "comma"],
  ["because", "comma"],
  ["which", "comma"],
  ["while", "comma"],
  ["then", "comma"],
]);
/** Words that lead from what is said to the part it is said of. */
export const LEADS = new Set(
  "in on at out of from around near to behind below under with for by over inside along across through above beside between into onto off within against during".split(
    " ",
  ),
);

const VERBS =
  /^(?:is|are|was|were|s|has|have|had|do|does|did|it|they|i|we|you|he|she|not|need|look|work|there|that|this|will|can|could)$/u;

/** "All but the clock", "all working but the plate light": what follows is taken out, where it claims nothing itself. */
const isAllBut = (tokens: readonly RepairedToken[], at: number): boolean => {
  const before = tokens.slice(Math.max(0, at - 4), at).map(({ stem }) => stem);
  if (!before.some((stem) => /^(?:all|every|everything|each)$/u.test(stem))) return false;
  for (let next = at + 1; next < Math.min(tokens.length, at + 8); next += 1) {
    const stem = tokens[next]?.stem ?? "";
    if (SENTENCE_ENDS.has(stem) || MARKS[stem] !== undefined) return true;
    if (VERBS.test(stem)) return false;
  }
  return true;
};

const exceptAt = (tokens: readonly RepairedToken[], at: number): number => {
  const [one, two] = [tokens[at]?.stem, tokens[at + 1]?.stem];
  if (one === "except") return two === "for" || two === "that" ? 2 : 1;
  if (one === "but" && isAllBut(tokens, at)) return 1;
  if (one === "bar" && (/^(?:the|one|that|for)$/u.test(two ?? "") || isAllBut(tokens, at))) return 1;
  if (
    one === "with" &&
    two === "the" &&
    tokens[at + 2]?.stem === "exception" &&
    tokens[at + 3]?.stem === "of"
  )
    return 4;
  if (one === "save" && two === "for") return 2;
  if ((one === "apart" || one === "aside") && two === "from") return 2;
  return one === "other" && two === "than" ? 2 : one === "besides" ? 1 : 0;
};

const insideMention = (mentions: readonly Mention[], covered: Uint8Array): void => {
  for (const { from, to } of mentions) for (let at = from + 1; at < to; at += 1) covered[at] = 1;
};

type Cut = { readonly at: number; readonly skip: number; readonly join: Join };

const cutAt = (tokens: readonly RepairedToken[], at: number, turns: ReadonlySet<number>): Cut | undefined => {
  const stem = tokens[at]?.stem ?? "";
  if (SENTENCE_ENDS.has(stem)) return { at, skip: 1, join: "start" };
  if (turns.has(at)) return { at, skip: 0, join: "start" };
  const except = exceptAt(tokens, at);
  if (except > 0) return { at, skip: except, join: "except" };
  const mark = MARKS[stem];
  if (mark !== undefined) return { at, skip: 1, join: mark };
  if (stem === "let" && /^(?:s|me|us|u)$/u.test(tokens[at + 1]?.stem ?? ""))
    return { at, skip: 0, join: "comma" };
  const word = WORDS.get(stem);
  if (
    stem === "so" &&
    /^(?:is|are|do|does|has|have|that|far|on|much|many)$/u.test(tokens[at + 1]?.stem ?? "")
  )
    return undefined;
  return word === undefined ? undefined : { at, skip: 1, join: word };
};

const isAbout = (mention: Mention): boolean => mention.is === "said" || mention.is === "number";
const isPlace = (mention: Mention): boolean =>
  mention.is === "side" && !/^(?:all|both|other|this)$/u.test(mention.side);

/** "Everything else is original": the others begin anew. */
const isRest = (tokens: readonly RepairedToken[], mention: Mention): boolean =>
  mention.is === "side" &&
  mention.side === "other" &&
  /^(?:everything|rest)$/u.test(tokens[mention.from]?.stem ?? "");

/** What may stand between a leading word and the part it leads to. */
const BETWEEN =
  /^(?:the|a|an|my|his|her|its|their|our|your|that|this|these|those|both|all|each|every|s|left|right|front|rear|driver|passenger|nearside|offside|near|off|side|hand|lh|rh|lhs|rhs|of|-|old|little|lower|upper|inner|outer|same|whole|four|two)$/u;

/** Parts there is one of at the back: "pitting on the back bumper"; "hanging down in the back | shocks are …" leads to none. */
const HAS_BACK =
  /^(?:bumper|seat|door|window|panel|wheel|tire|axle|light|glass|end|fender|quarter|floor|bench|arch|screen|carpet|bush|valance|wing|rail|brake|pad|box)$/u;

/** Whether a word that leads to it stands before a mention, with nothing of its own between them. */
const leadsTo = (tokens: readonly RepairedToken[], from: number, to: number): boolean => {
  if (LEADS.has(tokens[to]?.stem ?? "")) return true;
  for (let at = to - 1; at >= from; at -= 1) {
    const stem = tokens[at]?.stem ?? "";
    // "On both sides | floor": a side by itself is whole.
    if (stem === "side" && tokens[at]?.plural === true) return false;
    // "New all around | bushings": that is everywhere, and leads to nothing.
    if (/^(?:around|round|over)$/u.test(stem) && tokens[at - 1]?.stem === "all") return false;
    if (LEADS.has(stem) && stem !== "of") return true;
    if (stem === "of" && !/^(?:both|all|out|free)$/u.test(tokens[at - 1]?.stem ?? "")) return true;
    const isBackOf = stem === "back" && HAS_BACK.test(tokens[at + 1]?.stem ?? "");
    if (!isBackOf && !BETWEEN.test(stem)) return false;
  }
  return false;
};

/** "… one is torn carpets": what follows "is" of a noun is said of that noun; "they're" opens anew. */
const isCopulaOfNoun = (tokens: readonly RepairedToken[], at: number): boolean =>
  /^(?:is|are|s|was|were|look|seem)$/u.test(tokens[at - 1]?.stem ?? "") &&
  !PRONOUN.test(tokens[at - 2]?.stem ?? "");

const PRONOUN = /^(?:it|they|that|she|he|this|these|those|there|them)$/u;

/** What is said of something that a pronoun stands for is done when another part is named. */
const ofPronoun = (tokens: readonly RepairedToken[], from: number, to: number): boolean =>
  tokens.slice(from, to).some(({ stem }) => PRONOUN.test(stem));

/** "It has | its spare", "it doesn't have | a sunroof": what is had belongs to the verb. */
const isOwned = (tokens: readonly RepairedToken[], from: number, to: number): boolean =>
  /^(?:has|have|had|got|get)$/u.test(tokens[from - 1]?.stem ?? "") &&
  tokens.slice(from, to).every(({ stem }) => BETWEEN.test(stem) || /^(?:any|no|got|still|new)$/u.test(stem));

/** "The only thing out is the plate light". */
const isOnlyOne = (tokens: readonly RepairedToken[], said: Mention, { from }: Mention): boolean =>
  tokens[said.from]?.stem === "only" &&
  /^(?:is|are|was|s)$/u.test(tokens[said.to]?.stem ?? "") &&
  tokens.slice(said.to + 1, from).every(({ stem }) => BETWEEN.test(stem));

const MOST_COUNTED = 6;
/** "Put them on last year | wheels are …": so many words say something by themselves. */
const LONG_SAID = 3;

/** "They're bias ply tires": what stands right before a part, where nothing more is said of that part, belongs to it. */
const belongsTo = (
  tokens: readonly RepairedToken[],
  mentions: readonly Mention[],
  said: Mention,
  mention: Mention,
): boolean => {
  if (said.to !== mention.from || (said.is === "number" && LEADS.has(tokens[mention.to]?.stem ?? "")))
    return false;
  const next = mentions.find((one) => one.from >= mention.to && (one.is === "subject" || isAbout(one)));
  if (isCopulaOfNoun(tokens, said.from)) return false;
  // "One key", "two keys": so many of them.
  if (
    said.is === "number" &&
    said.unit === undefined &&
    said.value <= MOST_COUNTED &&
    said.to === mention.from
  )
    return true;
  return (
    !(next !== undefined && isAbout(next) && next.from - mention.to <= 4) &&
    !/^(?:is|are|s|has|have|do|does|did|was|were|will|can|not|work)$/u.test(tokens[mention.to]?.stem ?? "")
  );
};

/** "… doesn't | horn works": what was named is done with where the word before is left hanging. */
const hangs = (tokens: readonly RepairedToken[], at: number): boolean => {
  let before = at - 1;
  while (/^(?:um|uh|er|the|a|my|,)$/u.test(tokens[before]?.stem ?? "")) before -= 1;
  return (
    tokens[before]?.stem === "not" &&
    /^(?:do|does|is|are|has|have|did|was|will|can)$/u.test(tokens[before - 1]?.stem ?? "")
  );
};

/** "There's" opens what is said of something, where something was said before. */
const opensThere = (tokens: readonly RepairedToken[], from: number, to: number): number => {
  for (let at = from; at < to; at += 1)
    if (tokens[at]?.stem === "there" && /^(?:is|are|s|was)$/u.test(tokens[at + 1]?.stem ?? "")) return at;
  return -1;
};

const CLAUSE_BEFORE =
  /^(?:if|when|that|as|way|what|how|where|since|before|after|until|till|once|while|because|think|believe|say|said|guess|hope|know|like|and|but|or|so|than|which|who|the|a|is|are|on|in|of|to|for|with|at)$/u;
const CLAUSE_VERB =
  /^(?:is|are|was|were|has|have|had|do|does|did|will|can|need|start|run|drive|look|feel|go|come|stop|pull|hold|shift|idle|open|close|fire|track|work)$/u;

const opensClause = (pronoun: string, verb: string): boolean =>
  /^(?:we|i)$/u.test(pronoun)
    ? /^(?:put|bought|rebuilt|replaced|had)$/u.test(verb)
    : /^(?:it|they|she|he)$/u.test(pronoun) && CLAUSE_VERB.test(verb);

/** "… does not leak | runs about one eighty". */
const isRunAt = (tokens: readonly RepairedToken[], at: number): boolean =>
  tokens[at]?.stem === "run" && /^(?:at|about|around|right)$/u.test(tokens[at + 1]?.stem ?? "");

const FINITE = /^(?:is|are|was|were|s|has|have|had|do|does|did|got|get|will|can|work|run|need|show|look)$/u;

/** "They got most of the tread | the spare is flat": a part that a verb follows opens a clause, where one with a verb of its own stands before. */
const opensClauseAt = (
  tokens: readonly RepairedToken[],
  { from, to, is }: Mention,
  begun: number,
  said: Mention | undefined,
): number => {
  // "The left one | turn signals work": which one it was belongs to what was said before.
  if (
    tokens[from - 1]?.stem === "one" &&
    /^(?:left|right|front|rear|other)$/u.test(tokens[from - 2]?.stem ?? "")
  )
    return from;
  if (!isFiniteAt(tokens, to)) return -1;
  let at = from;
  // "… at the front | the back's like new": a side by itself has no other before it.
  while (
    at > begun &&
    (is === "side"
      ? /^(?:the|my|its|both|all)$/u.test(tokens[at - 1]?.stem ?? "")
      : isBetween(tokens, at - 1))
  )
    at -= 1;
  const before = tokens[at - 1]?.stem ?? "";
  const isLedTo =
    LEADS.has(before) &&
    // "No play to speak of | rear springs are tired"
    tokens[at - 2]?.stem !== "speak" &&
    (/^(?:of|with|for|by)$/u.test(before) || hasArticle(tokens, at, from));
  // "I have photos of that | front door has a dent"
  const isObject = /^(?:that|it|them)$/u.test(before) && LEADS.has(tokens[at - 2]?.stem ?? "");
  const isHeld = CLAUSE_BEFORE.test(before) && !LEADS.has(before) && !isObject;
  if (at <= begun + 1 || isHeld || isLedTo || FINITE.test(before)) return -1;
  const isSaid = said !== undefined && said.is === "said" && said.to < at;
  return isSaid || tokens.slice(begun, at).some(({ stem }) => FINITE.test(stem)) ? at : -1;
};

/** "The belts are", "belts and hoses are". */
const isFiniteAt = (tokens: readonly RepairedToken[], at: number): boolean =>
  FINITE.test(tokens[at]?.stem ?? "") ||
  // "The heater | i think its valve is stuck": a topic.
  (/^(?:i|we)$/u.test(tokens[at]?.stem ?? "") &&
    !/^(?:four|five|six|eight|\d+)$/u.test(tokens[at - 2]?.stem ?? "") &&
    /^(?:think|put|had|got|reckon|believe|bought|replaced|have)$/u.test(tokens[at + 1]?.stem ?? "")) ||
  (tokens[at]?.stem === "and" &&
    tokens.slice(at + 2, at + 4).some(({ stem }) => /^(?:are|were|have|do)$/u.test(stem)));

/** "Put in | back window has a crack": what leads to a part of its own kind has an article, or a side, behind it. */
const hasArticle = (tokens: readonly RepairedToken[], from: number, to: number): boolean =>
  tokens
    .slice(from, to)
    .some(({ stem }) => /^(?:the|an?|my|its|that|this|your|our|both|all|each|every|s)$/u.test(stem));

const isBetween = (tokens: readonly RepairedToken[], at: number): boolean => {
  const stem = tokens[at]?.stem ?? "";
  if (stem === "one")
    return !/^(?:the|left|right|this|that|other|either|each|every|any|good|same)$/u.test(
      tokens[at - 1]?.stem ?? "",
    );
  if (stem === "s") return isGenitive(tokens, at);
  if (stem === "all") return tokens[at - 1]?.stem !== "at";
  return (BETWEEN.test(stem) || stem === "other") && !/^(?:of|that|two|four)$/u.test(stem);
};

/** "The driver's door": an "s" before a part is a genitive only behind a side. */
const isGenitive = (tokens: readonly RepairedToken[], at: number): boolean =>
  /^(?:driver|passenger)$/u.test(tokens[at - 1]?.stem ?? "");

const isCount = (mention: Mention, part: Mention): boolean =>
  part.is === "subject" &&
  mention.is === "number" &&
  mention.unit === undefined &&
  mention.to === part.from &&
  mention.value <= MOST_COUNTED &&
  mention.value > 1 === part.plural;

/** "… is good | it opens and closes fine": somebody goes on with a new clause, with no mark between. */
const opensWithPronoun = (tokens: readonly RepairedToken[], from: number, to: number): number => {
  for (let at = Math.max(1, from); at < to; at += 1)
    if (
      (opensClause(tokens[at]?.stem ?? "", tokens[at + 1]?.stem ?? "") || isRunAt(tokens, at)) &&
      !CLAUSE_BEFORE.test(tokens[at - 1]?.stem ?? "")
    )
      return at;
  return -1;
};

/** "… repainted some time ago | inside the seat has a cover", "… works | under the hood it is the original": the next scene. */
const opensScene = (tokens: readonly RepairedToken[], from: number, to: number): number => {
  for (let at = Math.max(1, from); at < to; at += 1) {
    const [one, two, three] = [
      tokens[at]?.stem ?? "",
      tokens[at + 1]?.stem ?? "",
      tokens[at + 2]?.stem ?? "",
    ];
    const isUnderHood = one === "under" && two === "the" && /^(?:hood|bonnet|car)$/u.test(three);
    const isInside =
      /^(?:inside|underneath)$/u.test(one) &&
      /^(?:the|it|we|i|there|driver|seat|front|on|you|all)$/u.test(two) &&
      !CLAUSE_BEFORE.test(tokens[at - 1]?.stem ?? "") &&
      !/^(?:rust|rusty|clean|dry|wet|damp)$/u.test(tokens[at - 1]?.stem ?? "");
    if (isUnderHood || isInside) return at;
  }
  return -1;
};

/** "A new starter in it | doesn't smoke at all | doesn't get hot": a verb that denies, with nothing before it that could be denied. */
const opensBare = (
  tokens: readonly RepairedToken[],
  mentions: readonly Mention[],
  { from, to }: Mention,
): number => {
  for (let at = Math.max(1, from - 1); at < to; at += 1) {
    if (!/^(?:do|does)$/u.test(tokens[at]?.stem ?? "") || tokens[at + 1]?.stem !== "not") continue;
    const [before, lead] = [tokens[at - 1]?.stem ?? "", tokens[at - 2]?.stem ?? ""];
    const isNamed = mentions.some((one) => one.is !== "said" && one.from < at && one.to >= at);
    const isObject = /^(?:it|them|that)$/u.test(before) && LEADS.has(lead);
    const isAll = before === "all" && lead === "at";
    if (!isNamed && (isObject || isAll)) return at;
  }
  return -1;
};

/** Where, between what was said and what follows, something new begins; the last place of several, −1 where none does. */
const opensAnew = (tokens: readonly RepairedToken[], from: number, to: number): number =>
  Math.max(opensThere(tokens, from, to), opensWithPronoun(tokens, from, to), opensScene(tokens, from, to));

/** "On the driver's side | left front fender": a second left or right belongs to what follows. */
const isAnotherSide = (tokens: readonly RepairedToken[], mention: Mention): boolean =>
  mention.is === "side" &&
  mention.adds.some((add) => /^(?:left|right|driver|passenger)$/u.test(add)) &&
  tokens[mention.from - 1]?.stem === "side";

/** "New seats | new carpet | new headliner": the same word again opens the next of a list. */
const repeats = (tokens: readonly RepairedToken[], mentions: readonly Mention[], at: number): number => {
  const mention = mentions[at];
  if (mention?.is !== "subject") return -1;
  const own = mentions.findLast((one) => one.is === "said" && one.to === mention.from);
  if (own === undefined || own.to - own.from !== 1) return -1;
  const stem = tokens[own.from]?.stem;
  if (
    !/^(?:new|original|fresh|nice|good|rebuilt|replaced)$/u.test(stem ?? "") ||
    /^(?:is|are|s|was|were|look)$/u.test(tokens[own.from - 1]?.stem ?? "")
  )
    return -1;
  const named = mentions.slice(0, at).findLast((one) => one.is === "subject" && one.to <= own.from);
  return named !== undefined &&
    mentions.some((one) => one.is === "said" && one.to === named.from && tokens[one.from]?.stem === stem)
    ? own.from
    : -1;
};

/** "All but the left taillight | wipers work": a name that no "and" joins to the one that was taken out. */
const isUnjoined = (tokens: readonly RepairedToken[], { from }: Mention): boolean =>
  !/^(?:and|or|nor|,|the|in|on|of|for|at|plus)$/u.test(tokens[from - 1]?.stem ?? "");

/** "… stone chips | no rust in the rockers": a denial that leads to its own part opens anew. */
const deniesAnew = (
  tokens: readonly RepairedToken[],
  [mention, ...later]: readonly Mention[],
  about: readonly Mention[],
): number => {
  if (mention === undefined || about.length === 0) return -1;
  const from =
    tokens[mention.from]?.stem === "no"
      ? mention.from
      : /^(?:no|little|slight|small|tiny|minor)$/u.test(tokens[mention.from - 1]?.stem ?? "")
        ? mention.from - (/^(?:a|very)$/u.test(tokens[mention.from - 2]?.stem ?? "") ? 2 : 1)
        : -1;
  const part = later.find(({ is }) => is === "subject");
  return from >= 0 && part !== undefined && part.from >= mention.to && leadsTo(tokens, mention.to, part.from)
    ? from
    : -1;
};

/**
 * Where, within a piece, somebody begins to speak of something else: a part after what was said of another, with no word that leads to
 * it; or a side after what was said of the other.
 */
const innerCuts = (
  tokens: readonly RepairedToken[],
  mentions: readonly Mention[],
  from: number,
  join: Join,
): number[] => {
  const cuts: number[] = [];
  let about: Mention[] = [];
  let named: Mention | undefined;
  let isComplete = false;
  const isContinued = join === "and" || join === "but";
  for (const [index, mention] of mentions.entries()) {
    if (isAbout(mention)) {
      if (opensThere(tokens, mention.from, mention.from + 1) >= 0) continue;
      const anew = named === undefined ? -1 : deniesAnew(tokens, mentions.slice(index), about);
      if (anew > (cuts.at(-1) ?? from)) {
        cuts.push(anew);
        about = [];
        named = undefined;
        isComplete = false;
      }
      const before = lastBefore(about, mention.from);
      const bare = about.length > 0 ? opensBare(tokens, mentions, mention) : -1;
      const runs = about.length > 0 && isRunAt(tokens, mention.from) && mention.from > (cuts.at(-1) ?? from);
      const there =
        bare >= 0
          ? bare
          : runs
            ? mention.from
            : before === undefined
              ? -1
              : opensAnew(tokens, before.to, mention.from);
      if (there > (cuts.at(-1) ?? from)) {
        cuts.push(there);
        about = [];
        named = undefined;
        isComplete = false;
      }
      about.push(mention);
      continue;
    }
    if (mention.is !== "subject" && !isPlace(mention) && !isRest(tokens, mention)) continue;
    // "Original paint" says of the hood what it says, and names no paint anew.
    if (
      mention.is === "subject" &&
      named !== undefined &&
      about.some((one) => one.is === "said" && one.from < mention.from && one.to >= mention.to)
    )
      continue;
    const begun = cuts.at(-1) ?? from;
    const clause =
      mention.is === "subject" || isPlace(mention)
        ? opensClauseAt(tokens, mention, begun, lastBefore(about, mention.from))
        : -1;
    if (clause > begun) {
      cuts.push(clause);
      about = about.filter((one) => one.from >= clause);
      named = mention;
      isComplete = false;
      continue;
    }
    const last = lastBefore(about, mention.from);
    const counted =
      last !== undefined &&
      isCount(last, mention) &&
      !about.some((one) => one.is === "number" && one.to === last.from)
        ? last
        : undefined;
    // "The headlights are good | one tail light is out": the number counts what follows.
    const said =
      counted === undefined
        ? last
        : lastBefore(
            about.filter((one) => one !== counted),
            mention.from,
          );
    const isDone =
      isComplete ||
      (said !== undefined &&
        (named === undefined
          ? ofPronoun(tokens, begun, said.from) ||
            (join === "comma" &&
              begun === from &&
              said.is === "said" &&
              said.to - said.from >= LONG_SAID &&
              said.from <= from + 1) ||
            (isContinued && begun === from && said.to < mention.from) ||
            (tokens[begun]?.stem === "no" && said.to - begun > 1)
          : said.to > named.from ||
            (said.to === named.from &&
              named.is === "subject" &&
              mention.is === "subject" &&
              isUnjoined(tokens, mention))));
    const after = said?.to ?? begun + 1;
    const there = isDone ? opensAnew(tokens, after, mention.from) : -1;
    const goesOn =
      said !== undefined &&
      ((leadsTo(tokens, said.to, counted?.from ?? mention.from) && !isAnotherSide(tokens, mention)) ||
        isOwned(tokens, said.to, mention.from) ||
        isOnlyOne(tokens, said, mention) ||
        (mention.is === "subject" && belongsTo(tokens, mentions.slice(index), said, mention)));
    const isOther =
      mention.is === "subject" &&
      isComplete &&
      /^(?:or|nor)$/u.test(tokens[beforeOpening(tokens, mention.from) - 1]?.stem ?? "");
    const isHanging =
      named !== undefined &&
      (hangs(tokens, mention.from) ||
        (join === "except" &&
          mention.is === "subject" &&
          named.is === "subject" &&
          isUnjoined(tokens, mention)));
    const again = repeats(tokens, mentions, index);
    const cut =
      again > begun
        ? again
        : there >= 0
          ? there
          : isHanging || (isDone && !goesOn && !isOther)
            ? cutBefore(tokens, mentions, counted ?? mention, said)
            : -1;
    if (cut > begun) {
      cuts.push(cut);
      about = about.filter((one) => one.from >= cut);
      isComplete = false;
    }
    if (mention.is === "subject") {
      const led = lastBefore(about, mention.from);
      const isDenied = tokens[mention.from - 1]?.stem === "no" && !isListedOn(tokens, mentions[index + 1]);
      isComplete = isDenied || (led !== undefined && leadsTo(tokens, led.to, mention.from));
      named = mention;
    } else if (cut > begun || (named === undefined && about.length === 0)) named = mention;
  }
  return cuts;
};

/** "No radio or heater": the list of what is not there goes on. */
const isListedOn = (tokens: readonly RepairedToken[], next: Mention | undefined): boolean =>
  next !== undefined && /^(?:or|nor|and|,|no)$/u.test(tokens[next.from - 1]?.stem ?? "");

const beforeOpening = (tokens: readonly RepairedToken[], from: number): number => {
  let at = from;
  while (at > 0 && opens(tokens, at - 1)) at -= 1;
  return at;
};

const lastBefore = (about: readonly Mention[], at: number): Mention | undefined =>
  about.reduce<Mention | undefined>(
    (last, one) => (one.to <= at && (last === undefined || one.to >= last.to) ? one : last),
    undefined,
  );

const opens = (tokens: readonly RepairedToken[], at: number): boolean => {
  const stem = tokens[at]?.stem ?? "";
  if (stem === "not")
    return !/^(?:do|does|is|are|has|have|did|was|will|can)$/u.test(tokens[at - 1]?.stem ?? "");
  return /^(?:the|a|an|no|all|both|my|his|her|their|its|our|every|each|that|this|and)$/u.test(stem);
};

/** Before the words that belong to what follows: "no", "the", "both", and what lies over it ("no smoke"). */
const cutBefore = (
  tokens: readonly RepairedToken[],
  mentions: readonly Mention[],
  mention: Mention,
  said: Mention | undefined,
): number => {
  const over = mentions
    .filter((one) => one !== said && one.from < mention.from && one.to > mention.from)
    .map(({ from }) => from);
  let at = Math.min(mention.from, ...over);
  const least = said?.to ?? 0;
  while (at > least && opens(tokens, at - 1)) at -= 1;
  return at;
};

const questionOf = (tokens: readonly RepairedToken[], from: number): boolean => {
  for (let at = from; at < tokens.length; at += 1) {
    const stem = tokens[at]?.stem ?? "";
    if (SENTENCE_ENDS.has(stem)) return stem === "?";
  }
  return false;
};

const strongest = (a: Join, b: Join): Join => (a === "start" ? a : b);

/** "Dry. Apart from the front one, that is leaking": taken out of what was said before, and of nothing that follows. */
const isLateExcept = (tokens: readonly RepairedToken[], { at, skip, join }: Cut): boolean => {
  if (join !== "except") return false;
  for (let next = at + skip; next < tokens.length; next += 1) {
    const stem = tokens[next]?.stem ?? "";
    if (SENTENCE_ENDS.has(stem)) return true;
    if (stem === ",") return /^(?:that|which|it|they|those)$/u.test(tokens[next + 1]?.stem ?? "");
  }
  return true;
};

const tooLong = (from: number, at: number): Cut | undefined =>
  at - from >= MOST_TOKENS ? { at, skip: 0, join: "inner" } : undefined;

/** Talk without a mark or joining word is cut after so many words, so that no piece grows with the file. */
const MOST_TOKENS = 120;

/**
 * Cuts talk into pieces: at the ends of sentences and turns, at commas and joining words, and where somebody goes on to another part without
 * any of these, as in captions without punctuation.
 *
 * @param turns tokens with which somebody else begins to speak
 */
export const piecesOf = (
  tokens: readonly RepairedToken[],
  mentions: readonly Mention[],
  turns: ReadonlySet<number>,
): Piece[] => {
  const covered = new Uint8Array(tokens.length + 1);
  insideMention(mentions, covered);
  const pieces: Piece[] = [];
  let from = 0;
  let join: Join = "start";
  let nextMention = 0;
  const close = (to: number): void => {
    const within: Mention[] = [];
    while (nextMention < mentions.length && (mentions[nextMention]?.from ?? Infinity) < to) {
      const mention = mentions[nextMention];
      if (mention !== undefined && mention.from >= from) within.push(mention);
      nextMention += 1;
    }
    if (to <= from) return;
    const question =
      join === "start" || join === "except" ? questionOf(tokens, from) : (pieces.at(-1)?.question ?? false);
    const cuts = [...innerCuts(tokens, within, from, join), to];
    let start = from;
    for (const cut of cuts) {
      if (cut <= start) continue;
      const begin = start;
      const part = within.filter((mention) => mention.from >= begin && mention.from < cut);
      pieces.push({ from: start, to: cut, join: start === from ? join : "inner", mentions: part, question });
      start = cut;
    }
  };
  for (let at = 0; at <= tokens.length; at += 1) {
    const cut =
      at === tokens.length
        ? { at, skip: 0, join: "start" as const }
        : covered[at] === 1
          ? undefined
          : (cutAt(tokens, at, turns) ?? tooLong(from, at));
    if (cut === undefined || (cut.skip === 0 && at === from && at < tokens.length)) continue;
    close(at);
    // An end of a sentence outweighs the comma or "and" right before it.
    join = at > from || isLateExcept(tokens, cut) ? cut.join : strongest(join, cut.join);
    from = at + cut.skip;
    at += Math.max(0, cut.skip - 1);
  }
  return pieces;
};
