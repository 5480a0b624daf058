import { WINDOWS } from "../fingerprint/index.ts";

/** Where a point of the second picture lies in the first: `x' = sx·x + tx`, `y' = sy·y + ty`, in shares of their sides. */
export type Alignment = {
  readonly sx: number;
  readonly tx: number;
  readonly sy: number;
  readonly ty: number;
};

/** A square of values, row after row. */
export type Grid = { readonly side: number; readonly values: Float64Array };

/** What is cut out, and what it was cut out of: where it begins to look. */
export const STARTS: readonly Alignment[] = WINDOWS.flatMap(({ left, top, width, height }) => [
  { sx: width, tx: left, sy: height, ty: top },
  { sx: 1 / width, tx: -left / width, sy: 1 / height, ty: -top / height },
]);

/** The value at a place between the middles of four pixels; none off the grid. */
export function valueAt({ side, values }: Grid, x: number, y: number): number {
  const [u, v] = [x * side - 0.5, y * side - 0.5];
  if (!(u >= 0 && v >= 0 && u <= side - 1 && v <= side - 1)) return Number.NaN;
  const [left, top] = [Math.min(Math.floor(u), side - 2), Math.min(Math.floor(v), side - 2)];
  const [across, down] = [u - left, v - top];
  const at = top * side + left;
  const upper = (values[at] ?? 0) * (1 - across) + (values[at + 1] ?? 0) * across;
  const lower = (values[at + side] ?? 0) * (1 - across) + (values[at + side + 1] ?? 0) * across;
  return upper * (1 - down) + lower * down;
}

/** The first picture as it lies under the second. */
export function underneath(grid: Grid, { sx, tx, sy, ty }: Alignment, side: number): Float64Array {
  const values = new Float64Array(side * side);
  for (let y = 0; y < side; y += 1)
    for (let x = 0; x < side; x += 1)
      values[y * side + x] = valueAt(grid, sx * ((x + 0.5) / side) + tx, sy * ((y + 0.5) / side) + ty);
  return values;
}

type Spread = { readonly mean: number; readonly deviation: number; readonly count: number };

/** Mean and standard deviation where both have a value. */
export function spreadOf(values: Float64Array, beside: Float64Array): Spread {
  let [count, sum, squares] = [0, 0, 0];
  for (let at = 0; at < values.length; at += 1) {
    const value = values[at] ?? 0;
    if (Number.isNaN(value + (beside[at] ?? 0))) continue;
    count += 1;
    sum += value;
    squares += value * value;
  }
  const mean = sum / Math.max(1, count);
  return { mean, count, deviation: Math.sqrt(Math.max(0, squares / Math.max(1, count) - mean * mean)) };
}

/** Pearson's correlation where both have a value; nothing where one of them has but one value, or they hardly overlap. */
export function correlation(a: Float64Array, b: Float64Array): number {
  const [one, other] = [spreadOf(a, b), spreadOf(b, a)];
  if (one.count < a.length / 2 || one.deviation * other.deviation === 0) return 0;
  let sum = 0;
  for (let at = 0; at < a.length; at += 1) {
    const product = ((a[at] ?? 0) - one.mean) * ((b[at] ?? 0) - other.mean);
    if (!Number.isNaN(product)) sum += product;
  }
  return sum / (one.count * one.deviation * other.deviation);
}
