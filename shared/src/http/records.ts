import { z } from "zod";
import { Interval } from "../comparison.ts";
import { LocalId } from "../identifier.ts";
import { Named, type Contract } from "./paging.ts";

const Cars = z.int().nonnegative();

/** How a dealer's statements of one section held up, over cars. Of few cars only how many: more would give a buyer's report away. */
export const SectionRecord = z.discriminatedUnion("state", [
  z.strictObject({ section: LocalId, state: z.literal("too-few"), n: Cars, needed: Cars }),
  z.strictObject({
    section: LocalId,
    state: z.literal("known"),
    /** Cars with anything that was tested in this section. */
    n: Cars,
    /** Whether other dealers' shares were drawn on. */
    pooled: z.boolean(),
    /** Share of cars of which nothing stated was found worse, 90 % interval. */
    heldUp: Interval,
    /** Share of cars of which nothing stated was found worse and something was confirmed, 90 % interval. */
    confirmed: Interval,
    fell: Cars,
    notContradicted: Cars,
    confirmedCars: Cars,
  }),
]);
export type SectionRecord = z.infer<typeof SectionRecord>;

/** Nothing in it is of one car, one buyer or one inspector. */
export const DealerRecord = z.strictObject({
  dealer: Named,
  /** The dealer's cars that were inspected; of several inspections of one car the latest counts. */
  cars: Cars,
  /** Cars without which nothing is said of a section. */
  needed: Cars,
  /** Sections in which any statement was tested, in the order of the sheet. */
  sections: z.array(SectionRecord),
});
export type DealerRecord = z.infer<typeof DealerRecord>;

export const recordContracts = {
  "dealerRecords.get": { costly: true, status: 200, answer: DealerRecord },
} as const satisfies Record<string, Contract>;
