import { tokenize } from "@evenhand/lexicon/tokenize";
import type { UnitSymbol } from "@evenhand/shared/unit";
import { remembered } from "../remembered/index.ts";
import { unitIn } from "../unit-words/index.ts";

/** Words that say where: `left`, `right`, `front`, `rear`, `upper`, `lower`, `inner`, `outer`, and `driver`, `passenger`. */
export type PlaceWord =
  | "left"
  | "right"
  | "front"
  | "rear"
  | "upper"
  | "lower"
  | "inner"
  | "outer"
  | "middle"
  | "driver"
  | "passenger";

/** What a name in a sheet says: its words, where, in what unit, and what stands in brackets. */
export type Label = {
  readonly text: string;
  /** Every word, singular and in American spelling, those of the place included. */
  readonly stems: readonly string[];
  /** The words that are neither place nor number. */
  readonly core: readonly string[];
  readonly places: ReadonlySet<PlaceWord>;
  /** `all four`, `both`. */
  readonly all: boolean;
  /** `Other seats`: those of which nothing was said before. */
  readonly others: boolean;
  readonly plural: boolean;
  /** A number that counts cylinders or places. */
  readonly number?: number;
  readonly unit?: UnitSymbol;
  readonly remark?: string;
};

/** Short forms of places, longest first. `L/R` by itself is a corner, beside other words it is both sides. */
const SHORT: readonly (readonly [pattern: RegExp, words: string])[] = [
  [/(?<![A-Za-z])N\s?\/\s?S\s?\/?\s?F(?:RONT)?(?![A-Za-z])|\bNSF\b/gi, " left front "],
  [/(?<![A-Za-z])N\s?\/\s?S\s?\/?\s?R(?:EAR)?(?![A-Za-z])|\bNSR\b/gi, " left rear "],
  [/(?<![A-Za-z])O\s?\/\s?S\s?\/?\s?F(?:RONT)?(?![A-Za-z])|\bOSF\b/gi, " right front "],
  [/(?<![A-Za-z])O\s?\/\s?S\s?\/?\s?R(?:EAR)?(?![A-Za-z])|\bOSR\b/gi, " right rear "],
  [/(?<![A-Za-z])[Nn]\s?\/\s?[Ss](?![A-Za-z])|\bNS\b|\b[Nn][Ee][Aa][Rr]\s?-?[Ss][Ii][Dd][Ee]\b/g, " left "],
  [/(?<![A-Za-z])[Oo]\s?\/\s?[Ss](?![A-Za-z])|\bOS\b|\b[Oo][Ff][Ff]\s?-?[Ss][Ii][Dd][Ee]\b/g, " right "],
  [/^\s*L\s?\/\s?R\s*$/i, " left rear "],
  [/(?<![A-Za-z/])L\s?\/\s?R(?![A-Za-z/])/g, " left right "],
  [
    /(?<![A-Za-z/])L\s?[/.-]\s?F\.?(?![A-Za-z/])|\bLHF\b|\bLF\b|\bFL\b|(?<![A-Za-z/])F\s?\/\s?L(?![A-Za-z/])|\bFLH\b|\bL\/?H\/?F\b/g,
    " left front ",
  ],
  [
    /(?<![A-Za-z/])R\s?[/.-]\s?F\.?(?![A-Za-z/])|\bRHF\b|\bRF\b|\bFR\b|(?<![A-Za-z/])F\s?\/\s?R(?![A-Za-z/])|\bFRH\b|\bR\/?H\/?F\b/g,
    " right front ",
  ],
  [
    /\bLHR\b|\bLR\b|\bRL\b|(?<![A-Za-z/])R\s?\/\s?L(?![A-Za-z/])|\bRLH\b|\bL\/?H\/?R\b|\bBL\b/g,
    " left rear ",
  ],
  [
    /(?<![A-Za-z/])R\s?[/.-]\s?R\.?(?![A-Za-z/])|\bRHR\b|\bRR\b|\bRRH\b|\bR\/?H\/?R\b|\bBR\b/g,
    " right rear ",
  ],
  [/\bL\/?H\/?S?\b|(?<![A-Za-z\d/'])L(?![A-Za-z\d/'])/g, " left "],
  [/\bR\/?H\/?S?\b|(?<![A-Za-z\d/'])R(?![A-Za-z\d/'])/g, " right "],
  [/\bD\/S\b|\bdriver'?s?[ -]side\b/gi, " driver "],
  [/\bP\/S\b|\bpass(?:enger)?'?s?[ -]side\b/gi, " passenger "],
  [/\bpass\b/gi, " passenger "],
  [/\bfrt\b/gi, " front "],
  [/(?<![A-Za-z\d/'.])F(?![A-Za-z\d/'.])/g, " front "],
];

const PLACES: Readonly<Record<string, PlaceWord>> = {
  left: "left",
  right: "right",
  front: "front",
  forward: "front",
  rear: "rear",
  back: "rear",
  aft: "rear",
  upper: "upper",
  top: "upper",
  lower: "lower",
  bottom: "lower",
  inner: "inner",
  inside: "inner",
  outer: "outer",
  outside: "outer",
  middle: "middle",
  driver: "driver",
  passenger: "passenger",
};

/** Words that say nothing of what is looked at. */
const EMPTY = new Set(
  "the of on in a an and or for to with from is are any all each both every round around s check checked condition state inspect inspection visual general measured no does do did was it be there work working what which how shown has have level effective properly correctly generally clean good okay any when so if own".split(
    " ",
  ),
);

const ALL =
  /\b(all|both|each|every|four corners|x ?4|all ?round|pair|set of|throughout|all over|everywhere|neither|none (?:of them )?works?|none working)\b/i;

/** What people write short. No source: the trade's own habits. */
const ABBREVIATIONS: Readonly<Record<string, string>> = {
  temp: "temperature",
  press: "pressure",
  pres: "pressure",
  elec: "electric",
  eng: "engine",
  trans: "transmission",
  tranny: "transmission",
  gbox: "gearbox",
  cyl: "cylinder",
  comp: "compression",
  susp: "suspension",
  w: "with",
  windshld: "windshield",
  qtr: "quarter",
  lh: "left",
  rh: "right",
  mileage: "odometer",
  odo: "odometer",
  speedo: "speedometer",
  brk: "brake",
  pkg: "parking",
  headlight: "headlamp",
  light: "lamp",
  damper: "damper",
  alt: "alternator",
  batt: "battery",
  rad: "radiator",
  hyd: "hydraulic",
  wndw: "window",
  thick: "thickness",
  ext: "exterior",
  int: "interior",
  u: "universal",
  ujs: "uj",
  vib: "vibration",
  vibes: "vibration",
  tickover: "idle",
  min: "minute",
};

/** The driver's floor, carpet or belt is the one in front; the driver's side is a side. */
const OWN_SEAT = /\b(?:driver|passenger|pass)(?:'?s)?\b/i;

const expanded = (text: string): string => {
  let whole = text
    .replaceAll(/\b(?:[A-Z]\.){2,}/g, (letters) => letters.replaceAll(".", ""))
    .replaceAll(/(?<![A-Za-z])A\s?\/\s?C(?![A-Za-z])/gi, " air conditioning ")
    .replaceAll(/(?<![A-Za-z])U\s?\/\s?J(?![A-Za-z])/gi, " universal joint ")
    .replaceAll(/(?<![A-Za-z])P\s?\/?\s?S(?=\s+(?:hose|pump|leak|fluid|box|rack|belt))/gi, " power steering ")
    .replaceAll(/(?<![A-Za-z])P\s?\/\s?(?=windows?|seats?|locks?|antenna|aerial|top)/gi, "power ")
    .replaceAll(/\bprop shaft/gi, "propshaft")
    .replaceAll(/&|\+/g, " and ")
    .replaceAll(/\bno\.(?!\s*\d)/gi, " number ");
  for (const [pattern, words] of SHORT) whole = whole.replace(pattern, words);
  return whole;
};

const NUMBERED =
  /(?:\bcyl(?:inder)?s?\.?\s*(?:no\.?|#)?\s*|#\s*|\bno\.?\s*)(\d{1,2})\b|(?:^|\s)(\d{1,2})\s*$/i;

/** What stands in brackets and is no unit: a remark. */
const remarkIn = (text: string): { readonly remark?: string; readonly rest: string } => {
  const found = /[([{]([^()[\]{}]*)[)\]}]/.exec(text);
  if (found?.[1] === undefined) return { rest: text };
  return { remark: found[1].trim(), rest: text.replace(found[0], " ") };
};

const stemsOf = (text: string): string[] =>
  tokenize(text)
    .filter(({ kind, stem }) => kind === "word" || /^\d{3,5}$/.test(stem))
    .map(({ stem }) => (Object.hasOwn(ABBREVIATIONS, stem) ? (ABBREVIATIONS[stem] ?? stem) : stem));

/** "Bumper (F)", "Disc pads F" are those in front; "Coolant temp (F)" is in Fahrenheit. */
const withEnds = (text: string): string =>
  /temp|boil/i.test(text) ? text.replace(/\s\(?([FC])\)?\s*$/, " (°$1)") : withFrontOrRear(text);

const withFrontOrRear = (text: string): string =>
  /ambient|coolant|freeze|point|air|°/i.test(text) || !/[a-z]/i.test(text.replace(/\(?[FR]\)?\s*$/, ""))
    ? text
    : text.replace(/\(F\)|(?<=[a-z] )F$/, "front").replace(/\(R\)/, "rear");

const OTHERS = /^\s*(?:all\s+)?(?:the\s+)?(?:others?|remaining|rest)(?:\s+of)?(?:\s+the)?\s+(?=[a-z])/i;

const parse = (text: string): Label => {
  const { unit, rest: named } = unitIn(withEnds(text));
  const others = OTHERS.test(named);
  const rest = named.replace(OTHERS, "");
  const bracket = remarkIn(rest);
  const whole = expanded(`${bracket.rest} ${bracket.remark ?? ""}`);
  const tokens = stemsOf(whole);
  const stems = tokens.filter((stem) => !EMPTY.has(stem));
  const places = new Set(
    stems.flatMap((stem) => (Object.hasOwn(PLACES, stem) ? [PLACES[stem] ?? "left"] : [])),
  );
  if (OWN_SEAT.test(rest) && !/\b(?:front|rear|back|side)\b/i.test(rest)) places.add("front");
  const number = /\d\s*[/&,]\s*\d/.test(bracket.rest) ? null : NUMBERED.exec(bracket.rest);
  return {
    text,
    stems,
    core: stems.filter((stem) => !Object.hasOwn(PLACES, stem)),
    places,
    all: others || ALL.test(whole),
    others,
    plural: tokenize(bracket.rest).some(({ plural }) => plural),
    ...(number === null ? {} : { number: Number(number[1] ?? number[2]) }),
    ...(unit === undefined ? {} : { unit }),
    ...(bracket.remark === undefined ? {} : { remark: bracket.remark }),
  };
};

const known = remembered(parse, 4_000);

/**
 * A name as a sheet writes it, taken apart.
 *
 * @example labelOf("N/S/F tyre tread (mm)").stems // ["left", "front", "tire", "tread"]
 */
export const labelOf = (text: string): Label => known(text.slice(0, 200));

/** A name that says nothing but where: `LF`, `Front`, `Driver's side`. */
export const isPlaceOnly = (label: Label): boolean => label.core.length === 0 && label.places.size > 0;
