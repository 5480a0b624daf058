import type { Fault } from "@evenhand/shared/answer";
import type { Vehicle } from "@evenhand/shared/report";
import type { Place } from "@evenhand/sheet/expand";

/** What is so of one item at one place of a car. */
export type Truth =
  | { readonly kind: "reading"; readonly value: number }
  | { readonly kind: "grade"; readonly deserves: number }
  | { readonly kind: "word"; readonly word: string; readonly also: readonly string[] }
  | { readonly kind: "code"; readonly text: string }
  | { readonly kind: "faults"; readonly found: readonly Fault[] }
  | { readonly kind: "color"; readonly L: number; readonly a: number; readonly b: number }
  | { readonly kind: "not-fitted" };

/** @example word("absent") // { kind: "word", word: "absent", also: [] } */
export const word = (said: string): Truth => ({ kind: "word", word: said, also: [] });

/** A place of the sheet on one car, and what is so there. */
export type Known = Place & { readonly key: string; readonly truth: Truth };

/** A car as it really is on the day of the statement. */
export type TrueCar = { readonly vehicle: Vehicle; readonly known: readonly Known[] };

/** @example keyOf("wheels.pressure", "spare") // "wheels.pressure@spare" */
export const keyOf = (item: string, position: string): string =>
  position === "" ? item : `${item}@${position}`;

/** The car with other truths at some places. */
export const withTruths = (car: TrueCar, truths: ReadonlyMap<string, Truth>): TrueCar => ({
  ...car,
  known: car.known.map((known) => {
    const truth = truths.get(known.key);
    return truth === undefined ? known : { ...known, truth };
  }),
});
