import { normalizeVin } from "../identifier-text/index.ts";
import { answersOf, findReads } from "../view/index.ts";
import type { Read, View } from "../view/index.ts";
import type { Market } from "../vin-form/index.ts";

export const VIN = "identity.vin";
export const TITLE = "identity.title-number";
/** From this model year on numbers follow the regulation in North America. */
export const FIRST_VIN_YEAR = 1981;

/** The market a car was built for, as far as its name tells. */
export const marketOf = (market: string | undefined): Market => {
  if (market === undefined) return "unknown";
  return /\b(north america|usa?|united states|canada|mexico)\b/i.test(market.replaceAll(".", ""))
    ? "north-america"
    : "other";
};

/** Every place the car's number was read, the title's included. */
export const numbersOf = (view: View): Read<"code">[] => [
  ...findReads(view, "code", VIN),
  ...findReads(view, "code", TITLE),
];

/** The car's number stands at several places, the title among them. */
const alsoReadAs = (item: string): readonly string[] =>
  item === VIN || item === TITLE ? [VIN, TITLE] : [item];

/** Whether a number was read by both people, or twice: what a break may rest on that accuses somebody. */
export const isReadTwice = (view: View, read: Read<"code">): boolean => {
  const number = normalizeVin(read.answer.text);
  let alike = 0;
  for (const side of ["a", "b"] as const) {
    for (const item of alsoReadAs(read.item)) {
      for (const { answer } of answersOf(view, side, item)) {
        if (answer.kind === "code" && normalizeVin(answer.text) === number) alike += 1;
      }
    }
  }
  return alike > 1;
};
