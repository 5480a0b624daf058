import { expandPattern } from "@evenhand/lexicon/expand-pattern";
import { lexiconVersion1 } from "@evenhand/lexicon/lexicon-version-1";
import { tokenize } from "@evenhand/lexicon/tokenize";
import { remembered } from "../remembered/index.ts";

type Sense = (typeof lexiconVersion1.conditions)[number]["senses"][number];

/** A word of condition in a text, what it says, and whether it was denied (`no rust`). */
export type Sensed = {
  readonly senses: readonly Sense[];
  readonly denied: boolean;
  /** Where it ends, in characters; a size stands behind it or before it. */
  readonly start: number;
  readonly end: number;
};

/** What is written in sheets beside what the lexicon knows. No source: the trade's own habits. */
const WRITTEN: readonly (readonly [words: string, ...senses: Sense[]])[] = [
  ["broken; snapped; fractured", { working: "no" }, { fault: "crack" }],
  [
    "no heat; no cold air; no reading; no light; no movement; no response; stays on; blocked; clogged; do not; dont; does not; doesnt; does not hold; will not hold; does not open; will not open; does not close; does not move; does not turn; not holding; not work; does not work; will not work; no power; no sound; no function; snapped (off); one out; bulb out; bulb gone; u s; kaput; not working; no good",
    { working: "no" },
  ],
  ["left/right/front/rear/lh/rh/nearside/offside/both/bulb out; out; blown; u/s; dud", { working: "no" }],
  [
    "worked; all worked; operated; functioned; operating; readily; engages; steady; steady at half; reads normal; reads half; hot; both sweep; sweep; both speed; all speed; both work; all work; spot on; free",
    { working: "yes" },
  ],
  [
    "hangs through; hanging through; glazed; frayed; fraying; fray; threadbare; scuffed through",
    { grade: "heavy-wear" },
  ],
  [
    "bulb dim; dim; slow; weak; works at times; intermittent fault; only on high; only blows on high; one speed only; only one speed; single speed; bounces; jumpy; sometimes; now and then; erratic; lazy",
    { working: "intermittent" },
  ],
  ["surface rust; rust scale; light rust; scabby; scab; crusty", { fault: "corrosion" }],
  ["rust bubbling; bubbling rust; rust bubbles; rust bubbled", { fault: "blister" }],
  ["replated; re plated; rechromed", { grade: "as-new" }, { general: "new" }],
  ["filled", { fault: "filler" }],
  [
    "ineffective; without effect; no effect; defective; faulty; inoperable; nonfunctional; malfunctioning; malfunction; hardly works; barely works; does nothing",
    { working: "no" },
    { general: "bad" },
  ],
  ["inaccurate; not accurate; reads fast; reads slow", { working: "intermittent" }],
  ["insecure; unsound; unserviceable; unusable", { general: "bad" }],
  ["effective", { working: "yes" }],
  ["clear coat; clear lacquer; clear play; clear wear"],
  ["clear", { general: "good" }],
  ["porous", { fault: "crack" }],
  [
    "dry rot; dry rotted; dryrot; dry rotten; weather checking; weather checked; sidewall checking",
    { fault: "crack" },
  ],
  [
    "could not be inspected; could not be seen; could not be reached; could not be examined",
    { unseen: "not-reached" },
  ],
  ["could not be tested; could not be tried", { unseen: "not-tested" }],
  ["screwdriver through; push a screwdriver through", { fault: "perforation" }],
  ["leaky; untight; not tight", { fault: "blow-hole" }],
  ["rust hole; rotten through; holed; hole", { fault: "perforation" }],
  ["soft; swell; puffy; soft swollen", { fault: "swelling" }],
  ["curb rash; kerbed; scuffed", { fault: "scratch" }],
  ["sun faded; bleached; faded paint", { fault: "fading" }],
  ["repaint flaking; peeling; flaking; lacquer peel", { fault: "delamination" }],
  [
    "no play; no leak; ok; okay; pass; good; fine; solid; sound; no rust; rust free; clean",
    { general: "good" },
  ],
];

type Entry = { readonly phrase: readonly string[]; readonly senses: readonly Sense[] };

const entries = (): ReadonlyMap<string, readonly Entry[]> => {
  const byFirst = new Map<string, Entry[]>();
  const add = (words: readonly string[], senses: readonly Sense[]): void => {
    for (const phrase of words.flatMap(expandPattern)) {
      const [first = ""] = phrase;
      byFirst.set(first, [...(byFirst.get(first) ?? []), { phrase, senses }]);
    }
  };
  for (const [words, ...senses] of WRITTEN) add(words.split(";"), senses);
  for (const { words, senses } of lexiconVersion1.conditions) add(words, senses);
  for (const list of byFirst.values()) list.sort((a, b) => b.phrase.length - a.phrase.length);
  return byFirst;
};

let known: ReadonlyMap<string, readonly Entry[]> | undefined;

const NOT = new Set(["no", "not", "non", "without", "never", "nil", "free"]);
/** How many words a denial reaches over: "no visible rust or rot". */
const REACH = 4;

/** A denial ends where a sentence, or "but", begins anew. */
const isDenied = (stems: readonly string[], at: number): boolean => {
  // `Non-functional`
  if (stems[at - 1] === "-" && stems[at - 2] === "non") return true;
  for (let back = at - 1; back >= Math.max(0, at - REACH); back -= 1) {
    const stem = stems[back] ?? "";
    if ([",", ".", ";", "but", "-"].includes(stem)) return false;
    if (NOT.has(stem)) return true;
  }
  return stems[at + 1] === "free";
};

const sense = (text: string): readonly Sensed[] => {
  known ??= entries();
  const tokens = tokenize(text);
  const stems = tokens.map(({ stem }) => stem);
  const found: Sensed[] = [];
  for (let at = 0; at < tokens.length;) {
    const entry = known
      .get(stems[at] ?? "")
      ?.find(({ phrase }) => phrase.every((stem, index) => stem === stems[at + index]));
    if (entry === undefined) {
      at += 1;
      continue;
    }
    const last = tokens[at + entry.phrase.length - 1];
    found.push({
      senses: entry.senses,
      denied: isDenied(stems, at),
      start: tokens[at]?.start ?? 0,
      end: last?.end ?? 0,
    });
    at += entry.phrase.length;
  }
  return found;
};

/**
 * The words of condition in a text, the longest that fit, in order.
 *
 * @example sensedIn("not rusty, cracked").map(({ denied }) => denied) // [true, false]
 */
export const sensedIn: (text: string) => readonly Sensed[] = remembered(sense, 500);

/**
 * Whether a fault or something bad is named.
 *
 * @example namesTrouble("Is the belt cracked?") // true
 */
export const namesTrouble = (text: string): boolean =>
  sensedIn(text).some(
    ({ senses, denied }) =>
      !denied && senses.some((one) => "fault" in one || ("general" in one && one.general === "bad")),
  );

/**
 * Whether something wrong is said, and not denied.
 *
 * @example speaksAgainst("one speed only") // true
 */
export const speaksAgainst = (text: string): boolean =>
  sensedIn(text).some(
    ({ senses, denied }) =>
      !denied &&
      senses.some(
        (one) =>
          "fault" in one ||
          ("working" in one && one.working !== "yes") ||
          ("general" in one && one.general === "bad"),
      ),
  );
