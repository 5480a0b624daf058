import type { Entry } from "@evenhand/shared/comparison";
import type { Corrected } from "../corrections/index.ts";
import type { PlannedPlace } from "../plan/index.ts";

/** What is taken off the readings of each report. */
export type Both = { readonly a: Corrected | undefined; readonly b: Corrected | undefined };

/** The first side claims something of a place; the second one does. */
export const STATED = 1;
export const SEEN = 2;

/** Lines in sheet order, and the places they speak of: each has at least one, and those of one place stand together. */
export type Lines = {
  readonly entries: Entry[];
  readonly places: readonly PlannedPlace[];
  /** Where the lines of each place begin. */
  readonly firsts: Int32Array;
  /** Where the lines of each item begin, by its place in the sheet; -1 where it has none. */
  readonly firstOfItem: Int32Array;
  /** What each side knows of each place: `STATED` and `SEEN` in one number. */
  readonly known: Uint8Array;
  /** Which lines have figures: statistics are made of these alone, and most have none. */
  readonly measured: readonly number[];
  readonly corrected: Both;
};
