import type { Answer } from "@evenhand/shared/answer";
import type { Firmness } from "@evenhand/shared/finding";

/** One thing a walkaround claims. Nothing of it is a statement before a person confirms it. */
export type Remark = {
  readonly item: string;
  readonly position: string;
  readonly answer: Answer;
  readonly firmness: Firmness;
  /** Second of the file at which it begins. */
  readonly second: number;
  /** Characters of the spoken text it came from, and those words. */
  readonly start: number;
  readonly end: number;
  readonly words: string;
  /** 0–1; less where a word was put right, and where part or side were taken from what was in view. */
  readonly confidence: number;
  /** The part or its side was not named, and is the one last in view. */
  readonly inferred: boolean;
  /** Words that were misheard, as they were heard. */
  readonly heard: readonly string[];
};

/** Seconds within which the same place is spoken of in one breath, so that the later word is meant. */
const TAKEN_BACK_WITHIN = 12;

const kindsOf = (answer: Extract<Answer, { kind: "faults" }>): ReadonlySet<string> =>
  new Set(answer.found.map(({ kind }) => kind));

/** What is said of a place a second time: faults add up, a correction or a new word replaces, and a general word leaves a particular one. */
export const joined = (
  before: Remark | undefined,
  now: Remark,
  correcting: boolean,
  places: number,
): Remark => {
  if (before === undefined) return now;
  const [a, b] = [before.answer, now.answer];
  if (a.kind === "faults" && b.kind === "faults") {
    if (b.denied === "all" && b.found.length === 0) return before;
    const earlier = a.denied === "all" ? [] : a.denied;
    const later = b.denied === "all" ? [] : b.denied;
    const here = kindsOf(b);
    const takesBack = correcting || (places === 1 && now.second - before.second <= TAKEN_BACK_WITHIN);
    const there = kindsOf(a);
    const found = [
      ...a.found.filter(({ kind }) => !here.has(kind) && !(takesBack && later.includes(kind))),
      ...b.found,
    ];
    const denied = [
      ...new Set([
        ...earlier.filter((kind) => !here.has(kind)),
        ...later.filter((kind) => takesBack || !there.has(kind)),
      ]),
    ];
    return {
      ...now,
      second: before.second,
      answer: {
        kind: "faults",
        found,
        denied: found.length === 0 && denied.length === 0 ? b.denied : denied,
      },
    };
  }
  // "It is a bit weak, it will hold on the flat"
  if (
    a.kind === "working" &&
    b.kind === "working" &&
    !correcting &&
    a.value === "intermittent" &&
    b.value === "yes"
  )
    return before;
  // "The carpet is new, it looks good": praise leaves that it is new.
  if (
    a.kind === "grade" &&
    b.kind === "grade" &&
    !correcting &&
    a.value === "as-new" &&
    ["light-wear", "even-wear"].some((one) => one === b.value) &&
    !/wear|worn|used/iu.test(now.words)
  )
    return before;
  const isGeneral = places > 2 && !correcting && now.second - before.second > 0;
  return isGeneral && JSON.stringify(a) !== JSON.stringify(b) ? before : now;
};
