import { lexiconVersion1 } from "@evenhand/lexicon/lexicon-version-1";
import { convert, dimensionOf } from "@evenhand/measurement/unit";
import type { Item } from "@evenhand/shared/sheet";
import type { UnitSymbol } from "@evenhand/shared/unit";
import { isNumeric, numbersOf } from "../read-value/numbers.ts";
import type { Numbers } from "../read-value/numbers.ts";
import { answered, unanswered } from "./context.ts";
import type { Answered, Asked } from "./context.ts";

type Spec = NonNullable<Item["reading"]>;

const isPlausible = (spec: Spec, value: number, unit: UnitSymbol): boolean => {
  const [least, most] = spec.plausible;
  const base = convert(value, unit, spec.unit);
  return base >= least && base <= most;
};

const sameDimension = (spec: Spec, unit: UnitSymbol): boolean => dimensionOf(unit) === dimensionOf(spec.unit);

/** Units in which a bare number makes sense, the sheet's own first: `Tread: 7` is thirty-seconds, `Tread: 5.5` may be either. */
const guessed = (spec: Spec, values: readonly number[]): UnitSymbol | undefined =>
  [spec.unit, ...spec.alsoIn].find(
    (unit) => unit !== "mV" && values.every((value) => isPlausible(spec, value, unit)),
  );

/** Figures exact to what was written: 0.21875 in are 7 thirty-seconds. */
const in32 = (values: readonly number[]): number[] =>
  values.map((value) => Math.round(value * 32 * 1e6) / 1e6);

const takes32 = (spec: Spec): boolean => spec.unit === "1/32in" || spec.alsoIn.includes("1/32in");

/** A figure that stands in the remarks beside a tick, where nothing but figures or a unit stands with it. */
export const notedNumbers = (note: string): Numbers | undefined => {
  const numbers = numbersOf(note, { comma: false });
  return isNumeric(note) || numbers?.unit !== undefined || numbers?.of32 === true ? numbers : undefined;
};

/** `165 dry / 175 wet`: without the figures that its words make another reading, where others are left. */
const ownNumbers = ({ item, value }: Asked): Numbers | undefined => {
  const words = lexiconVersion1.marks.otherFigure[item.id];
  if (words === undefined || value.numeric) return value.numbers;
  const other = new RegExp(`\\d[\\d.]*\\s*(?:psi|bar)?\\s*\\(?(?:${words.join("|")})\\b`, "gi");
  return numbersOf(value.text.replaceAll(other, " "), { comma: false }) ?? value.numbers;
};

/** `7/32` is of an inch whatever else the heading says; and in a column of thirty-seconds, `7` is seven of them. */
const written = (
  asked: Asked,
  spec: Spec,
): { readonly values: readonly number[]; readonly unit?: UnitSymbol } | undefined => {
  const numbers = ownNumbers(asked) ?? notedNumbers(asked.note);
  if (numbers === undefined) return undefined;
  const values = numbers.values;
  const fraction = numbers.of32 === true || (numbers.unit === "1/32in" && values.every((value) => value < 1));
  if (fraction) return takes32(spec) ? { values: in32(values), unit: "1/32in" } : { values, unit: "in" };
  if (
    numbers.unit === undefined &&
    asked.unit === "1/32in" &&
    values.every((value) => value < 1 && value > 0)
  )
    return { values: in32(values), unit: "1/32in" };
  const unit = numbers.unit ?? asked.unit;
  return unit === undefined ? { values } : { values, unit };
};

/** A degree without a letter is one of temperature or angle, as the item asks. */
const fitted = (spec: Spec, unit: UnitSymbol): UnitSymbol => {
  if (unit === "deg" && dimensionOf(spec.unit) === "temperature") return spec.unit;
  if (unit === "degC" && spec.unit === "K") return "K";
  if (unit === "degF" && spec.unit === "deg") return "deg";
  return unit;
};

const answer = (values: readonly number[], unit: UnitSymbol, sure: boolean): Answered =>
  answered({ kind: "reading", unit, values: values.slice(0, 60).map((value) => ({ value })) }, sure);

/** Several numbers in one cell are several readings; past what any reading asks for they are something else. */
const MOST_READINGS = 9;

/** `12.3 rest / 9.4 crank`: words between figures that name no spot of one reading. */
const namesSeveral = ({ text, numeric }: Asked["value"]): boolean =>
  !numeric &&
  /\d\D*[a-z]{2,}\D*\d/i.test(text.replaceAll(SPOTS, " ")) &&
  !/\d\s*\/\s*(?:32|16|8|4|2)\b/.test(text);

const SPOTS =
  /\b(?:inner|middle|outer|cent(?:er|re)|inside|outside|in|out|mid|edge|and|to|then|by|psi|mm|mils?|bar|inch(?:es)?|lowest|min|max|um|µm|microns?|volts?|deg(?:rees)?|rpm|cold|hot|dry|each|both|all)\b/gi;

/** A reading: its numbers, in the unit that stands in the cell, the column or the row, else in the one of the item's in which they make sense. */
export const readingOf = (asked: Asked): Answered => {
  const spec = asked.item.reading;
  const found = spec === undefined ? undefined : written(asked, spec);
  if (spec === undefined || found === undefined) return unanswered("no-number");
  if (found.values.length > MOST_READINGS) return unanswered("no-number");
  if (found.values.length > 1 && namesSeveral(asked.value)) return unanswered("several-figures");
  // Between figures of one reading stand no words: `165 dry / 175 wet` are two.
  const alike = found.values.length === 1 || asked.value.numeric || asked.value.text === "";
  if (found.unit === undefined) {
    const unit = guessed(spec, found.values);
    return unit === undefined ? unanswered("not-plausible") : answer(found.values, unit, alike);
  }
  const unit = fitted(spec, found.unit);
  if (!sameDimension(spec, unit)) return unanswered("other-unit");
  const plausible = found.values.every((value) => isPlausible(spec, value, unit));
  return plausible ? answer(found.values, unit, alike) : unanswered("not-plausible");
};
