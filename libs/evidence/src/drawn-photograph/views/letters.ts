/** Strokes of capitals and digits on a grid of four by six, as an engraver's stamps have them: no font is asked for. */
const strokes: Readonly<Record<string, string>> = {
  A: "0,6 2,0 4,6|1,4 3,4",
  B: "0,0 0,6 3,6 4,5 4,4 3,3 0,3|0,0 3,0 4,1 4,2 3,3",
  C: "4,1 3,0 1,0 0,1 0,5 1,6 3,6 4,5",
  D: "0,0 0,6 3,6 4,5 4,1 3,0 0,0",
  E: "4,0 0,0 0,6 4,6|0,3 3,3",
  F: "4,0 0,0 0,6|0,3 3,3",
  G: "4,1 3,0 1,0 0,1 0,5 1,6 4,6 4,3 2,3",
  H: "0,0 0,6|4,0 4,6|0,3 4,3",
  I: "1,0 3,0|2,0 2,6|1,6 3,6",
  J: "4,0 4,5 3,6 1,6 0,5",
  K: "0,0 0,6|4,0 0,3 4,6",
  L: "0,0 0,6 4,6",
  M: "0,6 0,0 2,3 4,0 4,6",
  N: "0,6 0,0 4,6 4,0",
  O: "1,0 3,0 4,1 4,5 3,6 1,6 0,5 0,1 1,0",
  P: "0,6 0,0 3,0 4,1 4,2 3,3 0,3",
  Q: "1,0 3,0 4,1 4,5 3,6 1,6 0,5 0,1 1,0|2,4 4,6",
  R: "0,6 0,0 3,0 4,1 4,2 3,3 0,3|2,3 4,6",
  S: "4,1 3,0 1,0 0,1 0,2 1,3 3,3 4,4 4,5 3,6 1,6 0,5",
  T: "0,0 4,0|2,0 2,6",
  U: "0,0 0,5 1,6 3,6 4,5 4,0",
  V: "0,0 2,6 4,0",
  W: "0,0 1,6 2,3 3,6 4,0",
  X: "0,0 4,6|4,0 0,6",
  Y: "0,0 2,3 4,0|2,3 2,6",
  Z: "0,0 4,0 0,6 4,6",
  "0": "1,0 3,0 4,1 4,5 3,6 1,6 0,5 0,1 1,0|1,5 3,1",
  "1": "1,1 2,0 2,6|1,6 3,6",
  "2": "0,1 1,0 3,0 4,1 4,2 0,6 4,6",
  "3": "0,0 4,0 2,3 3,3 4,4 4,5 3,6 1,6 0,5",
  "4": "3,6 3,0 0,4 4,4",
  "5": "4,0 0,0 0,3 3,3 4,4 4,5 3,6 0,6",
  "6": "4,1 3,0 1,0 0,1 0,5 1,6 3,6 4,5 4,4 3,3 0,3",
  "7": "0,0 4,0 1,6",
  "8": "1,0 3,0 4,1 4,2 3,3 1,3 0,2 0,1 1,0|1,3 0,4 0,5 1,6 3,6 4,5 4,4 3,3",
  "9": "4,3 1,3 0,2 0,1 1,0 3,0 4,1 4,5 3,6 1,6 0,5",
  "-": "1,3 3,3",
  ".": "2,5 2,6",
  "/": "0,6 4,0",
};

/** How a line of letters is laid out: where it begins, how high, and how each is drawn. */
export type Lettering = {
  readonly x: number;
  readonly y: number;
  readonly high: number;
  readonly color: string;
  /** Of the stroke, in units of the grid. */
  readonly thick?: number;
};

/** A line of letters as SVG; what has no stamp is left blank. */
export function letters(text: string, { x, y, high, color, thick = 0.7 }: Lettering): string {
  const paths = Array.from(text.toUpperCase()).flatMap((letter, at) =>
    (strokes[letter] ?? "")
      .split("|")
      .filter((line) => line !== "")
      .map((line) => `<polyline points="${line}" transform="translate(${at * 5.6} 0)"/>`),
  );
  return `<g transform="translate(${x} ${y}) scale(${high / 6})" fill="none" stroke="${color}" stroke-width="${thick}" stroke-linecap="round" stroke-linejoin="round">${paths.join("")}</g>`;
}
