import { isPlaceOnly, labelOf } from "../label/index.ts";
import type { Label } from "../label/index.ts";
import { outcomeOf } from "../outcome-words/index.ts";
import { speaksAgainst } from "../sensed-words/index.ts";
import { readValue } from "../read-value/index.ts";
import type { Value } from "../read-value/index.ts";
import type { Claim } from "../table-claims/index.ts";
import { placedValue } from "./placed-value.ts";

const EXCEPT =
  /^(?<rest>.+?)?[,;]?\s*\b(?:except(?:ing)?(?:\s+for)?|apart\s+from|other\s+than|bar|but\s+not)\s+(?:the\s+)?(?<places>.+)$/is;

type Exception = { readonly place: Label; readonly value: Value };

const bad: Value = { text: "", outcome: { says: "bad" }, numeric: false, firmness: "asserted" };

/** `RR`, `RR dim`, `the O/S/R at 3 mm`. */
const exceptionOf = (text: string): Exception | undefined => {
  const { text: whole, remark } = readValue(text, { comma: false });
  const label = labelOf(whole);
  if (isPlaceOnly(label))
    return { place: label, value: remark === undefined ? bad : readValue(remark, { comma: false }) };
  const placed = placedValue(whole);
  const said = placed?.rest ?? whole;
  // `N/s/r indicator` is a place; `n/s/r dim` says how.
  if (!/\d/.test(whole) && outcomeOf(said) === undefined && !speaksAgainst(said))
    return { place: label, value: bad };
  if (placed === undefined) return undefined;
  return {
    place: placed.place,
    value: readValue(placed.rest.replace(/^(?:at|is|which is)\s+/i, ""), { comma: false }),
  };
};

/**
 * `All ok except RR` as what is said of the rest, and of each exception; the exceptions last.
 *
 * @returns nothing where it makes no exception, or names no place in one
 * @example exceptedParts(claimOf("Indicators", "all ok except RR")).length // 2
 */
export const exceptedParts = (claim: Claim): readonly Claim[] => {
  const { value, note } = claim;
  const text = value.outcome === undefined || note === "" ? value.text : `${value.text} ${note}`;
  const said = EXCEPT.exec(value.remark === undefined ? text : `${text} (${value.remark})`)?.groups;
  if (said?.["rest"] === undefined || said["places"] === undefined) return [];
  const exceptions = said["places"].split(/\s*(?:[,;&+]|\band\b)\s*/).map(exceptionOf);
  const known = exceptions.flatMap((one) => (one === undefined ? [] : [one]));
  if (known.length === 0 || known.length < exceptions.length) return [];
  const rest = readValue(said["rest"].replace(/^(?:all|both|others?)\s+(?=\S)/i, ""), { comma: false });
  return [
    { ...claim, note: "", value: rest, except: known.map(({ place }) => place) },
    ...known.map(({ place, value: own }) => ({
      ...claim,
      note: "",
      value: own,
      where: [...claim.where, place],
    })),
  ];
};
