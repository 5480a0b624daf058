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

/** Of each new pixel of a side the first old one it covers, and how much it takes of each from there on. */
type Spans = { readonly firsts: Int32Array; readonly weights: readonly Float64Array[] };

function spansOf(from: number, length: number, count: number, most: number): Spans {
  const step = length / count;
  const firsts = new Int32Array(count);
  const weights = Array.from({ length: count }, (_, at) => {
    const [start, end] = [from + at * step, from + (at + 1) * step];
    const first = Math.max(0, Math.min(Math.floor(start), most - 1));
    const last = Math.min(Math.max(Math.ceil(end), first + 1), most);
    firsts[at] = first;
    const taken = Float64Array.from({ length: last - first }, (_none, next) =>
      Math.max(0, Math.min(end, first + next + 1) - Math.max(start, first + next)),
    );
    const sum = taken.reduce((all, each) => all + each, 0);
    return sum === 0 ? new Float64Array([1]) : taken.map((each) => each / sum);
  });
  return { firsts, weights };
}

/** Written as loops over numbers: every photograph goes through here. */
function narrowed({ width, height, data }: Gray, { firsts, weights }: Spans): Float64Array {
  const made = new Float64Array(firsts.length * height);
  for (let x = 0; x < firsts.length; x += 1) {
    const [first, taken] = [firsts[x] ?? 0, weights[x] ?? new Float64Array()];
    for (let y = 0; y < height; y += 1) {
      let sum = 0;
      for (let next = 0; next < taken.length; next += 1)
        sum += (taken[next] ?? 0) * (data[y * width + first + next] ?? 0);
      made[y * firsts.length + x] = sum;
    }
  }
  return made;
}

function lowered(values: Float64Array, width: number, { firsts, weights }: Spans): Float64Array {
  const made = new Float64Array(width * firsts.length);
  for (let y = 0; y < firsts.length; y += 1) {
    const [first, taken] = [firsts[y] ?? 0, weights[y] ?? new Float64Array()];
    for (let x = 0; x < width; x += 1) {
      let sum = 0;
      for (let next = 0; next < taken.length; next += 1)
        sum += (taken[next] ?? 0) * (values[(first + next) * width + x] ?? 0);
      made[y * width + x] = sum;
    }
  }
  return made;
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
  return lowered(narrowed(gray, across), width, down);
}

/**
 * A picture in colors as one in gray, each pixel its luma (ITU-R BT.709-6, item 3.2: 0.2126 red, 0.7152 green, 0.0722 blue).
 *
 * @param colors four bytes a pixel, red, green, blue and how opaque, as a browser's canvas gives them
 * @throws RangeError where there are not four bytes a pixel
 * @example grayOfColors({ width: 1, height: 1, data: new Uint8ClampedArray([255, 255, 255, 255]) }).data[0] // 255
 */
export function grayOfColors(colors: {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8ClampedArray;
}): Gray {
  const { width, height, data } = colors;
  if (data.length !== width * height * 4) throw new RangeError("A picture in colors has four bytes a pixel.");
  const gray = new Uint8Array(width * height);
  for (let at = 0; at < gray.length; at += 1)
    gray[at] = Math.round(
      0.2126 * (data[4 * at] ?? 0) + 0.7152 * (data[4 * at + 1] ?? 0) + 0.0722 * (data[4 * at + 2] ?? 0),
    );
  return { width, height, data: gray };
}
