import { z } from "zod";
import { Currency } from "./currency.ts";
import { Instant, LocalDate, Money } from "./identifier.ts";

/** Where a figure comes from, in the words of whoever entered it. */
export const FigureSource = z.string().trim().min(3, "where the figure comes from, in a few words").max(300);

/** Ten million miles: above it a distance is a slip. */
const Distance = z.number().positive().max(10_000_000);
export const DistanceUnit = z.enum(["mi", "km"]);
export type DistanceUnit = z.infer<typeof DistanceUnit>;
export const CarrierKind = z.enum(["open", "enclosed"]);
export type CarrierKind = z.infer<typeof CarrierKind>;

const Rate = Money.shape.minor.nullable();
/** What carriers ask for a distance up to `upTo`, on an open and in an enclosed trailer; `null` is unset. */
export const TransportBand = z.strictObject({ upTo: Distance, open: Rate, enclosed: Rate });
export type TransportBand = z.infer<typeof TransportBand>;

/** A buyer's own table of what transport costs. A band holds for every distance up to its end and over the end of the one before. */
export const TransportRates = z.strictObject({
  currency: Currency,
  unit: DistanceUnit,
  /** A band's figure is for the whole trip, or for each mile or kilometer of it. */
  per: z.enum(["trip", "distance"]),
  bands: z
    .array(TransportBand)
    .max(50)
    .refine((bands) => bands.every(({ upTo }, at) => at === 0 || upTo > (bands[at - 1]?.upTo ?? 0)), {
      message: "each band ends farther than the one before it",
    }),
  source: FigureSource,
});
export type TransportRates = z.infer<typeof TransportRates>;

/** What makes up the cost of a car at its buyer's door, in the order it is read. */
export const LANDED_LINES = [
  "price",
  "put-right",
  "inspection",
  "transport",
  "sales-tax",
  "duty",
  "registration",
  "broker",
] as const;
export const LandedLineKind = z.enum(LANDED_LINES);
export type LandedLineKind = z.infer<typeof LandedLineKind>;

/** Lines a buyer may enter by hand; an amount of nothing says that nothing is due. */
export const ENTERED_LINES = LandedLineKind.exclude(["put-right"]).options;
const Entered = z.strictObject({ amount: Money, source: FigureSource });
/** How far a car is carried, and by which kind of carrier. */
const Trip = z.strictObject({ distance: Distance, unit: DistanceUnit, carrier: CarrierKind });

/** A rate of exchange somebody entered: one unit of `from` is `rate` units of `to`, as it stood on that day. */
export const ExchangeRate = z.strictObject({
  from: Currency,
  to: Currency,
  rate: z.number().positive().max(1_000_000_000),
  on: LocalDate,
  source: FigureSource,
});
export type ExchangeRate = z.infer<typeof ExchangeRate>;

/** What a buyer entered for one car. What is left out is unset, or taken from the record where that has it. */
export const LandedCostEntries = z.strictObject({
  lines: z.strictObject({
    price: Entered.optional(),
    inspection: Entered.optional(),
    transport: Entered.optional(),
    "sales-tax": Entered.optional(),
    duty: Entered.optional(),
    registration: Entered.optional(),
    broker: Entered.optional(),
  }),
  /** Looked up in the buyer's own rates, where the line has no amount of its own. */
  trip: Trip.nullable(),
  /** In which the total is given, where the rates entered lead there. */
  currency: Currency.nullable(),
  rates: z.array(ExchangeRate).max(10),
  /** The most the buyer would pay for the car in all, at their door and put right. */
  limit: Money.nullable(),
});
export type LandedCostEntries = z.infer<typeof LandedCostEntries>;

const changed = <O extends string, T extends z.ZodType>(of: O, what: T) =>
  z.strictObject({ of: z.literal(of), before: what.nullable(), after: what.nullable() });

/** What was entered before and after a save, one thing at a time; `null` where it was unset. */
export const LandedChange = z.discriminatedUnion("of", [
  changed("line", Entered).extend({ line: z.enum(ENTERED_LINES) }),
  changed("trip", Trip),
  changed("currency", Currency),
  changed("limit", Money),
  /** Between two currencies. */
  changed("rate", ExchangeRate).extend({ from: Currency, to: Currency }),
]);
export type LandedChange = z.infer<typeof LandedChange>;

/** Where a line's amount comes from; a code, which whoever shows it puts into words. */
export const LandedSource = z.discriminatedUnion("of", [
  z.strictObject({ of: z.literal("entry"), words: z.string() }),
  z.strictObject({ of: z.literal("asking") }),
  /** What the buyer or the dealer offered, and whether the other has taken it. */
  z.strictObject({
    of: z.literal("offer"),
    agreed: z.boolean(),
    by: z.enum(["buyer", "dealer"]),
    at: Instant,
  }),
  z.strictObject({ of: z.literal("cost-table"), name: z.string(), revision: z.int(), unsetRows: z.int() }),
  /** So many visits; `shared` where one of them was to other cars too, and counts with its share. */
  z.strictObject({ of: z.literal("booking"), visits: z.int(), shared: z.boolean() }),
  z.strictObject({
    of: z.literal("rates"),
    revision: z.int(),
    upTo: z.number(),
    unit: DistanceUnit,
    carrier: CarrierKind,
  }),
]);
export type LandedSource = z.infer<typeof LandedSource>;

/** Why a line has no amount. */
export const LandedUnset = z.enum([
  "not-entered",
  "no-comparison",
  "no-cost-table",
  "no-rates",
  "beyond-rates",
]);
export type LandedUnset = z.infer<typeof LandedUnset>;

const minor = z.int().nonnegative();
/** In minor units; all three alike where the amount is no range. */
const Range = z.strictObject({ low: minor, likely: minor, high: minor });
export type LandedRange = z.infer<typeof Range>;

/** One line. Never nothing for something that is not known: that is `unset`. */
export const LandedLine = z.union([
  z.strictObject({
    line: LandedLineKind,
    currency: Currency,
    amount: Range,
    source: LandedSource,
    /** In the total's currency, where it is another and a rate was entered. */
    converted: z.strictObject({ amount: Range, rate: ExchangeRate }).nullable(),
  }),
  z.strictObject({ line: LandedLineKind, unset: LandedUnset }),
]);
export type LandedLine = z.infer<typeof LandedLine>;
export type SetLandedLine = Extract<LandedLine, { amount: unknown }>;

export const LandedCost = z.strictObject({
  lines: z.array(LandedLine),
  /** One for each currency that no rate leads out of. */
  totals: z.array(z.strictObject({ currency: Currency, amount: Range, lines: z.array(LandedLineKind) })),
  /** Lines without an amount: the totals are without them. */
  without: z.array(LandedLineKind),
});
export type LandedCost = z.infer<typeof LandedCost>;
