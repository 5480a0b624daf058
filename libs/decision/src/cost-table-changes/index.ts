import type { CostRow, CostTable } from "@evenhand/shared/cost-table";

/** A row as it was and as it is; `null` where the table did not have it. */
export type CostRowChange = {
  readonly row: string;
  readonly words: string;
  readonly before: CostRow | null;
  readonly after: CostRow | null;
};

const byRow = ({ rows }: CostTable): ReadonlyMap<string, CostRow> =>
  new Map(rows.map((row) => [row.row, row]));

const spread = ({ low, likely, high }: Pick<CostRow, "low" | "likely" | "high">): number[] => [
  low,
  likely,
  high,
];

const figuresOf = ({ per, words, small, perExtent, occurs, ...figures }: CostRow): string =>
  JSON.stringify([
    per,
    words,
    spread(figures),
    small === undefined ? null : spread(small),
    perExtent === undefined ? null : [perExtent.unit, spread(perExtent)],
    Object.entries(occurs).toSorted(([a], [b]) => (a < b ? -1 : 1)),
  ]);

/**
 * What of a table of costs has changed, row by row in the order of the new table, rows taken out last. Another name, currency or
 * correlation is no change of a row.
 *
 * @param before `null` before there was a table: every row is new
 * @example costTableChanges(null, { ...table, rows: [tires] }) // [{ row: "tires", words: "a tire", before: null, after: tires }]
 */
export function costTableChanges(before: CostTable | null, after: CostTable): CostRowChange[] {
  const [old, now] = [before === null ? new Map<string, CostRow>() : byRow(before), byRow(after)];
  const kept = after.rows.flatMap((row): CostRowChange[] => {
    const was = old.get(row.row) ?? null;
    if (was !== null && figuresOf(was) === figuresOf(row)) return [];
    return [{ row: row.row, words: row.words, before: was, after: row }];
  });
  const gone = [...old.values()]
    .filter(({ row }) => !now.has(row))
    .map((row): CostRowChange => ({ row: row.row, words: row.words, before: row, after: null }));
  return [...kept, ...gone];
}
