import type { Contribution } from "./chance-interval.ts";
import type { Matrix } from "../agreement-weights/index.ts";

/** A table of two people's answers, as proportions with their margins. */
export type Proportions = {
  readonly items: number;
  readonly cells: Matrix;
  readonly rows: readonly number[];
  readonly columns: readonly number[];
};

const sum = (values: readonly number[]): number => {
  let total = 0;
  for (let index = 0; index < values.length; index += 1) total += values[index] ?? 0;
  return total;
};

/** Sum over all pairs of categories. */
export const sumOverCells = (table: Matrix, term: (cell: number, i: number, j: number) => number): number => {
  let total = 0;
  for (let i = 0; i < table.length; i += 1) {
    const row = table[i] ?? [];
    for (let j = 0; j < row.length; j += 1) total += term(row[j] ?? Number.NaN, i, j);
  }
  return total;
};

const sumsOfColumns = (cells: Matrix): number[] => {
  const sums = cells.map(() => 0);
  for (const row of cells) {
    for (let j = 0; j < sums.length; j += 1) sums[j] = (sums[j] ?? 0) + (row[j] ?? 0);
  }
  return sums;
};

/**
 * How many items a table of counts holds.
 *
 * @throws {RangeError} when the table is not square or holds a negative count
 */
export const itemsOf = (counts: Matrix): number => {
  let items = 0;
  // By index, here and above: lists of whole numbers and of fractions are two kinds to the machine, and walking both makes garbage.
  for (let i = 0; i < counts.length; i += 1) {
    const row = counts[i] ?? [];
    if (row.length !== counts.length) throw new RangeError("The table must be square.");
    for (let j = 0; j < row.length; j += 1) {
      if (!((row[j] ?? Number.NaN) >= 0)) throw new RangeError("Counts must be numbers from 0.");
    }
    items += sum(row);
  }
  return items;
};

/**
 * Turns counts into proportions.
 *
 * @throws {RangeError} when the table is not square or holds a negative count
 */
export const proportions = (counts: Matrix): Proportions => {
  const items = itemsOf(counts);
  const cells = counts.map((row) => row.map((count) => count / items));
  return { items, cells, rows: cells.map(sum), columns: sumsOfColumns(cells) };
};

/** Sum over all pairs of categories of what stands there in two tables, multiplied. */
export const sumOfProducts = (one: Matrix, other: Matrix): number => {
  let total = 0;
  for (let i = 0; i < one.length; i += 1) {
    const row = one[i] ?? [];
    const otherRow = other[i] ?? [];
    for (let j = 0; j < row.length; j += 1) total += (row[j] ?? Number.NaN) * (otherRow[j] ?? 0);
  }
  return total;
};

/**
 * The cells of a table that hold anything, each with what it adds.
 *
 * @param items how many items are in each cell; may be fractions
 * @param weights how much each cell counts as agreement
 * @param chance how much more disagreement chance would give with one more item there
 */
export const contributions = (items: Matrix, weights: Matrix, chance: Matrix): Contribution[] => {
  const found: Contribution[] = [];
  for (let i = 0; i < items.length; i += 1) {
    const row = items[i] ?? [];
    const [weightsOfRow, chanceOfRow] = [weights[i] ?? [], chance[i] ?? []];
    for (let j = 0; j < row.length; j += 1) {
      const weight = row[j] ?? 0;
      if (weight > 0)
        found.push({ weight, disagreement: 1 - (weightsOfRow[j] ?? 0), chance: chanceOfRow[j] ?? 0 });
    }
  }
  return found;
};
