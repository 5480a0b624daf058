import type { Draws } from "./draws.ts";

/** Codes of a car that tell one story: cast before built, one size of tire, one number everywhere. By item, or item and place. */
export type CarCodes = { readonly number: string; readonly texts: ReadonlyMap<string, string> };

const LETTERS = "ABCDEFGHJKLMNPRSTUVWXYZ";
const DIGITS = "0123456789";

const drawn = (shape: string, { pick }: Draws): string =>
  Array.from(shape, (sign) =>
    sign === "A" ? pick(Array.from(LETTERS)) : sign === "0" ? pick(Array.from(DIGITS)) : sign,
  ).join("");

const dayBefore = (built: string, days: number): string =>
  new Date(Date.parse(built) - Math.round(days) * 86_400_000).toISOString().slice(0, 10);

const twoDigits = (value: number): string => String(value).padStart(2, "0");

const PARTS = ["block", "left-head", "right-head", "intake", "carburetor", "distributor", "gearbox", "axle"];
const CASTINGS = ["block", "left-head", "right-head", "intake", "exhaust-manifolds", "gearbox", "axle"];
const WHEELS = ["left-front", "left-rear", "spare", "right-rear", "right-front"];

const datesOf = (built: string, draws: Draws): [string, string][] => [
  ["identity.build-date", built],
  ...PARTS.map((part): [string, string] => [
    `identity.date-code@${part}`,
    dayBefore(built, draws.between([8, 50])),
  ]),
  ["identity.date-code@alternator", dayBefore(built, draws.between([8, 50]))],
];

const tiresOf = (draws: Draws): [string, string][] => {
  const made = `${twoDigits(1 + Math.floor(draws.between([0, 51])))}24`;
  const [maker, size] = [drawn("A0A", draws), drawn("AA", draws)];
  return WHEELS.flatMap((wheel): [string, string][] => [
    [`wheels.tire-size@${wheel}`, "205/75R15"],
    [`wheels.tire-identification@${wheel}`, `0${maker} ${size}Y ${made}`],
    [`wheels.load-and-speed@${wheel}`, "97S"],
  ]);
};

/** @example codesOf(1968, draws).texts.get("identity.title-number") // its number */
export const codesOf = (modelYear: number, draws: Draws): CarCodes => {
  const month = Math.floor(draws.between([1, 7]));
  const built = `${modelYear}-${twoDigits(month)}-${twoDigits(Math.floor(draws.between([1, 28])))}`;
  const number = drawn("AA0-000000", draws);
  const paint = drawn("A0", draws);
  const texts = new Map<string, string>([
    ["identity.vin", number],
    ["identity.title-number", number],
    ["identity.partial-vin", number.slice(-6)],
    ["identity.engine-number", drawn("A0-00000", draws)],
    ["identity.paint-code", paint],
    ["doors.first-color", paint],
    ...CASTINGS.map((part): [string, string] => [`identity.casting-number@${part}`, drawn("0000000", draws)]),
    ...datesOf(built, draws),
    ...tiresOf(draws),
  ]);
  return { number, texts };
};

/** A code of no particular meaning, for items the story says nothing of. */
export const anyCode = (draws: Draws): string => drawn("A0000", draws);
