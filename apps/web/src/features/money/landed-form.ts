import {
  ENTERED_LINES,
  type CarrierKind,
  type DistanceUnit,
  type LandedCostEntries,
} from "@evenhand/shared/landed-cost";
import { isDate } from "../../entities/time/is-date";
import { isCurrency, moneyOf, typedMoney, type TypedMoney } from "./typed-money";

export type EnteredLine = (typeof ENTERED_LINES)[number];

export interface TypedLine extends TypedMoney {
  readonly source: string;
}
export interface TypedRate {
  readonly from: string;
  readonly rate: string;
  readonly on: string;
  readonly source: string;
}

/** Everything a buyer enters for a car, as it stands in its fields. */
export interface TypedLanded {
  readonly lines: Readonly<Record<EnteredLine, TypedLine>>;
  readonly distance: string;
  readonly unit: DistanceUnit;
  readonly carrier: CarrierKind;
  readonly limit: TypedMoney;
  /** In which the total is given. */
  readonly currency: string;
  readonly rates: readonly TypedRate[];
}

const numberOf = (text: string): number | null => {
  const number = Number(text.replaceAll(/[\s,]/g, ""));
  return text.trim() !== "" && Number.isFinite(number) && number > 0 ? number : null;
};

/** What stands in the fields for what is stored; `currency` is meant where nothing says another. */
export const typedLanded = (entries: LandedCostEntries, currency: string): TypedLanded => {
  const typed = (line: EnteredLine): TypedLine => {
    const one = entries.lines[line];
    return { ...typedMoney(one?.amount, currency), source: one?.source ?? "" };
  };
  const { trip } = entries;
  return {
    lines: {
      price: typed("price"),
      inspection: typed("inspection"),
      transport: typed("transport"),
      "sales-tax": typed("sales-tax"),
      duty: typed("duty"),
      registration: typed("registration"),
      broker: typed("broker"),
    },
    distance: trip === null ? "" : String(trip.distance),
    unit: trip?.unit ?? "mi",
    carrier: trip?.carrier ?? "open",
    limit: typedMoney(entries.limit, currency),
    currency: entries.currency ?? currency,
    rates: entries.rates.map(({ from, rate, on, source }) => ({ from, rate: String(rate), on, source })),
  };
};

const isEmpty = ({ amount, source }: TypedLine): boolean => amount.trim() === "" && source.trim() === "";

/** A place in the form that cannot be saved as typed: a line's amount or source, a rate by its number. */
export type WrongPlace =
  `amount-${EnteredLine}` | `source-${EnteredLine}` | `rate-${number}` | "distance" | "limit" | "currency";

const wrongLine = (typed: TypedLanded, line: EnteredLine): WrongPlace[] => {
  const one = typed.lines[line];
  if (isEmpty(one)) return [];
  return [
    ...(moneyOf(one) === null ? [`amount-${line}` as const] : []),
    ...(one.source.trim().length < 3 ? [`source-${line}` as const] : []),
  ];
};

const isRate = ({ from, rate, on, source }: TypedRate): boolean =>
  isCurrency(from) && numberOf(rate) !== null && isDate(on) && source.trim().length >= 3;

/** What cannot be saved as typed. */
export const wrongLanded = (typed: TypedLanded): ReadonlySet<WrongPlace> =>
  new Set<WrongPlace>([
    ...ENTERED_LINES.flatMap((line) => wrongLine(typed, line)),
    ...typed.rates.flatMap((rate, at) => (isRate(rate) ? [] : [`rate-${at}` as const])),
    ...(typed.distance.trim() !== "" && numberOf(typed.distance) === null ? (["distance"] as const) : []),
    ...(typed.limit.amount.trim() !== "" && moneyOf(typed.limit) === null ? (["limit"] as const) : []),
    ...(isCurrency(typed.currency) ? [] : (["currency"] as const)),
  ]);

/** What is saved; ask {@link wrongLanded} first. */
export const landedEntries = (typed: TypedLanded): LandedCostEntries => {
  const { distance, unit, carrier, limit, currency, rates } = typed;
  const far = numberOf(distance);
  const lines = ENTERED_LINES.flatMap((line) => {
    const amount = moneyOf(typed.lines[line]);
    return amount === null ? [] : [[line, { amount, source: typed.lines[line].source.trim() }] as const];
  });
  return {
    lines: Object.fromEntries(lines),
    trip: far === null ? null : { distance: far, unit, carrier },
    limit: moneyOf(limit),
    currency,
    rates: rates.map(({ from, rate, on, source }) => ({
      from,
      to: currency,
      rate: numberOf(rate) ?? 1,
      on,
      source: source.trim(),
    })),
  };
};
