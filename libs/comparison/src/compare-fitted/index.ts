import type { Finding } from "@evenhand/shared/finding";
import type { Judgment } from "../judgment/index.ts";
import { SEEN_SOUND } from "../judgment/index.ts";
import { isClaim } from "../silence/index.ts";

const BOTH: Judgment = {
  outcome: "agree",
  reason: "not-fitted-by-both",
  direction: "neither",
  standing: "confirmed",
  marks: ["not-fitted"],
};
const SEEN_NONE: Judgment = { ...SEEN_SOUND, reason: "seen-not-fitted", marks: ["not-fitted"] };
const STATED_NONE: Judgment = {
  outcome: "unseen",
  reason: "stated-not-inspected",
  direction: "neither",
  standing: "unseen",
};

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
    return isClaim(a)
      ? { outcome: "differ", reason: "not-fitted-found", direction: "stated-better", standing: "differs" }
      : SEEN_NONE;
  }
  return isClaim(b)
    ? { outcome: "differ", reason: "fitted-found", direction: "neither", standing: "differs" }
    : STATED_NONE;
};
