import { z } from "zod";
import { Interval } from "../comparison.ts";
import { LocalId } from "../identifier.ts";
import { Named, type Contract } from "./paging.ts";

const Count = z.int().nonnegative();

/** Of few cars only how many: more would give a buyer's report away. */
const TooFew = z.strictObject({ state: z.literal("too-few"), cars: Count });

/** How a dealer's statements fared, over cars. */
const Known = z.strictObject({
  state: z.literal("known"),
  /** Cars of which a statement was tested here. */
  cars: Count,
  /** Statements that were borne out or fell. */
  tested: Count,
  /** Upheld by figures, a second look or the dealer's own word. */
  fell: Count,
  /** Found worse by one look, and nothing upholds it yet: neither tested nor fallen. */
  open: Count,
  /** What was true is not known. */
  settledByMoney: Count,
  notContradicted: Count,
  /** Faults made out worse than they were found: a credit, which lowers no fall. */
  statedWorse: Count,
  /** Fallen over tested statements, 90 % interval with the car as the cluster. */
  fallen: Interval,
  /** The same if everything open should fall; `null` where nothing is. */
  fallenIfAllOpen: Interval.nullable(),
  /** Places stated over places of the sheet that apply to the cars. */
  stated: Interval,
  /** The middle of the other dealers of whom as much is known; `null` where they are too few. */
  others: z.strictObject({ dealers: Count, fallen: z.number(), stated: z.number() }).nullable(),
});

export const RecordFigures = z.discriminatedUnion("state", [TooFew, Known]);
export type RecordFigures = z.infer<typeof RecordFigures>;

export const SectionRecord = z.strictObject({ section: LocalId, figures: RecordFigures });
export type SectionRecord = z.infer<typeof SectionRecord>;

/** Nothing in it is of one car, one buyer or one inspector. */
export const DealerRecord = z.strictObject({
  dealer: Named,
  /** The dealer's cars that were inspected; of several inspections of one car the latest counts. */
  cars: Count,
  /** Cars without which nothing is said. */
  needed: Count,
  /** Over the whole sheet. */
  whole: RecordFigures,
  /** Sections in which any statement was tested, in the order of the sheet. */
  sections: z.array(SectionRecord),
});
export type DealerRecord = z.infer<typeof DealerRecord>;

export const recordContracts = {
  "dealerRecords.get": { costly: true, status: 200, answer: DealerRecord },
} as const satisfies Record<string, Contract>;
