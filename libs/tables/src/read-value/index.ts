import type { Firmness } from "@evenhand/shared/finding";
import { outcomeOf } from "../outcome-words/index.ts";
import { speaksAgainst } from "../sensed-words/index.ts";
import type { Outcome } from "../outcome-words/index.ts";
import { isNumeric, numbersOf } from "./numbers.ts";
import { withoutShorthand } from "./shorthand.ts";
import type { Numbers, Writing } from "./numbers.ts";

/** What a cell says, taken apart as far as it can be without knowing of what. */
export type Value = {
  /** Without what stood in brackets. */
  readonly text: string;
  readonly remark?: string;
  readonly outcome?: Outcome;
  readonly numbers?: Numbers;
  /** Numbers and their unit, and no other word. */
  readonly numeric: boolean;
  readonly firmness: Firmness;
};

const bracketOf = (text: string): { readonly text: string; readonly remark?: string } => {
  const found = /[([{]([^()[\]{}]*)[)\]}]/.exec(text);
  if (found?.[1] === undefined || found[1].trim() === "") return { text };
  const rest = text.replace(found[0], " ").replaceAll(/\s+/g, " ").trim();
  return rest === "" ? { text: found[1].trim() } : { text: rest, remark: found[1].trim() };
};

const HEDGED =
  /\b(looks?|appears?|seems?|maybe|might|possibly|probably|perhaps|approx\w*|about|around|ish|could be|should be|i think|suspect\w*)\b|[~≈]|\?\s*$/i;
const TOLD =
  /\b(seller|owner|dealer|vendor)\s+(says|said|states|stated|claims|claimed|reports)\b|\bper (the )?(seller|owner|dealer|vendor)\b|\b(was|were|i'?m) told\b|\breportedly\b|\ballegedly\b|\bsupposedly\b/i;

/**
 * How firmly something is written (design 4, "Words of firmness"): asserted, hedged, or second-hand.
 *
 * @example firmnessOf("looks original") // "hedged"
 */
export const firmnessOf = (text: string): Firmness =>
  TOLD.test(text) ? "second-hand" : HEDGED.test(text) ? "hedged" : "asserted";

/** `Yes, blue for a few seconds`: a word of a checklist, and what it is about; `ok, slow on low` is not ok. */
const ledBy = (text: string): { readonly outcome: Outcome | undefined; readonly text: string } => {
  const whole = outcomeOf(text);
  const led = /^(yes|no|ok|okay|pass|passed|fail|failed|y|n)\s*(?:[,;:–—]|\s-\s)\s*(\S.*)$/i.exec(text);
  if (whole !== undefined || led?.[1] === undefined || led[2] === undefined) return { outcome: whole, text };
  const outcome = outcomeOf(led[1]);
  return outcome?.says === "good" && speaksAgainst(led[2])
    ? { outcome: undefined, text: led[2] }
    : { outcome, text: led[2] };
};

/**
 * A cell's text as a value: a tick or short word, numbers with a unit, or words.
 *
 * @example readValue("7/32\" (uneven)", { comma: false }).numbers // { values: [0.21875], unit: "in", of32: true }
 */
export const readValue = (cell: string, writing: Writing): Value => {
  const { text: whole, remark } = bracketOf(withoutShorthand(cell.trim()));
  const { outcome, text } = ledBy(whole);
  const numbers = numbersOf(text, writing);
  return {
    text,
    ...(remark === undefined ? {} : { remark }),
    ...(outcome === undefined ? {} : { outcome }),
    ...(numbers === undefined ? {} : { numbers }),
    numeric: isNumeric(text),
    firmness: firmnessOf(text),
  };
};
