import type { Finding } from "@evenhand/shared/finding";
import type { Judgment } from "../judgment/index.ts";
import { inOneShape, SEEN_SOUND } from "../judgment/index.ts";
import { isClaim } from "../silence/index.ts";

const BOTH = inOneShape({
  outcome: "agree",
  reason: "not-fitted-by-both",
  direction: "neither",
  standing: "confirmed",
  marks: ["not-fitted"],
});
const SEEN_NONE = inOneShape({ ...SEEN_SOUND, reason: "seen-not-fitted", marks: ["not-fitted"] });
const STATED_NONE = inOneShape({
  outcome: "unseen",
  reason: "stated-not-inspected",
  direction: "neither",
  standing: "unseen",
});

const NOT_FITTED_FOUND = inOneShape({
  outcome: "differ",
  reason: "not-fitted-found",
  direction: "stated-better",
  standing: "differs",
});
const FITTED_FOUND = inOneShape({
  outcome: "differ",
  reason: "fitted-found",
  direction: "neither",
  standing: "differs",
});

const lacks = (finding: Finding | undefined): boolean => finding?.answer.kind === "not-fitted";

/**
 * What is to be said where one side at least says that the car has no such thing. Both: agree. The inspector alone: nobody is to be
 * asked for it any more, and a claim that it works differs. The statement alone: differ where it is there, unseen where nobody
 * looked.
 *
 * @returns `undefined` where neither says so
 */
export const compareFitted = (a: Finding | undefined, b: Finding | undefined): Judgment | undefined => {
  const [lacksA, lacksB] = [lacks(a), lacks(b)];
  if (!lacksA && !lacksB) return undefined;
  if (lacksA && lacksB) return BOTH;
  if (lacksB) {
    return isClaim(a) ? NOT_FITTED_FOUND : SEEN_NONE;
  }
  return isClaim(b) ? FITTED_FOUND : STATED_NONE;
};
