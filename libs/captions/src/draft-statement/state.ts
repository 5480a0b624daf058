import type { SaidNumber, SaidWord } from "../answer-of/index.ts";
import type { Breath } from "./breath.ts";
import type { Entry } from "./entries.ts";

/** What a talk has come to: what is in view, and what of it may still be said or taken back. */
export type State = {
  /** The next of the stretches that are asides. */
  nextAside: number;
  entries: readonly Entry[];
  /** What was asked was said or denied of the part named last, and the list of such parts may go on. */
  list: { readonly of: Breath; readonly denies: boolean } | undefined;
  /** Something was said of them already. */
  applied: boolean;
  /** They were only named yet, and more names may join them. */
  open: boolean;
  words: readonly SaidWord[];
  /** All that was said of what is in view since it was named. */
  allWords: readonly SaidWord[];
  numbers: readonly SaidNumber[];
  last: readonly string[];
  /** Token at which it was said. */
  lastAt: number;
  side: string | undefined;
  /** The end of the car somebody went to: front or rear. */
  end: string | undefined;
  toldForSentence: boolean;
  hedgeNext: boolean;
  /** A part was just taken out of what was said of many: what it was taken out of, and what is said of it. */
  excepted: { readonly last: readonly string[]; readonly words: readonly SaidWord[] } | undefined;
  sentenceClaims: number;
  /** Where the sentence begins, and what was claimed in it. */
  sentence: { readonly from: number; readonly keys: readonly string[] };
  /** Why nothing is claimed to the end of the sentence, and from which token on. */
  skip: { readonly why: "elsewhere" | "money" | "supposed" | "lore"; readonly from: number } | undefined;
  correcting: boolean;
  /** A row of bare numbers is dealt out over the places of an item. */
  row: { readonly item: string; readonly places: readonly string[]; next: number } | undefined;
  carried: boolean;
  /** The part was led to from what was said of it: "a dent in the roof". */
  wasLed: boolean;
  asked: Breath | undefined;
  /** What was said last was said of a part of another kind than the one that was asked for since. */
  isStale: boolean;
  /** What was asked is what was told of the model, and "they do" is said of the model too. */
  askedOfModel: boolean;
  /** The last that was named as a whole, of which a part may be spoken of: all dials, all lamps. */
  whole: Entry | undefined;
  /** The last question that says something, until something else is said. */
  query: Breath | undefined;
  paint: boolean;
  /** The reading said last. */
  reading: { readonly item: string; readonly unit: string; readonly value: number } | undefined;
  gauges: boolean;
  /** Token at which the engine was started cold. */
  startedAt: number;
  /** Token at which the trunk was named last. */
  trunkAt: number;
  /** What was said of nothing yet: its part or side may follow. */
  pending:
    { readonly words: readonly SaidWord[]; readonly entries: readonly Entry[]; left: number } | undefined;
};

/** Pieces of talk that may stand between what is said and its part. */
export const PENDING = 3;

/** Before the first word. */
export const atFirst = (): State => ({
  nextAside: 0,
  entries: [],
  list: undefined,
  applied: false,
  open: false,
  words: [],
  allWords: [],
  numbers: [],
  last: [],
  lastAt: -Infinity,
  side: undefined,
  end: undefined,
  toldForSentence: false,
  hedgeNext: false,
  excepted: undefined,
  sentenceClaims: 0,
  sentence: { from: 0, keys: [] },
  skip: undefined,
  correcting: false,
  row: undefined,
  carried: false,
  wasLed: false,
  asked: undefined,
  isStale: false,
  askedOfModel: false,
  whole: undefined,
  query: undefined,
  paint: false,
  reading: undefined,
  gauges: false,
  startedAt: -Infinity,
  trunkAt: -Infinity,
  pending: undefined,
});
