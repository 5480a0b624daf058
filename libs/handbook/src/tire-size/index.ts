import type { Estimate } from "@evenhand/measurement/estimate";
import { rectangular } from "@evenhand/measurement/type-b";
import { derived, exactly } from "../interval/index.ts";

export type Construction = "radial" | "bias" | "bias-belted";

/** A tire size, read. */
export type TireSize = {
  readonly form: "metric" | "flotation" | "alphanumeric" | "numeric";
  /** Only where the size itself says it. */
  readonly construction?: Construction;
  /** Equal for two writings of one size: speed and load marks, construction and a leading P left out. */
  readonly key: string;
  /** Rim diameter, in. */
  readonly rim: number;
  /** Overall diameter, in; its uncertainty is 0 where the size itself states it exactly. */
  readonly diameter: Estimate;
};

const INCH = 25.4;

/** Aspect of a metric size that does not state one: between 80 and 83 %; common practice, no source. */
const UNSTATED_ASPECT = 82;
/** How far real tires lie from a diameter worked out from an older size, as a share; common practice, no source. */
const OLDER_SHARE = 0.02;

const roughly = (diameter: number): Estimate =>
  derived(diameter, [{ standardUncertainty: rectangular(OLDER_SHARE * diameter) }]);

const constructionOf = (mark: string | undefined): Pick<TireSize, "construction"> => {
  if (mark?.endsWith("R")) return { construction: "radial" };
  if (mark === "B") return { construction: "bias-belted" };
  return mark === "D" || mark === "-" ? { construction: "bias" } : {};
};

type Reader = {
  readonly pattern: RegExp;
  readonly read: (groups: Record<string, string | undefined>) => TireSize;
};

/** Speed letter and construction between aspect and rim, and load index, speed and load range after the rim. */
const BEFORE_RIM = "(?<mark>[QSTHVWYZ]?R|B|D|-)";
const AFTER_RIM = String.raw`(?:LT|C)?(?:\d{2,3}(?:/\d{2,3})?[A-Z]\d?|[B-F])?`;

const metric: Reader = {
  pattern: new RegExp(
    String.raw`^(?<prefix>P|LT|T)?(?<section>\d{3})/(?<aspect>\d{2,3})${BEFORE_RIM}(?<rim>\d{2})(?<suffix>LT|C)?${AFTER_RIM}$`,
  ),
  read: ({ prefix, section, aspect, mark, rim, suffix }) => ({
    form: "metric",
    ...constructionOf(mark),
    key: `${prefix === "LT" || suffix !== undefined ? "LT" : ""}${section}/${aspect}-${rim}`,
    rim: Number(rim),
    diameter: exactly(Number(rim) + (2 * Number(section) * Number(aspect)) / 100 / INCH),
  }),
};

const metricWithoutAspect: Reader = {
  pattern: new RegExp(String.raw`^(?<section>[123]\d{2})${BEFORE_RIM}(?<rim>\d{2})${AFTER_RIM}$`),
  read: ({ section, mark, rim }) => ({
    form: "metric",
    ...constructionOf(mark),
    key: `${section}-${rim}`,
    rim: Number(rim),
    diameter: roughly(Number(rim) + (2 * Number(section) * UNSTATED_ASPECT) / 100 / INCH),
  }),
};

const flotation: Reader = {
  pattern: new RegExp(
    String.raw`^(?<od>\d{2}(?:\.\d+)?)X(?<section>\d{1,2}(?:\.\d+)?)${BEFORE_RIM}(?<rim>\d{2})${AFTER_RIM}$`,
  ),
  read: ({ od, section, mark, rim }) => ({
    form: "flotation",
    ...constructionOf(mark),
    key: `${Number(od)}x${Number(section)}-${rim}`,
    rim: Number(rim),
    diameter: roughly(Number(od)),
  }),
};

/** In the order of the load; every other letter's height follows from the one known of its rim. */
const LETTERS = "ABCDEFGHJKLMN";
/** Height of a 78-series tire over the rim, in: F78-14 is 26.5 in over all (read), G78-15 is 28.0 in (from memory). */
const HEIGHT_78 = { 15: { letter: "G", height: 6.5 }, 14: { letter: "F", height: 6.25 } } as const;
/** What one letter adds to that height, in; common practice, no source. */
const LETTER_STEP = 0.27;

/** The letter is the load, so a lower aspect makes a wider tire of much the same cross-section. */
const alphanumericHeight = (letter: string, aspect: number, rim: number): number => {
  const known = rim >= 15 ? HEIGHT_78[15] : HEIGHT_78[14];
  const height = known.height + LETTER_STEP * (LETTERS.indexOf(letter) - LETTERS.indexOf(known.letter));
  return height * Math.sqrt(aspect / 78);
};

const alphanumeric: Reader = {
  pattern: /^(?<letter>[A-HJ-N])(?<radial>R)?(?<aspect>\d{2})-?(?<rim>\d{2})(?:LT)?[B-F]?$/,
  read: ({ letter = "", radial, aspect, rim }) => ({
    form: "alphanumeric",
    // Without an R it may be bias or bias-belted.
    ...(radial === undefined ? {} : { construction: "radial" }),
    key: `${letter}${aspect}-${rim}`,
    rim: Number(rim),
    diameter: roughly(Number(rim) + 2 * alphanumericHeight(letter, Number(aspect), Number(rim))),
  }),
};

/** From 1965 on widths end in 5 and tires are about as high as 80 % of them; before, 90 %. */
const numericAspect = (hundredths: string): number => (hundredths.endsWith("5") ? 0.8 : 0.9);

const numeric: Reader = {
  pattern: new RegExp(
    String.raw`^(?<inches>\d{1,2}?)\.?(?<hundredths>\d{2})(?<mark>[SHV]?R|-|X)(?<rim>\d{2})${AFTER_RIM}$`,
  ),
  read: ({ inches, hundredths = "", mark, rim }) => ({
    form: "numeric",
    ...(mark?.endsWith("R") ? { construction: "radial" } : {}),
    key: `${inches}.${hundredths}-${rim}`,
    rim: Number(rim),
    diameter: roughly(
      Number(rim) + 2 * numericAspect(hundredths) * (Number(inches) + Number(hundredths) / 100),
    ),
  }),
};

/** A three-digit width under 400 is in millimeters, so the metric readers come first. */
const readers = [metric, metricWithoutAspect, flotation, alphanumeric, numeric];

/**
 * Reads a tire size: metric with speed and load marks (`P205/75R15 97S`, `205/70VR14`, `165SR15`), light truck
 * (`LT235/75R15`, `31x10.50R15LT`), alphanumeric of the 1960s to 80s (`G78-15`, `FR70-14`), numeric (`6.95-14`).
 *
 * Diameter of a metric size: rim + 2 × section × aspect. Of the older ones only roughly, since makers differed.
 *
 * Source: what a metric size says; of the letters F78-14 read in a trade article and G78-15 from memory
 * (fixtures/published/tire-size.json); the rest common practice, no source.
 *
 * @returns `undefined` where the text is no size this knows
 * @example findTireSize("P205/75R15")?.diameter.value // 27.106…
 */
export const findTireSize = (text: string): TireSize | undefined => {
  const size = text.toUpperCase().replaceAll(/\s/g, "").replaceAll("×", "X");
  for (const { pattern, read } of readers) {
    const match = pattern.exec(size);
    if (match?.groups !== undefined) return read(match.groups);
  }
  return undefined;
};
