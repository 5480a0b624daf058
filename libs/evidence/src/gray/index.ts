/** A picture in gray: a byte a pixel from black 0 to white 255, row after row. */
export type Gray = { readonly width: number; readonly height: number; readonly data: Uint8Array };

/** A part of a picture in shares of its sides: from `left` and `top`, so wide and so high. */
export type Window = {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
};

export const WHOLE: Window = { left: 0, top: 0, width: 1, height: 1 };

type Span = { readonly from: number; readonly weights: readonly number[] };

/** Which pixels of a row a new pixel is the mean of, those at its rims in part. */
function spansOf(from: number, length: number, count: number, most: number): Span[] {
  const step = length / count;
  return Array.from({ length: count }, (_, at) => {
    const [start, end] = [from + at * step, from + (at + 1) * step];
    const first = Math.min(Math.floor(start), most - 1);
    const last = Math.min(Math.max(Math.ceil(end), first + 1), most);
    const weights = Array.from({ length: last - first }, (_none, next) =>
      Math.max(0, Math.min(end, first + next + 1) - Math.max(start, first + next)),
    );
    const sum = weights.reduce((all, each) => all + each, 0);
    return { from: first, weights: sum === 0 ? [1] : weights.map((each) => each / sum) };
  });
}

/** The weighted mean of a row's span. */
function meanOf(data: ArrayLike<number>, at: number, stride: number, { from, weights }: Span): number {
  let sum = 0;
  for (const [next, weight] of weights.entries()) sum += weight * (data[at + (from + next) * stride] ?? 0);
  return sum;
}

/**
 * A part of a picture at another size, each new pixel the mean of what it covers, which neither rings nor leaves out anything.
 *
 * @returns `width` × `height` values, row after row
 * @example resized({ width: 2, height: 1, data: new Uint8Array([0, 100]) }, { left: 0, top: 0, width: 1, height: 1 }, 1, 1)[0] // 50
 */
export function resized(gray: Gray, part: Window, width: number, height: number): Float64Array {
  const across = spansOf(part.left * gray.width, part.width * gray.width, width, gray.width);
  const down = spansOf(part.top * gray.height, part.height * gray.height, height, gray.height);
  const narrow = new Float64Array(width * gray.height);
  const [first, last] = [down[0]?.from ?? 0, down.at(-1)];
  const end = (last?.from ?? 0) + (last?.weights.length ?? 0);
  for (let y = first; y < end; y += 1)
    for (const [x, span] of across.entries())
      narrow[y * width + x] = meanOf(gray.data, y * gray.width, 1, span);
  const made = new Float64Array(width * height);
  for (const [y, span] of down.entries())
    for (let x = 0; x < width; x += 1) made[y * width + x] = meanOf(narrow, x, width, span);
  return made;
}
