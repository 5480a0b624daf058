import type { Random } from "@evenhand/measurement/random";

/** The car itself, as far as it can be seen. */
export type DrawnCar = {
  /** Of the paint, as `#rrggbb`. */
  readonly paint: string;
  readonly trim: string;
  /** What is stamped into its plate. */
  readonly number: string;
  readonly odometer: string;
  /** Where its marks are: dents, stones' chips, stains. */
  readonly seed: number;
  /** From none to eaten through. */
  readonly rust: number;
  /** Of the cloth of a folding roof, as `#rrggbb`; none has a roof of steel. */
  readonly cloth?: string;
  /** Week and year in the tires' sidewalls, such as `3421`; by chance where it is not told. */
  readonly tireWeek?: string;
};

/** What a view is drawn with. */
export type Look = { readonly car: DrawnCar; readonly random: Random };

export const WIDE = 1280;
export const HIGH = 960;
/** What is drawn beyond the frame, since the camera is never quite straight. */
export const RIM = 220;

export const between = (random: Random, from: number, to: number): number => from + (to - from) * random();
export const digits = (value: number): string => value.toFixed(1);

const channel = (hex: string, at: number): number => Number.parseInt(hex.slice(1 + at * 2, 3 + at * 2), 16);

/** A color lighter (above 1) or darker (below 1). */
export function shade(hex: string, by: number): string {
  const made = [0, 1, 2].map((at) => {
    const value = channel(hex, at);
    const moved = by > 1 ? value + (255 - value) * (by - 1) : value * by;
    return Math.round(Math.max(0, Math.min(255, moved)))
      .toString(16)
      .padStart(2, "0");
  });
  return `#${made.join("")}`;
}

/** A fading from one color to others, down (or across) what it fills. */
export function fading(id: string, colors: readonly string[], { across = false } = {}): string {
  const stops = colors.map(
    (color, at) =>
      `<stop offset="${digits((100 * at) / Math.max(1, colors.length - 1))}%" stop-color="${color}"/>`,
  );
  return `<linearGradient id="${id}" x1="0" y1="0" x2="${across ? 1 : 0}" y2="${across ? 0 : 1}">${stops.join("")}</linearGradient>`;
}

/** Fills the frame and its rim. */
export const ground = (fill: string, from = -RIM, to = HIGH + RIM): string =>
  `<rect x="${-RIM}" y="${from}" width="${WIDE + 2 * RIM}" height="${to - from}" fill="${fill}"/>`;

/** A patch with a ragged rim, as rust, stains and spills have it. */
export function blot(random: Random, x: number, y: number, size: number): string {
  const points = Array.from({ length: 14 }, (_, at) => {
    const [angle, radius] = [(at / 14) * 2 * Math.PI, size * between(random, 0.55, 1.1)];
    return `${digits(x + radius * Math.cos(angle))},${digits(y + 0.7 * radius * Math.sin(angle))}`;
  });
  return points.join(" ");
}

/** So many things strewn over a part of the frame. */
export const strewn = (count: number, make: (at: number) => string): string =>
  Array.from({ length: Math.max(0, Math.round(count)) }, (_, at) => make(at)).join("");

/** Rust that has come through: brown with a darker heart, blisters around it. */
export function rusty({ random }: Look, x: number, y: number, size: number): string {
  const browns = ["#8a4a22", "#6b3216", "#a8622c", "#4a2412"];
  const spots = strewn(14, (at) => {
    const [angle, far] = [between(random, 0, 6.3), between(random, 0, size * 1.1)];
    const [cx, cy] = [x + far * Math.cos(angle), y + 0.7 * far * Math.sin(angle)];
    return `<polygon points="${blot(random, cx, cy, between(random, size * 0.06, size * 0.3))}" fill="${browns[at % 4] ?? ""}" opacity="0.75"/>`;
  });
  return `<g filter="url(#soft-1)"><polygon points="${blot(random, x, y, size)}" fill="#7a4220" opacity="0.85"/>${spots}<polygon points="${blot(random, x, y, size * 0.4)}" fill="#3a1d10"/></g>`;
}
