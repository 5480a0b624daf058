import type { Money } from "@evenhand/shared/identifier";
import {
  LANDED_LINES,
  type LandedCost,
  type LandedCostEntries,
  type LandedLine,
  type LandedLineKind,
  type LandedRange,
  type LandedSource,
  type LandedUnset,
  type SetLandedLine,
  type TransportRates,
} from "@evenhand/shared/landed-cost";
import { convertedTo } from "./convert.ts";
import { tripCost } from "./trip.ts";

/** A line before its currency is looked at. */
type Found = Omit<SetLandedLine, "line" | "converted"> | { readonly unset: LandedUnset };

export type LandedCostInput = {
  readonly entries: LandedCostEntries;
  /** What is asked, offered or agreed, as the record has it; `null` where nobody named a price. */
  readonly price: { readonly amount: Money; readonly source: LandedSource } | null;
  /** The range of the comparison's cost, from the buyer's own table; why there is none. */
  readonly putRight:
    | { readonly currency: string; readonly amount: LandedRange; readonly source: LandedSource }
    | { readonly unset: "no-comparison" | "no-cost-table" };
  /** What booked visits cost the buyer, one for each currency. */
  readonly inspection: readonly { readonly amount: Money; readonly source: LandedSource }[];
  readonly rates: { readonly revision: number; readonly table: TransportRates } | null;
};

const exactly = ({ amount: { minor, currency }, source }: NonNullable<LandedCostInput["price"]>): Found => ({
  currency,
  amount: { low: minor, likely: minor, high: minor },
  source,
});

const entered = ({ lines }: LandedCostEntries, line: keyof LandedCostEntries["lines"]): Found[] => {
  const one = lines[line];
  return one === undefined
    ? []
    : [exactly({ amount: one.amount, source: { of: "entry", words: one.source } })];
};

const transport = ({ entries: { trip }, rates }: LandedCostInput): Found => {
  if (trip === null) return { unset: "not-entered" };
  if (rates === null) return { unset: "no-rates" };
  const cost = tripCost(trip, rates.table);
  if (cost === null) return { unset: "beyond-rates" };
  const { unit, currency } = rates.table;
  const source = {
    of: "rates",
    revision: rates.revision,
    upTo: cost.upTo,
    unit,
    carrier: trip.carrier,
  } as const;
  return exactly({ amount: { minor: cost.minor, currency }, source });
};

/** What the record says where the buyer entered nothing. */
function ofRecord(line: LandedLineKind, input: LandedCostInput): Found[] {
  switch (line) {
    case "price":
      return input.price === null ? [{ unset: "not-entered" }] : [exactly(input.price)];
    case "put-right":
      return [input.putRight];
    case "inspection":
      return input.inspection.length === 0 ? [{ unset: "not-entered" }] : input.inspection.map(exactly);
    case "transport":
      return [transport(input)];
    default:
      return [{ unset: "not-entered" }];
  }
}

const linesOf = (line: LandedLineKind, input: LandedCostInput): LandedLine[] => {
  const own = line === "put-right" ? [] : entered(input.entries, line);
  const found = own.length > 0 ? own : ofRecord(line, input);
  return found.map((one) =>
    "unset" in one ? { line, ...one } : { line, ...one, converted: convertedTo(one, input.entries) },
  );
};

const plus = (a: LandedRange, b: LandedRange): LandedRange => ({
  low: a.low + b.low,
  likely: a.likely + b.likely,
  high: a.high + b.high,
});
const nothing: LandedRange = { low: 0, likely: 0, high: 0 };

/** The amounts of one currency together, those a rate leads to among them. */
function totalsOf(lines: readonly SetLandedLine[]): LandedCost["totals"] {
  const ends = lines.map(({ line, currency, amount, converted }) => ({
    line,
    currency: converted?.rate.to ?? currency,
    amount: converted?.amount ?? amount,
  }));
  return [...Map.groupBy(ends, ({ currency }) => currency)].map(([currency, of]) => ({
    currency,
    amount: of.map(({ amount }) => amount).reduce(plus, nothing),
    lines: [...new Set(of.map(({ line }) => line))],
  }));
}

/**
 * What a car comes to at its buyer's door: price, cost to put right, inspection, transport, tax, duty, registration and broker.
 * Every line is the buyer's entry or stands in the record, and says which; what is not known is unset and in no total, never zero.
 * Amounts are added up as they are shown, so that whoever adds the lines gets the total; another currency is converted at a rate
 * the buyer entered, with its date, or has a total of its own. Only one line is a range, so the total's ends are as likely as its.
 *
 * It is arithmetic on what was entered, not a valuation.
 *
 * @example
 * landedCost({ entries: { lines: {}, trip: null, currency: null, rates: [], limit: null }, price: null,
 *   putRight: { unset: "no-comparison" }, inspection: [], rates: null }).totals // []
 */
export function landedCost(input: LandedCostInput): LandedCost {
  const lines = LANDED_LINES.flatMap((line) => linesOf(line, input));
  return {
    lines,
    totals: totalsOf(lines.filter((line) => "amount" in line)),
    without: lines.flatMap((line) => ("unset" in line ? [line.line] : [])),
  };
}
