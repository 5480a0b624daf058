import { namesTrouble } from "../sensed-words/index.ts";
import type { Label } from "../label/index.ts";

/** Words of a question that ask for trouble without naming any. */
const TROUBLE =
  /\b(?:damage[sd]?|defects?|faults?|faulty|issues?|problems?|trouble|missing|stays? on|staying on|stuck|dead|seized|jammed|broken|inoperative|excessive|abnormal|unusual)\b|\bany\b.*\bout\b/i;

const ASKS = /\?\s*$|^\s*(?:any|is|are|does|do|has|have|did|was)\b/i;

/**
 * Whether a question asks for what is wrong, so that yes is bad and no is good: `Are any lamps out?`, `Any damage?`.
 *
 * @example asksForFault([labelOf("Does any warning light stay on?")]) // true
 */
export const asksForFault = (labels: readonly Label[]): boolean =>
  labels.some(
    ({ text }) =>
      (TROUBLE.test(text) || (ASKS.test(text) && namesTrouble(text))) &&
      !/\b(?:no|free of|free from|without)\b/i.test(text),
  );
