import type { Mention } from "@evenhand/lexicon/find-mentions";
import type { RepairedToken } from "@evenhand/lexicon/repair";
import { stemAt } from "@evenhand/lexicon/token-text";
import { HEARD_OR_SUPPOSED } from "./heard-or-supposed.ts";

type Tokens = readonly RepairedToken[];

/** A word of condition by itself, and the words beside it, that together say nothing of a part. */
type Rule = {
  readonly said: RegExp;
  readonly before?: RegExp;
  readonly after?: RegExp;
  /** It may stand in a longer phrase that begins with it. */
  readonly leads?: true;
};

const RULES: readonly Rule[] = [
  { said: /^scratch$/u, after: /^that$/u, leads: true },
  // "The good stuff", "a nice bit of road": praise of no part.
  {
    said: /^(?:good|nice|lovely|great|fine|bad|beautiful|perfect|decent)$/u,
    after:
      /^(?:stuff|thing|idea|question|news|time|deal|luck|point|life|home|reason|while|look|many|friend|day|morning|evening|road|way|price|name|place|company|people|folk|guy|man|woman|weather|job|fit|one for)$/u,
  },
  {
    said: /^(?:walk|march)$/u,
    after: /^(?:around|you|u|through|over|back|away|round|to|up|down|past)$/u,
    leads: true,
  },
  // "Second turn": of the key, and nothing turns.
  { said: /^turn$/u, before: /^(?:first|second|third|half|quarter|one|each|every)$/u },
  { said: /^covered$/u, after: /^(?:with|in|by)$/u },
  { said: /^drip$/u, after: /^(?:tray|pan|rail|channel|mat|tin)$/u, leads: true },
  // "Must be changed" is not done yet.
  {
    said: /^(?:changed|replaced|renewed|rebuilt|recovered|redone|overhauled|refinished|repainted|painted|restored|repaired|fixed)$/u,
    before: /^(?:be|being)$/u,
  },
  // "When you brake hard": how, and no pedal.
  {
    said: /^hard$/u,
    before: /^(?:brake|push|press|pull|stop|step|accelerate|turn|corner|drive|driven|run|down)$/u,
  },
  { said: /^bodywork$/u },
  // "Hard to tell."
  { said: /^hard$/u, after: /^to$/u },
  // "That's just mud": dirt, and no filler.
  { said: /^mud$/u, before: /^(?:s|is|just|only|dried|dry|road|wet)$/u },
  { said: /^filler$/u, after: /^(?:cap|neck|hole|tube|door|flap|pipe)$/u, leads: true },
  { said: /^straight$/u, after: /^(?:four|six|eight|twelve|4|6|8)$/u, leads: true },
  { said: /^(?:ticking|tick)$/u, after: /^over$/u, leads: true },
  { said: /^run$/u, after: /^(?:at|about|around)$/u, leads: true },
  { said: /^none$/u, after: /^of$/u },
  { said: /^spot$/u, before: /^(?:oil|wet|damp|a|dark|of)$/u, after: /^on$/u, leads: true },
];

const byRule = (tokens: Tokens, { from, to }: Mention): boolean =>
  RULES.some(
    ({ said, before, after, leads }) =>
      said.test(stemAt(tokens, from)) &&
      (leads === true || to === from + 1) &&
      (before?.test(stemAt(tokens, from - 1)) ?? true) &&
      (after?.test(stemAt(tokens, from + 1)) ?? true),
  );

const HARMED =
  /^(?:pitted|cracked|rusted|dented|dinged|scratched|faded|chipped|torn|worn|stained|split|bent|scraped|scuffed|curbed|rotted|beat|beaten|chewed|leak|rusty|rust)$|(?:ed|ing)$/u;

/** "Pitted up pretty good", "cracked real bad", "rusted that bad": how much, and no grade of its own. */
const isDegreeBehind = (tokens: Tokens, { from, to }: Mention): boolean => {
  const at = stemAt(tokens, from) === "pretty" && to === from + 2 ? from + 1 : from;
  const stem = stemAt(tokens, at);
  if (at === from && to !== from + 1) return false;
  const much = stem === "bad" ? /^(?:pretty|real|really|so|that|quite|too|a)$/u : /^(?:pretty|real|really)$/u;
  if (!/^(?:bad|good|well)$/u.test(stem)) return false;
  const isGraded = much.test(stemAt(tokens, at - 1));
  if (!isGraded && stem !== "bad") return false;
  const before = isGraded ? at - 2 : at - 1;
  return HARMED.test(stemAt(tokens, stemAt(tokens, before) === "up" ? before - 1 : before));
};

const SIZED =
  /^(?:dent|ding|scratch|scrape|scuff|crack|chip|gouge|hole|crease|tear|rip|split|leak|drip|whack|knock|chunk|bump|dip|puddle|spot|size|sized)$/u;
const MUCH = /^(?:bit|amount|deal|few|couple|lot)$/u;

/** "A pretty good dent", "a decent crack", "a fair amount of rust": how large, and no praise. */
const isSizeOf = (tokens: Tokens, { from, to }: Mention): boolean => {
  const last = stemAt(tokens, to - 1);
  if (!/^(?:good|nice|decent|fair|great|fine|lovely|beautiful|healthy)$/u.test(last)) return false;
  const isArticled = tokens
    .slice(Math.max(0, from - 2), to)
    .some(({ stem }) => /^(?:a|an|one|some)$/u.test(stem));
  const next = /^(?:little|old|big|long|deep)$/u.test(stemAt(tokens, to)) ? to + 1 : to;
  const named = stemAt(tokens, next);
  return isArticled && (SIZED.test(named) || (MUCH.test(named) && /^(?:good|decent|fair)$/u.test(last)));
};

const AS_GOOD =
  /^(?:new|original|correct|reproduction|better|same|right|proper|factory|nice|good|fresh|nos)$/u;
const MOST_WITH = 5;

/** "Replaced with a rubber mat": by something of another kind, and not by a new one. */
const isByAnother = (tokens: Tokens, { from, to }: Mention): boolean =>
  /^(?:replaced|changed|swapped)$/u.test(stemAt(tokens, to - 1)) &&
  to - from <= 2 &&
  /^(?:with|by)$/u.test(stemAt(tokens, to)) &&
  /^an?$/u.test(stemAt(tokens, to + 1)) &&
  !tokens.slice(to + 1, to + MOST_WITH).some(({ stem }) => AS_GOOD.test(stem));

const ENDS = /^[.?!;]$/u;
/** "Had some rust in it and that was cut out and replaced". */
const CUT_OUT = /^(?:cut|welded|replaced|repaired|fixed|sorted|removed|treated)$/u;

const WAS_BAD =
  /^(?:rusty|rusted|rust|rotten|rotted|cracked|torn|ripped|bent|broken|dead|worn|leak|leaking|bad|shot|gone|dented|pitted|faded|perished|split|finished|dry|noisy|weak|seized|stuck|blown)$/u;
const PUT_RIGHT =
  /^(?:changed|replaced|replace|fixed|fix|repaired|rebuilt|renewed|redone|new|sorted|swapped|recovered|restored|welded|bought|now)$/u;
/** Tokens to either side within which what was wrong is told to have been put right. */
const NEAR = 14;

/** "I changed it, it was too rusty", "it was torn so I had it recovered": what was wrong is not so any more. */
const isPutRight = (tokens: Tokens, { from, to }: Mention): boolean => {
  if (!WAS_BAD.test(stemAt(tokens, from)) || to > from + 2) return false;
  let at = from - 1;
  while (
    /^(?:too|so|pretty|very|really|all|quite|completely|a|bit|getting|badly|totally|just)$/u.test(
      stemAt(tokens, at),
    )
  )
    at -= 1;
  if (/^(?:had)$/u.test(stemAt(tokens, stemAt(tokens, at) === "some" ? at - 1 : at)))
    return tokens
      .slice(to, to + NEAR)
      .some(
        ({ stem }, index, all) =>
          /^(?:was|were|been)$/u.test(stem) && CUT_OUT.test(all[index + 1]?.stem ?? ""),
      );
  if (!/^(?:was|were)$/u.test(stemAt(tokens, at))) return false;
  for (const step of [-1, 1])
    for (let next = step < 0 ? at : to, count = 0; count < NEAR; next += step, count += 1) {
      const stem = stemAt(tokens, next);
      if (stem === "" || ENDS.test(stem)) break;
      if (PUT_RIGHT.test(stem)) return true;
    }
  return false;
};

/** "Nothing to crack"; "starting to crack" does. */
const isToFail = (tokens: Tokens, { from }: Mention): boolean =>
  /^(?:crack|rust|leak|chip|fade|tear)$/u.test(stemAt(tokens, from)) &&
  stemAt(tokens, from - 1) === "to" &&
  !/^(?:start|starting|started|begin|beginning|begun|began)$/u.test(stemAt(tokens, from - 2));

/** Tokens of "a bit", "slightly", at the head of what follows. */
const degreeLength = (stem: string): number => {
  if (stem === "a") return 2;
  return /^(?:slightly|somewhat|little)$/u.test(stem) ? 1 : 0;
};

/** "Reads a bit low": it moves, and wrongly. */
const isReadOff = (tokens: Tokens, { from, to }: Mention): boolean =>
  stemAt(tokens, from) === "read" &&
  to === from + 1 &&
  /^(?:low|high|wrong|off)$/u.test(stemAt(tokens, to + degreeLength(stemAt(tokens, to))));

/** "Work on it", "working on it"; "everything works on it" does. */
const isWorkOn = (tokens: Tokens, { from, to }: Mention): boolean =>
  /^work(?:ing)?$/u.test(stemAt(tokens, from)) &&
  to === from + 1 &&
  stemAt(tokens, to) === "on" &&
  !(tokens[from]?.plural === true && /^(?:it|everything|this|the)$/u.test(stemAt(tokens, to + 1)));

/** "It was new when he did the car": it is not any more. */
const wasNew = (tokens: Tokens, { from, to }: Mention): boolean =>
  stemAt(tokens, to - 1) === "new" &&
  /^(?:was|were)$/u.test(stemAt(tokens, from - 1)) &&
  /^(?:when|then|once|back)$/u.test(stemAt(tokens, to));

/** "All four doors close nice and solid": how they close. */
const isHowItCloses = (tokens: Tokens, { from, to }: Mention): boolean =>
  /^(?:solid|tight|firm)$/u.test(stemAt(tokens, from)) &&
  to === from + 1 &&
  tokens
    .slice(Math.max(0, from - 4), from)
    .some(({ stem }) => /^(?:close|shut|closing|shutting|latch|thunk)$/u.test(stem)) &&
  !tokens.slice(Math.max(0, from - 4), from).some(({ stem }) => /^(?:is|are|s)$/u.test(stem));

/** "Until it warms up": when, and not that anything works. */
const isWarmingUp = (tokens: Tokens, { from }: Mention): boolean =>
  stemAt(tokens, from) === "warm" &&
  stemAt(tokens, from + 1) === "up" &&
  tokens
    .slice(Math.max(0, from - 4), from)
    .some(({ stem }) => /^(?:until|till|when|once|after|before|while|if)$/u.test(stem));

/** "It doesn't have any cracks": what it has not stands behind, and nothing is said not to be fitted. */
const isOfWhatFollows = (tokens: Tokens, { from, to }: Mention): boolean =>
  to - from > 1 &&
  (stemAt(tokens, to - 1) === "any" ||
    (/^(?:have|got)$/u.test(stemAt(tokens, to - 1)) && /^(?:any|a|an)$/u.test(stemAt(tokens, to)))) &&
  /^(?:do|does|did|has|have)$/u.test(stemAt(tokens, from)) &&
  tokens[to]?.kind === "word" &&
  !/^(?:and|but|or|so|yet|either|now|at|in|on|anymore|it|the|i|we|which|because|though)$/u.test(
    stemAt(tokens, to),
  );

/** "The hood was repainted because of a rock chip": why it was done. */
const isWhy = (tokens: Tokens, { from }: Mention): boolean => {
  let at = from - 1;
  while (/^(?:a|an|the|some|little|small|big|few|couple|of|bad|rock|stone|that)$/u.test(stemAt(tokens, at)))
    at -= 1;
  const isLed =
    stemAt(tokens, at) === "because" || (stemAt(tokens, at) === "to" && stemAt(tokens, at - 1) === "due");
  return (
    isLed &&
    tokens
      .slice(Math.max(0, at - NEAR), at)
      .some(
        ({ stem }) => PUT_RIGHT.test(stem) || /^(?:painted|repainted|resprayed|refinished|done)$/u.test(stem),
      )
  );
};

/** "It needs new tires": what it has not yet. */
const isNeeded = (tokens: Tokens, { from, to }: Mention): boolean => {
  if (stemAt(tokens, to - 1) !== "new" || to > from + 2) return false;
  let at = from - 1;
  while (/^(?:a|an|some|all|set|of|four|two|the|couple|pair|brand)$/u.test(stemAt(tokens, at))) at -= 1;
  return (
    /^(?:need|want|deserve|require|order|ordered)$/u.test(stemAt(tokens, at)) ||
    (/^(?:use|for)$/u.test(stemAt(tokens, at)) &&
      /^(?:could|due|ready|time|looking)$/u.test(stemAt(tokens, at - 1)))
  );
};

/** "She sounds mean": the verb, and no sound metal. */
const isVerbSound = (tokens: Tokens, { from, to }: Mention): boolean =>
  stemAt(tokens, from) === "sound" && tokens[from]?.plural === true && to === from + 1;

/** "Done in 1999" is when; "been done in" is worn. */
const isDoneIn = (tokens: Tokens, { from }: Mention): boolean =>
  stemAt(tokens, from) === "done" &&
  stemAt(tokens, from + 1) === "in" &&
  /^\d|^(?:twenty|nineteen|the)/u.test(stemAt(tokens, from + 2));

/** "He always kept the dash covered": looked after, and not out of sight. */
const isKeptCovered = (tokens: Tokens, { from }: Mention): boolean =>
  stemAt(tokens, from) === "covered" &&
  tokens.slice(Math.max(0, from - 4), from).some(({ stem }) => /^(?:keep|kept|always|stored)$/u.test(stem));

const CHECKS = [
  ...HEARD_OR_SUPPOSED,
  byRule,
  isVerbSound,
  isNeeded,
  isOfWhatFollows,
  isWhy,
  isWarmingUp,
  isHowItCloses,
  wasNew,
  isWorkOn,
  isReadOff,
  isToFail,
  isDegreeBehind,
  isSizeOf,
  isByAnother,
  isPutRight,
  isDoneIn,
  isKeptCovered,
];

/**
 * Whether a word of condition says nothing of any part where it stands: "scratch that" takes something back, "a pretty good dent" tells
 * how large it is, "it was rusty so I replaced it" what is not so any more.
 */
export const isNotSaid = (tokens: Tokens, mention: Mention): boolean =>
  mention.is === "said" && CHECKS.some((check) => check(tokens, mention));
