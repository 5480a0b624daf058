import type { CostRow, CostTable } from "@evenhand/shared/cost-table";
import { minorDigits, parseMoney, usualCurrency } from "../../ui/money";

export const CHANCES = ["differ", "unstated", "doubtful", "consistent", "unseen"] as const;
export type Chance = (typeof CHANCES)[number];

/** Work that the sheet names and a table prices, and what on the sheet asks for it. */
export interface CostedRow {
  readonly row: string;
  readonly section: string;
  readonly words: string;
  readonly items: readonly string[];
}

export const AMOUNTS = ["low", "likely", "high"] as const;

/** Three amounts as they stand in their fields. */
export type Amounts = Readonly<Record<(typeof AMOUNTS)[number], string>>;
/** The same in minor units. */
type Money = Pick<CostRow, (typeof AMOUNTS)[number]>;

/** A row as it stands in its fields; empty amounts are an unset row. */
export interface TypedRow extends Amounts {
  readonly row: string;
  readonly words: string;
  readonly per: CostRow["per"];
  /** Where nothing but a trifle was found; empty amounts are unset. */
  readonly small: Amounts;
  readonly chances: Readonly<Record<Chance, string>>;
  /** Kept as it is: entered with the table and not here. */
  readonly perExtent: CostRow["perExtent"];
}

export interface TypedTable {
  readonly name: string;
  readonly currency: string;
  readonly correlationWithinSection: number;
  readonly rows: readonly TypedRow[];
}

export type WrongRow = "figures" | "small" | "chance";

const noAmounts = { low: "", likely: "", high: "" };
const noChances = { differ: "", unstated: "", doubtful: "", consistent: "", unseen: "" };

const unset = ({ row, words }: CostedRow): TypedRow => ({
  row,
  words,
  per: "place",
  low: "",
  likely: "",
  high: "",
  small: noAmounts,
  chances: noChances,
  perExtent: undefined,
});

const amountText = (minor: number, currency: string): string => {
  const digits = minorDigits(currency);
  return String(Number((minor / 10 ** digits).toFixed(digits)));
};

const percentText = (chance: number | undefined): string =>
  chance === undefined ? "" : String(Number((chance * 100).toFixed(6)));

const amountTexts = ({ low, likely, high }: Money, currency: string): Amounts => ({
  low: amountText(low, currency),
  likely: amountText(likely, currency),
  high: amountText(high, currency),
});

const typedRow = (
  { occurs, row, words, per, small, perExtent, ...amounts }: CostRow,
  currency: string,
): TypedRow => ({
  row,
  words,
  per,
  ...amountTexts(amounts, currency),
  small: small === undefined ? noAmounts : amountTexts(small, currency),
  chances: {
    differ: percentText(occurs.differ),
    unstated: percentText(occurs.unstated),
    doubtful: percentText(occurs.doubtful),
    consistent: percentText(occurs.consistent),
    unseen: percentText(occurs.unseen),
  },
  perExtent,
});

/** What stands in the fields for a table: every row of the sheet in its order, and what else the table has at the end. */
export function typedOf(table: CostTable | null, costed: readonly CostedRow[]): TypedTable {
  const currency = table?.currency ?? usualCurrency;
  const known = new Map(table?.rows.map((row) => [row.row, typedRow(row, currency)]));
  const ofSheet = new Set(costed.map(({ row }) => row));
  return {
    name: table?.name ?? "",
    currency,
    correlationWithinSection: table?.correlationWithinSection ?? 0,
    rows: [
      ...costed.map((row) => known.get(row.row) ?? unset(row)),
      ...[...known.values()].filter(({ row }) => !ofSheet.has(row)),
    ],
  };
}

/** Nothing is typed of what it costs. */
export const isUnset = (row: Amounts): boolean => AMOUNTS.every((which) => row[which].trim() === "");

const amountsOf = (row: Amounts, currency: string): Money | null => {
  const [low, likely, high] = AMOUNTS.map((which) => parseMoney(row[which], currency)?.minor);
  if (low === undefined || likely === undefined || high === undefined) return null;
  return low <= likely && likely <= high ? { low, likely, high } : null;
};

const chanceOf = (text: string): number | undefined | null => {
  if (text.trim() === "") return undefined;
  const percent = Number(text);
  return Number.isFinite(percent) && percent >= 0 && percent <= 100 ? percent / 100 : null;
};

/** Why a row cannot be saved as it is typed. */
export function wrongWith(row: TypedRow, currency: string): WrongRow | null {
  if (isUnset(row)) return null;
  if (amountsOf(row, currency) === null) return "figures";
  if (!isUnset(row.small) && amountsOf(row.small, currency) === null) return "small";
  return CHANCES.some((chance) => chanceOf(row.chances[chance]) === null) ? "chance" : null;
}

const storedRow = (row: TypedRow, currency: string): CostRow[] => {
  const amounts = amountsOf(row, currency);
  if (amounts === null) return [];
  const small = amountsOf(row.small, currency);
  const chances = CHANCES.flatMap((chance) => {
    const said = chanceOf(row.chances[chance]);
    return said === undefined || said === null ? [] : [[chance, said] as const];
  });
  return [
    {
      row: row.row,
      per: row.per,
      words: row.words,
      ...amounts,
      ...(small === null ? {} : { small }),
      ...(row.perExtent === undefined ? {} : { perExtent: row.perExtent }),
      occurs: Object.fromEntries(chances),
    },
  ];
};

/** The table to be saved; ask {@link wrongWith} first. Rows that are unset are not in it. */
export const tableOf = ({ name, currency, correlationWithinSection, rows }: TypedTable): CostTable => ({
  format: "evenhand-cost-table",
  version: 1,
  name: name.trim(),
  currency,
  correlationWithinSection,
  rows: rows.flatMap((row) => storedRow(row, currency)),
});

/** The figures of another's table where this one has none yet; what is typed stays. */
export const filledFrom = (typed: TypedTable, other: CostTable): TypedTable => {
  const theirs = new Map(other.rows.map((row) => [row.row, typedRow(row, other.currency)]));
  const isNew = typed.rows.every(isUnset);
  if (!isNew && other.currency !== typed.currency) return typed;
  return {
    ...typed,
    currency: isNew ? other.currency : typed.currency,
    name: typed.name.trim() === "" ? other.name : typed.name,
    rows: typed.rows.map((row) => (isUnset(row) ? (theirs.get(row.row) ?? row) : row)),
  };
};
