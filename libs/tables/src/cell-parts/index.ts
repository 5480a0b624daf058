import { isPlaceOnly, labelOf } from "../label/index.ts";
import { outcomeOf } from "../outcome-words/index.ts";
import { readValue } from "../read-value/index.ts";
import type { Value } from "../read-value/index.ts";
import { namesTrouble, sensedIn } from "../sensed-words/index.ts";
import type { Claim } from "../table-claims/index.ts";
import type { PlacedValue } from "./placed-value.ts";
import { placedValue } from "./placed-value.ts";

/** Where one fact ends and the next begins; a comma between figures is a decimal. */
const BETWEEN = /\s*;\s+|,\s+|\s+[/–-]\s+/;

/** `F good, R dented`: beside F, R is the rear. */
const endsSpelled = (text: string): string =>
  /(?<![\w/.])F(?![\w/.])/.test(text) && !/(?<![\w/.])L(?![\w/.])/.test(text)
    ? text.replaceAll(/(?<![\w/.])R(?![\w/.])/g, "rear").replaceAll(/(?<![\w/.])F(?![\w/.])/g, "front")
    : text;

/** `Filler, 6 mm thick`: a size is of what stands before it. */
const SIZE =
  /^[\d/., ]+\s*(?:mm|cm|in|inch(?:es)?|["″])\s*(?:thick|deep|long|wide|across|high|in size|dia\w*)\b/i;

const LENGTH_ALONE =
  /^(?:about|approx(?:\.|imately)?|some|roughly|around)?\s*[\d/., ]+\s*(?:mm|cm|in|inch(?:es)?|["″])\.?$/i;

/** `Filler along the edge, about 100 mm`: a length by itself is that of the fault before it. */
const isSizeOf = (part: string, before: string | undefined): boolean =>
  before !== undefined && (SIZE.test(part) || (LENGTH_ALONE.test(part.trim()) && namesTrouble(before)));

const withSizes = (parts: readonly string[]): readonly string[] =>
  parts.reduce<string[]>(
    (all, part) =>
      isSizeOf(part, all.at(-1)) ? [...all.slice(0, -1), `${all.at(-1) ?? ""} ${part}`] : [...all, part],
    [],
  );

/** More parts than these are prose. */
const MOST_PARTS = 5;

const partsIn = (text: string): readonly string[] => {
  const parts = withSizes(
    endsSpelled(text)
      .split(BETWEEN)
      .filter((part) => /[\p{L}\d]/u.test(part)),
  );
  return parts.length > 1 && parts.length <= MOST_PARTS ? parts : [];
};

/** Bare figures have the unit that stands with another: `L 8 mm, R 7`. */
const read = (parts: readonly string[]): readonly Value[] => {
  const values = parts.map((part) => readValue(part, { comma: false }));
  const units = [...new Set(values.flatMap(({ numbers }) => numbers?.unit ?? []))];
  return values.map((value) => {
    const unit = value.numbers?.unit ?? (units.length === 1 ? units[0] : undefined);
    return value.numbers === undefined || unit === undefined
      ? value
      : { ...value, numbers: { ...value.numbers, unit } };
  });
};

/** A mark beside what was seen is none of its words. */
const isMarked = ({ outcome, text }: Value): boolean =>
  outcome?.says === "bad" && text !== "" && outcomeOf(text) === undefined;

const splits = ({ value, rated, column }: Claim): boolean =>
  rated !== true &&
  column >= 0 &&
  (value.outcome === undefined || isMarked(value)) &&
  !/\b(?:but|except|exc|bar)\b/i.test(value.text);

/**
 * A cell that says something of each of several places, as a claim for each.
 *
 * @returns nothing unless every part of it begins or ends with a place of its own
 * @example placedParts(claimOf("Headlamps", "L ok, R dim")).length // 2
 */
export const placedParts = (claim: Claim): readonly Claim[] => {
  if (!splits(claim)) return [];
  const ofJoints = claim.names.some(({ text }) => /\bball[- ]?joint/i.test(text));
  const placed = partsIn(claim.value.text).map((part) => placedValue(part, ofJoints));
  const places = placed.map((part) => [...(part?.place.places ?? [])].toSorted().join(" "));
  if (placed.length < 2 || new Set(places).size < places.length) return [];
  const known = placed.flatMap((part) => (part === undefined ? [] : [part]));
  if (known.length < placed.length) return [];
  return read(known.map(({ rest }) => rest)).map((value, at) => ({
    ...claim,
    value,
    where: [...claim.where, ...known.slice(at, at + 1).map(({ place }) => place)],
  }));
};

/** `Ok, good to -25 C`: a word that leads is a part as well. */
const ledText = ({ value, rated, column }: Claim): string | undefined =>
  value.outcome?.says === "good" &&
  rated !== true &&
  column >= 0 &&
  outcomeOf(value.text) === undefined &&
  value.text !== ""
    ? `ok, ${value.text}`
    : undefined;

/** Names of a row that stand for several things, one for each part: `Horn / wipers / washers | ok / ok / no`; `Tyres, rear` is one. */
const namesIn = ({ names }: Claim, count: number): readonly string[] => {
  const own = names.at(-1)?.text.split(/\s*[/,&+]\s*|\s+and\s+/) ?? [];
  const areNames = own.every((name) => name.length > 2 && !isPlaceOnly(labelOf(name)));
  return own.length === count && areNames ? own : [];
};

/**
 * A cell of several facts, as a claim for each: what is said of the row's name, with the part's own words.
 *
 * @example factsIn(claimOf("Coolant", "clean, good to -25 C")).length // 2
 */
export const factsIn = (claim: Claim): readonly Claim[] => {
  const led = ledText(claim);
  if (led === undefined && !splits(claim)) return [];
  const parts = led === undefined ? partsIn(claim.value.text) : partsIn(led).slice(1);
  const own = namesIn(claim, parts.length);
  return read(parts).map((value, at) => {
    const name = own[at];
    const beside = claim.names.map(({ text }) => labelOf(`${text} ${wordsOf(parts[at] ?? "")}`));
    const alone = labelOf(wordsOf(parts[at] ?? ""));
    const others = name === undefined ? restOf(parts[at] ?? "") : undefined;
    if (others !== undefined)
      return {
        ...claim,
        where: [...claim.where, others.place],
        value: readValue(others.rest, { comma: false }),
        note: "",
      };
    const names = name === undefined ? [...beside, alone, ...claim.names] : [labelOf(name)];
    const where = name === undefined ? claim.where : [labelOf(name)];
    return { ...claim, names, where, value, note: "", own: alone };
  });
};

/**
 * Figures with a unit beside a good word, as claims of their own: of coolant that is ok, how far down it is.
 *
 * @example figuresBeside(claimOf("Coolant", "ok, good to -30 F")).length // 1
 */
export const figuresBeside = (claim: Claim): readonly Claim[] => {
  const { value, rated, note, column } = claim;
  if (value.outcome?.says !== "good" || rated === true || column < 0) return [];
  const text = ledText(claim) === undefined ? note : value.text;
  return read(text.split(BETWEEN)).flatMap((one) => {
    if (one.numbers?.unit === undefined || one.numeric) return [];
    const words = wordsOf(one.text);
    const names = [...claim.names.map((name) => labelOf(`${name.text} ${words}`)), labelOf(words)];
    return [{ ...claim, names, value: one, note: "", own: labelOf(words) }];
  });
};

/** `Oil leaks | rocker cover | weeping`: the answer says where, and the remark what. */
export const turnedRound = (claim: Claim): Claim | undefined => {
  const { value, note, names } = claim;
  if (note === "" || value.numeric || value.outcome !== undefined || value.text === "") return undefined;
  const where = labelOf(value.text);
  return {
    ...claim,
    names: [...names.map(({ text }) => labelOf(`${text} ${value.text}`)), where, ...names],
    where: [...claim.where, where],
    value: readValue(note, { comma: false }),
    note: value.text,
  };
};

const restOf = (part: string): PlacedValue | undefined => {
  const placed = placedValue(part);
  return placed?.place.others === true ? placed : undefined;
};

/** A part's words that may name something: without figures but those of engine speed, words of condition, and single letters. */
export const wordsOf = (part: string): string => {
  const named = sensedIn(part)
    .filter(({ senses }) => !senses.every((sense) => "working" in sense && sense.working === "yes"))
    .reduceRight((text, { start, end }) => `${text.slice(0, start)} ${text.slice(end)}`, part);
  return named
    .replaceAll(/(?<![a-z\d])[-+]?(?![1-4][05]00\b)\d[\d.,/:"]*/gi, " ")
    .replaceAll(/(?<![\w'])[a-z](?![\w'])/gi, " ")
    .replaceAll(/\s+/g, " ")
    .trim();
};
