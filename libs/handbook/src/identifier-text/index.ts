/** Characters mistaken for each other on a plate or a photograph. */
const LOOK_ALIKES = ["0OD", "1IL", "2Z", "5S", "8B"] as const;

const lookAlike = (a: string, b: string): boolean =>
  LOOK_ALIKES.some((group) => group.includes(a) && group.includes(b));

/** "No." before a number, with its point or a space, so that no letters of the number itself are taken for it. */
const NUMBER_SIGN = /^\s*(?:(?:NO|NR)(?:\.\s*|\s+)|№\s*)/i;

/** What is written so already: most numbers, and every one that is asked for again. */
const PLAIN = /^[A-Z\d]*$/;

/** Whether a number sign can stand before it at all; few numbers begin so, and looking for one takes longer. */
const mayHaveSign = (text: string): boolean => {
  const first = text.trimStart()[0];
  return first === "N" || first === "n" || first === "№";
};

const inCapitals = (text: string, marks: RegExp): string => {
  if (PLAIN.test(text)) return text;
  const bare = mayHaveSign(text) ? text.replace(NUMBER_SIGN, "") : text;
  return bare.toUpperCase().replaceAll(marks, "");
};

/**
 * A number as it is compared: capitals, without "No." before it, spaces, hyphens, strokes, points or stars.
 *
 * @example normalizeNumber(" 1g4-ah59 h ") // "1G4AH59H"
 */
export const normalizeNumber = (text: string): string => inCapitals(text, /[\s\-./*]/g);

/**
 * The same without number signs, underscores and commas either.
 *
 * @example bareNumber("#44_17,b") // "4417B"
 */
export const bareNumber = (text: string): string => inCapitals(text, /[\s\-./*#_,]/g);

/**
 * The same for a 17-character VIN, which never holds I, O or Q (49 CFR 565.13): I is read as 1, O and Q as 0.
 * Other lengths are left as they are.
 *
 * @example normalizeVin("IM8GDM9AXKPO42788") // "1M8GDM9AXKP042788"
 */
export const normalizeVin = (text: string): string => {
  const number = normalizeNumber(text);
  return number.length === 17 ? number.replaceAll("I", "1").replaceAll(/[OQ]/g, "0") : number;
};

/** Places, counted from 0, at which two texts of one length differ. */
const differsAt = (a: string, b: string): number[] => {
  const places: number[] = [];
  for (let index = 0; index < a.length; index += 1) if (a[index] !== b[index]) places.push(index);
  return places;
};

export type Misreading = "same" | "look-alike" | "exchanged" | "other";

/** `misreading` of numbers that are normalized already. */
export const misreadingOfNormalized = (left: string, right: string): Misreading => {
  if (left === right) return "same";
  if (left.length !== right.length) return "other";
  const [first = 0, second, ...more] = differsAt(left, right);
  if (second === undefined) return lookAlike(left[first] ?? "", right[first] ?? "") ? "look-alike" : "other";
  const neighbors = more.length === 0 && second === first + 1;
  return neighbors && left[first] === right[second] && left[second] === right[first] ? "exchanged" : "other";
};

/**
 * How two readings of one number differ: not at all, by one look-alike character, by two neighbors exchanged,
 * or otherwise. Both are normalized first.
 *
 * @example misreading("5S01", "5501") // "look-alike"
 * @example misreading("1234", "1324") // "exchanged"
 */
export const misreading = (a: string, b: string): Misreading =>
  misreadingOfNormalized(normalizeVin(a), normalizeVin(b));
