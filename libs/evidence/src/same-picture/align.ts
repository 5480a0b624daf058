import { type Alignment, correlation, type Grid, spreadOf, STARTS, underneath } from "./alignment.ts";

const STEPS = 8;

/** Solves four equations with four unknowns by elimination with the largest pivot; `null` where they do not fix them. */
function solved(rows: number[][]): number[] | null {
  for (let at = 0; at < 4; at += 1) {
    const pivot = rows
      .slice(at)
      .reduce((best, row) => (Math.abs(row[at] ?? 0) > Math.abs(best[at] ?? 0) ? row : best));
    if (Math.abs(pivot[at] ?? 0) < 1e-9) return null;
    const where = rows.indexOf(pivot);
    [rows[at], rows[where]] = [pivot, rows[at] ?? pivot];
    for (const row of rows)
      if (row !== pivot) {
        const factor = (row[at] ?? 0) / (pivot[at] ?? 1);
        for (let column = at; column < 5; column += 1)
          row[column] = (row[column] ?? 0) - factor * (pivot[column] ?? 0);
      }
  }
  return rows.map((row, at) => (row[4] ?? 0) / (row[at] ?? 1));
}

/** How the first picture, as it lies, changes where it is moved by a share of its side. */
const slope = (values: Float64Array, at: number, stride: number, side: number): number =>
  (((values[at + stride] ?? Number.NaN) - (values[at - stride] ?? Number.NaN)) / 2) * side;

/**
 * One step of Gauss and Newton towards the alignment at which the two differ least, each taken to mean 0 and deviation 1: what Lucas and
 * Kanade do for a shift, for shift and scale of both sides (Baker and Matthews, "Lucas-Kanade 20 Years On", 2004, from memory).
 */
function step(first: Grid, second: Grid, from: Alignment): Alignment | null {
  const { side } = second;
  const laid = underneath(first, from, side);
  const [one, other] = [spreadOf(laid, second.values), spreadOf(second.values, laid)];
  if (one.deviation === 0 || other.deviation === 0 || one.count < laid.length / 2) return null;
  const rows = Array.from({ length: 4 }, () => [0, 0, 0, 0, 0]);
  for (let y = 1; y < side - 1; y += 1)
    for (let x = 1; x < side - 1; x += 1) {
      const at = y * side + x;
      const [across, down] = [slope(laid, at, 1, side) / from.sx, slope(laid, at, side, side) / from.sy];
      const off =
        ((second.values[at] ?? 0) - other.mean) / other.deviation -
        ((laid[at] ?? Number.NaN) - one.mean) / one.deviation;
      if (Number.isNaN(off + across + down)) continue;
      const [u, v] = [(x + 0.5) / side, (y + 0.5) / side];
      const by = [across * u, across, down * v, down].map((each) => each / one.deviation);
      for (const [i, row] of rows.entries()) {
        for (const [j, each] of by.entries()) row[j] = (row[j] ?? 0) + (by[i] ?? 0) * each;
        row[4] = (row[4] ?? 0) + (by[i] ?? 0) * off;
      }
    }
  const moved = solved(rows);
  if (moved === null) return null;
  const [sx = 0, tx = 0, sy = 0, ty = 0] = moved;
  return { sx: from.sx + sx, tx: from.tx + tx, sy: from.sy + sy, ty: from.ty + ty };
}

const alike = (first: Grid, second: Grid, alignment: Alignment): number =>
  correlation(underneath(first, alignment, second.side), second.values);

/** From an alignment on, as long as each step brings the two closer. */
function refined(first: Grid, second: Grid, from: Alignment): Alignment {
  let [best, most] = [from, alike(first, second, from)];
  for (let at = 0; at < STEPS; at += 1) {
    const next = step(first, second, best);
    if (next === null) return best;
    const found = alike(first, second, next);
    if (!(found > most + 1e-6)) return best;
    [best, most] = [next, found];
  }
  return best;
}

/**
 * How the first of two pictures lies under the second, found on ever finer grids from the likeliest of {@link STARTS}.
 *
 * @param grids of both, the coarsest first, each a square of the whole picture
 */
export function align(grids: readonly (readonly [first: Grid, second: Grid])[]): Alignment {
  const [coarse] = grids;
  const whole = { sx: 1, tx: 0, sy: 1, ty: 0 };
  if (coarse === undefined) return whole;
  const [first, second] = coarse;
  const from = STARTS.reduce<{ start: Alignment; found: number }>(
    (best, start) => {
      const found = alike(first, second, start);
      return found > best.found ? { start, found } : best;
    },
    { start: whole, found: -1 },
  );
  return grids.reduce((alignment, [a, b]) => refined(a, b, alignment), from.start);
}
