import { UnitSymbol } from "@evenhand/shared/unit";
import { folded } from "../folded/index.ts";

/** How people write units in sheets. No source: the trade's own habits; the symbols are those of `shared/unit`. */
const WORDS: Readonly<Partial<Record<UnitSymbol, readonly string[]>>> = {
  mm: ["mm", "millimeter", "millimeters", "millimetre", "millimetres"],
  cm: ["cm", "centimeter", "centimeters", "centimetre", "centimetres"],
  km: ["km", "kms", "kilometers", "kilometres"],
  um: ["um", "µm", "μm", "micron", "microns", "mic"],
  in: ["in", "in.", "inch", "inches", '"', "″", "”", "''"],
  "1/32in": [
    "1/32",
    "32nd",
    "32nds",
    "/32",
    "x/32",
    "1/32in",
    "1/32 in",
    '1/32"',
    "32nds of an inch",
    "32nds in",
    "in 32nds",
  ],
  mil: ["mil", "mils", "thou"],
  ft: ["ft", "feet", "foot"],
  mi: ["mi", "mile", "miles", "mi."],
  kPa: ["kpa"],
  bar: ["bar", "bars"],
  psi: ["psi", "lbs", "lb/in2", "lb/in²", "psi.", "pounds"],
  "kgf/cm2": ["kg/cm2", "kg/cm²", "kgf/cm2", "kgf/cm²"],
  inHg: ["inhg", "in hg", "in-hg", '"hg', "in. hg", "inches hg", "inches of mercury"],
  mmHg: ["mmhg", "mm hg"],
  mV: ["mv"],
  V: ["v", "volt", "volts", "vdc", "v dc"],
  degC: ["°c", "c", "deg c", "degc", "celsius", "ºc"],
  degF: ["°f", "f", "deg f", "degf", "fahrenheit", "ºf"],
  "1": [":1", "to 1", ": 1"],
  "%": ["%", "percent", "per cent", "pct"],
  rpm: ["rpm", "revs", "r/min"],
  "1/min": ["1/min", "min-1"],
  "km/h": ["km/h", "kmh", "kph"],
  mph: ["mph"],
  "m/s": ["m/s"],
  "N.m": ["nm", "n·m", "n.m", "n m"],
  "lbf.ft": [
    "ft-lb",
    "ft-lbs",
    "ft lb",
    "ft lbs",
    "lb-ft",
    "lb ft",
    "lbft",
    "ft.lb",
    "ft/lbs",
    "lb·ft",
    "lbf·ft",
    "ftlb",
    "ft·lb",
  ],
  "lbf.in": ["in-lb", "in-lbs", "in lb", "lb-in"],
  kg: ["kg"],
  l: ["l", "liter", "liters", "litre", "litres"],
  cm3: ["cc", "cm3", "cm³", "ccm"],
  in3: ["ci", "cid", "cu in", "cu. in.", "in3", "in³", "cubic inches"],
  deg: ["°", "deg", "degree", "degrees", "º", "° btdc", "deg btdc", "degrees btdc", "btdc"],
};

const byWord: ReadonlyMap<string, UnitSymbol> = new Map(
  UnitSymbol.options.flatMap((unit) => (WORDS[unit] ?? []).map((word) => [word, unit] as const)),
);

/** Without the word before it: `in psi`, `unit: mm`. */
const bareUnit = (text: string): string => text.replace(/^(?:in|unit:?) (?=[a-zµ°%0-9])/, "");

/**
 * The unit a text names, and nothing else.
 *
 * @example findUnit("Ft-Lbs") // "lbf.ft"
 */
export const findUnit = (text: string): UnitSymbol | undefined => {
  const word = folded(text);
  return byWord.get(word) ?? byWord.get(bareUnit(word));
};

/** Units nobody writes for anything else, so that they may stand in a name without brackets: `Oil psi`, `Tread 32nds`. */
const PLAIN_UNITS =
  /(?:^|\s)(psi|kpa|bar|mm|kms?|mils?|µm|μm|microns?|32nds?|inhg|rpm|mph|km\/h|kph|ft-lbs?|nm|°[cf]|%)(?=\s|$|[.,;:)])/i;

const AT_SPEED = /\d\s*(?:rpm|mph|km\/h|kph)\b/i;

/**
 * The unit in a name: in brackets, behind a comma, or bare where the word is nothing but a unit; and the name without it.
 *
 * @example unitIn("Tread (32nds)") // { unit: "1/32in", rest: "Tread" }
 */
export const unitIn = (text: string): { readonly unit?: UnitSymbol; readonly rest: string } => {
  const bracket = /[([{]([^()[\]{}]{1,40})[)\]}]/.exec(text);
  const inBracket =
    bracket?.[1] === undefined
      ? undefined
      : (findUnit(bracket[1]) ?? findUnit(bracket[1].split(/\s*[,;]/)[0] ?? ""));
  if (bracket !== null && inBracket !== undefined)
    return { unit: inBracket, rest: text.replace(bracket[0], " ").trim() };
  const behind = /(?:[,;]|\s\/)\s*([^,;/\s]{1,10}(?:\s\w{1,4})?)\s*$/.exec(text);
  const afterComma = behind?.[1] === undefined ? undefined : findUnit(behind[1]);
  if (behind !== null && afterComma !== undefined)
    return { unit: afterComma, rest: text.slice(0, behind.index).trim() };
  const bare = PLAIN_UNITS.exec(text);
  const plainUnit = bare?.[1] === undefined ? undefined : findUnit(bare[1]);
  if (bare === null || plainUnit === undefined) return { rest: text };
  const rest = text.replace(bare[0], " ").trim();
  // `At 2000 rpm` says at what it was read.
  return AT_SPEED.test(text) ? { rest } : { unit: plainUnit, rest };
};
