/** The potentials and the matching of the shortest augmenting path method, 1-based with 0 as the start. */
type Search = {
  readonly costs: readonly (readonly number[])[];
  readonly columns: number;
  readonly rowPotential: Float64Array;
  readonly columnPotential: Float64Array;
  /** Row matched to each column; 0 where none. */
  readonly matched: Int32Array;
};

/** One step of the search: from a matched column to the nearest column not yet reached. */
const nearestColumn = (
  search: Search,
  row: number,
  from: number,
  reached: Uint8Array,
  least: Float64Array,
  via: Int32Array,
): number => {
  let nearest = 0;
  let shortest = Number.POSITIVE_INFINITY;
  const costs = search.costs[row - 1] ?? [];
  for (let column = 1; column <= search.columns; column += 1) {
    if (reached[column] === 1) continue;
    const potential = (search.rowPotential[row] ?? 0) + (search.columnPotential[column] ?? 0);
    const reduced = (costs[column - 1] ?? Number.POSITIVE_INFINITY) - potential;
    if (reduced < (least[column] ?? 0)) {
      least[column] = reduced;
      via[column] = from;
    }
    if ((least[column] ?? 0) < shortest) {
      shortest = least[column] ?? 0;
      nearest = column;
    }
  }
  return nearest;
};

const shiftPotentials = (search: Search, reached: Uint8Array, least: Float64Array, by: number): void => {
  for (let column = 0; column <= search.columns; column += 1) {
    if (reached[column] === 1) {
      const row = search.matched[column] ?? 0;
      search.rowPotential[row] = (search.rowPotential[row] ?? 0) + by;
      search.columnPotential[column] = (search.columnPotential[column] ?? 0) - by;
    } else {
      least[column] = (least[column] ?? 0) - by;
    }
  }
};

const augment = (search: Search, row: number): void => {
  const least = new Float64Array(search.columns + 1).fill(Number.POSITIVE_INFINITY);
  const reached = new Uint8Array(search.columns + 1);
  const via = new Int32Array(search.columns + 1);
  search.matched[0] = row;
  let column = 0;
  do {
    reached[column] = 1;
    const next = nearestColumn(search, search.matched[column] ?? 0, column, reached, least, via);
    shiftPotentials(search, reached, least, least[next] ?? 0);
    column = next;
  } while (search.matched[column] !== 0);
  while (column !== 0) {
    const previous = via[column] ?? 0;
    search.matched[column] = search.matched[previous] ?? 0;
    column = previous;
  }
};

/**
 * The assignment of rows to columns with the least total cost, by shortest augmenting paths with potentials
 * (Kuhn 1955; Munkres 1957; in the O(n²·m) form of Jonker & Volgenant 1987).
 *
 * @param costs one row of finite costs for each thing to assign; no more rows than columns
 * @returns the column of each row
 * @throws {RangeError} when there are more rows than columns
 * @example leastCostAssignment([[4, 1], [2, 9]]) // [1, 0]
 */
export const leastCostAssignment = (costs: readonly (readonly number[])[]): number[] => {
  const columns = costs[0]?.length ?? 0;
  if (costs.length > columns) {
    throw new RangeError(`${costs.length} rows cannot each have one of ${columns} columns.`);
  }
  const [only] = costs;
  if (costs.length === 1 && only !== undefined) return [only.indexOf(Math.min(...only))];
  const search: Search = {
    costs,
    columns,
    rowPotential: new Float64Array(costs.length + 1),
    columnPotential: new Float64Array(columns + 1),
    matched: new Int32Array(columns + 1),
  };
  for (let row = 1; row <= costs.length; row += 1) augment(search, row);
  const assigned: number[] = Array.from({ length: costs.length }, () => 0);
  for (let column = 1; column <= columns; column += 1) {
    const row = search.matched[column] ?? 0;
    if (row > 0) assigned[row - 1] = column - 1;
  }
  return assigned;
};
