import { type Random, seededRandom } from "@evenhand/measurement/random";
import { between, digits, type DrawnCar, HIGH, type Look, ground, RIM, WIDE } from "./views/look.ts";
import { engineBay } from "./views/engine-bay.ts";
import { gauges } from "./views/gauges.ts";
import { interior } from "./views/interior.ts";
import { lowerPanel } from "./views/lower-panel.ts";
import { numberPlate } from "./views/number-plate.ts";
import { paper } from "./views/paper.ts";
import { profile } from "./views/profile.ts";
import { tire } from "./views/tire.ts";
import { underside } from "./views/underside.ts";

export type { DrawnCar } from "./views/look.ts";

const views = {
  profile,
  "lower-panel": lowerPanel,
  gauges,
  "number-plate": numberPlate,
  "engine-bay": engineBay,
  underside,
  tire,
  interior,
  paper,
} as const;
export type DrawnView = keyof typeof views;
export const DRAWN_VIEWS = Object.keys(views).filter((view): view is DrawnView => view in views);

/** Whoever takes the photograph: where they stand and in which light, by chance but the same for the same seed. */
export type Shot = {
  readonly view: DrawnView;
  readonly car: DrawnCar;
  readonly seed: number;
  /** From dusk 0.5 to noon 1.2. */
  readonly light?: number;
  /** How far the hand is off the tripod, 0 for not at all. */
  readonly hand?: number;
};

const soft = [1, 4, 14, 40].map(
  (by) =>
    `<filter id="soft-${by}" x="-30%" y="-30%" width="160%" height="160%"><feGaussianBlur stdDeviation="${by}"/></filter>`,
);

/** Turned, near and aside a little, around the middle. */
function camera(random: Random, hand: number): string {
  const [x, y] = [between(random, -60, 60) * hand, between(random, -45, 45) * hand];
  const [turn, near] = [between(random, -4, 4) * hand, 1 + between(random, -0.04, 0.12) * hand];
  const lean = between(random, -3, 3) * hand;
  return `translate(${digits(WIDE / 2 + x)} ${digits(HIGH / 2 + y)}) rotate(${turn.toFixed(2)}) skewX(${lean.toFixed(2)}) scale(${near.toFixed(3)}) translate(${-WIDE / 2} ${-HIGH / 2})`;
}

/** What light does: a bright side, dark corners, and the whole of it darker or lighter. */
function lit(random: Random, light: number): string {
  const [x, y] = [between(random, 25, 75), between(random, 15, 55)];
  const [color, amount] = light < 1 ? ["#000", 1 - light] : ["#fff", (light - 1) * 0.6];
  return `<radialGradient id="lit" cx="${digits(x)}%" cy="${digits(y)}%" r="80%"><stop offset="0" stop-color="#fff" stop-opacity="0.16"/><stop offset="0.5" stop-color="#fff" stop-opacity="0"/><stop offset="1" stop-color="#000" stop-opacity="0.5"/></radialGradient>
    <rect width="${WIDE}" height="${HIGH}" fill="url(#lit)"/><rect width="${WIDE}" height="${HIGH}" fill="${color}" opacity="${amount.toFixed(3)}"/>`;
}

/**
 * A photograph of an invented car as SVG, 1280 × 960, without grain, to try on it what is made for photographs. The
 * same car in another shot is the same car seen anew; nothing is taken from any photograph.
 *
 * @returns SVG without letters of any font, so that it is drawn alike everywhere
 */
export function drawnPhotograph({ view, car, seed, light = 1, hand = 1 }: Shot): string {
  const shooting = seededRandom(seed);
  const look: Look = { car, random: seededRandom(car.seed * 1009 + DRAWN_VIEWS.indexOf(view)) };
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDE}" height="${HIGH}" viewBox="0 0 ${WIDE} ${HIGH}"><defs>${soft.join("")}</defs>
    <g transform="${camera(shooting, hand)}">${ground("#555", -RIM)}${views[view](look)}</g>${lit(shooting, light)}</svg>`;
}
