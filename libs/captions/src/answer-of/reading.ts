import { convert } from "@evenhand/measurement/unit";
import type { CompiledLexicon } from "@evenhand/lexicon/compile-lexicon";
import type { Answer } from "@evenhand/shared/answer";
import type { Item } from "@evenhand/shared/sheet";
import { UnitSymbol as Unit } from "@evenhand/shared/unit";
import type { UnitSymbol } from "@evenhand/shared/unit";
import type { SaidNumber, SaidOf } from "./said.ts";

/** "Replaced in 2009": a year, and no figure of anything. */
const FIRST_YEAR = 1900;
const IN_YEAR = /\b(?:in|since|from|during|until|till|back to)\b/u;

/** A figure of degrees from here on is one of Fahrenheit, where the lexicon says nothing else of the item. */
const FAHRENHEIT_FROM = 60;

const scaleOf = (from: number | undefined, value: number): string =>
  value >= (from ?? FAHRENHEIT_FROM) ? "degF" : "degC";

/** A number in a unit the item can be read in; `undefined` where it cannot be one of this item. */
const readingOf = (
  item: Item,
  { value, unit }: Pick<SaidNumber, "value" | "unit">,
  said: SaidOf,
  compiled: CompiledLexicon,
): { value: number; unit: UnitSymbol } | undefined => {
  const { bare, text, year } = said;
  const { answering } = compiled.lexicon;
  const own = item.reading;
  if (own === undefined || (unit === undefined && !bare)) return undefined;
  const plain = answering.bareFigures[item.id];
  if (unit === undefined && value >= FIRST_YEAR && value <= year && IN_YEAR.test(text)) return undefined;
  const beside = answering.unitBeside[item.id]?.find(([word]) => word.test(text))?.[1];
  const given = unit === undefined ? (beside ?? plain?.[2]) : (answering.unitsMeant[item.id]?.[unit] ?? unit);
  if (given === undefined) return undefined;
  // "Papers back to 1979" is no count of miles.
  if (unit === undefined && item.id === "identity.odometer" && value >= 1900 && value <= 2100)
    return undefined;
  if (unit === undefined && plain !== undefined && (value < plain[0] || value > plain[1])) return undefined;
  const symbol = Unit.safeParse(
    given === "deg?"
      ? own.unit === "deg"
        ? "deg"
        : scaleOf(answering.fahrenheitFrom[item.id], value)
      : given,
  );
  if (!symbol.success) return undefined;
  // "Two centimeters" of play, where millimeters are read.
  if (symbol.data === "cm" && own.alsoIn.includes("mm"))
    return readingOf(item, { value: value * 10, unit: "mm" }, said, compiled);
  const takes = symbol.data === own.unit || own.alsoIn.includes(symbol.data);
  if (/paint/u.test(item.id) && symbol.data === "mm" && value > 3) return undefined;
  const [least, most] = answering.plausible[item.id] ?? [-Infinity, Infinity];
  const inOwn = takes ? convert(value, symbol.data, own.unit) : Number.NaN;
  return inOwn >= least && inOwn <= most ? { value, unit: symbol.data } : undefined;
};

const TIGHT =
  /\b(?:tight(?! for\b)|none|no (?:discernible|noticeable|real|excess|excessive|detectable|appreciable|significant|lost|unwanted) (?:free )?(?:play|motion|movement)|no play|no slop|no free play|no measurable)\b/u;

/** "Twelve six" of a battery is 12.6. */
const inTenths = (numbers: readonly SaidNumber[]): readonly SaidNumber[] => {
  const [whole, tenth] = numbers;
  const isOne =
    whole?.to === tenth?.from &&
    whole !== undefined &&
    tenth !== undefined &&
    Number.isInteger(whole.value) &&
    Number.isInteger(tenth.value) &&
    tenth.value < 10;
  return isOne ? [{ ...tenth, value: whole.value + tenth.value / 10 }, ...numbers.slice(2)] : numbers;
};

/** "Sixty-one four" of an odometer is 61,400, "eighty-eight two fifty" 88,250. */
const inThousands = (numbers: readonly SaidNumber[]): readonly SaidNumber[] => {
  const [first, rest] = numbers;
  if (first === undefined || rest === undefined || first.to !== rest.from) return numbers;
  const isOne =
    [first, rest].every(({ value, unit }) => Number.isInteger(value) && unit === undefined) &&
    first.value >= 10 &&
    first.value < 1000 &&
    (rest.value < 10 || (rest.value >= 100 && rest.value < 1000));
  const more = rest.value < 10 ? rest.value * 100 : rest.value;
  return isOne ? [{ ...rest, value: first.value * 1000 + more }, ...numbers.slice(2)] : numbers;
};

export const readingAnswer = (item: Item, said: SaidOf, compiled: CompiledLexicon): Answer | undefined => {
  const { answering } = compiled.lexicon;
  const isOther = [answering.notWith, answering.notSpokenWith].some((one) => one[item.id]?.test(said.text));
  if (isOther) return undefined;
  const numbers = answering.inTenths.includes(item.id)
    ? inTenths(said.numbers)
    : answering.inThousands.includes(item.id)
      ? inThousands(said.numbers)
      : said.numbers;
  for (const heard of numbers) {
    const number =
      answering.inHundredths.includes(item.id) && heard.value > 200
        ? { ...heard, value: heard.value / 100 }
        : heard;
    const read = readingOf(item, number, said, compiled);
    if (read !== undefined) return { kind: "reading", unit: read.unit, values: [{ value: read.value }] };
  }
  const isPlay = answering.noughtIsTight.test(item.id);
  if (
    isPlay &&
    item.reading !== undefined &&
    said.numbers.length === 0 &&
    TIGHT.test(said.text) &&
    !/\bnot tight\b/u.test(said.text)
  )
    return { kind: "reading", unit: item.reading.unit, values: [{ value: 0 }] };
  return undefined;
};
