import { type Alignment, correlation, type Grid, spreadOf, STARTS, underneath } from "./alignment.ts";

const STEPS = 8;

/** Solves four equations with four unknowns by elimination with the largest pivot; `null` where they do not fix them. */
function solved(rows: readonly Float64Array[]): number[] | null {
  const left = [...rows];
  for (let at = 0; at < 4; at += 1) {
    const pivot = left
      .slice(at)
      .reduce((best, row) => (Math.abs(row[at] ?? 0) > Math.abs(best[at] ?? 0) ? row : best));
    if (Math.abs(pivot[at] ?? 0) < 1e-9) return null;
    left[left.indexOf(pivot)] = left[at] ?? pivot;
    left[at] = pivot;
    for (const row of left) {
      if (row === pivot) continue;
      const factor = (row[at] ?? 0) / (pivot[at] ?? 1);
      for (let column = at; column < 5; column += 1)
        row[column] = (row[column] ?? 0) - factor * (pivot[column] ?? 0);
    }
  }
  return left.map((row, at) => (row[4] ?? 0) / (row[at] ?? 1));
}

/** Adds one pixel's equation: how it changes with each of the four, and by how much it is off. */
function addEquation(rows: readonly Float64Array[], by: Float64Array, off: number): void {
  for (let i = 0; i < 4; i += 1) {
    const [row, weight] = [rows[i], by[i] ?? 0];
    if (row === undefined) continue;
    for (let j = 0; j < 4; j += 1) row[j] = (row[j] ?? 0) + weight * (by[j] ?? 0);
    row[4] = (row[4] ?? 0) + weight * off;
  }
}

/**
 * The equations of one step of Gauss and Newton: how the first picture, as it lies, changes where scale and shift of either side do, and
 * how far it is off the second, both taken to mean 0 and deviation 1. `null` where they hardly overlap or show one gray.
 */
function equations(laid: Float64Array, { side, values }: Grid, from: Alignment): Float64Array[] | null {
  const [one, other] = [spreadOf(laid, values), spreadOf(values, laid)];
  if (one.deviation === 0 || other.deviation === 0 || one.count < laid.length / 2) return null;
  const rows = Array.from({ length: 4 }, () => new Float64Array(5));
  const by = new Float64Array(4);
  const half = side / 2 / one.deviation;
  for (let y = 1; y < side - 1; y += 1)
    for (let x = 1; x < side - 1; x += 1) {
      const at = y * side + x;
      const across = (((laid[at + 1] ?? 0) - (laid[at - 1] ?? 0)) * half) / from.sx;
      const down = (((laid[at + side] ?? 0) - (laid[at - side] ?? 0)) * half) / from.sy;
      const off =
        ((values[at] ?? 0) - other.mean) / other.deviation - ((laid[at] ?? 0) - one.mean) / one.deviation;
      if (Number.isNaN(off + across + down)) continue;
      by[0] = (across * (x + 0.5)) / side;
      by[1] = across;
      by[2] = (down * (y + 0.5)) / side;
      by[3] = down;
      addEquation(rows, by, off);
    }
  return rows;
}

/**
 * A step towards the alignment at which two pictures differ least: what Lucas and Kanade do for a shift, for shift and scale of both
 * sides (Baker and Matthews, "Lucas-Kanade 20 Years On", 2004, from memory).
 */
function step(first: Grid, second: Grid, from: Alignment): Alignment | null {
  const rows = equations(underneath(first, from, second.side), second, from);
  const moved = rows === null ? null : solved(rows);
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
    if (!(found > most + 1e-5)) return best;
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
  const whole = { sx: 1, tx: 0, sy: 1, ty: 0 };
  const [coarse] = grids;
  if (coarse === undefined) return whole;
  const likeliest = STARTS.map((start) => ({ start, found: alike(...coarse, start) })).reduce((best, each) =>
    each.found > best.found ? each : best,
  );
  return grids.reduce((alignment, [first, second]) => refined(first, second, alignment), likeliest.start);
}
