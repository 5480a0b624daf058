import type { AnswerOf } from "@evenhand/shared/answer";
import type { ReadingSpec } from "@evenhand/shared/sheet";
import { deltaOf } from "@evenhand/comparison/delta";
import { mean } from "@evenhand/measurement/type-a";
import { repeatabilityAt, toleranceAt } from "@evenhand/sheet/reading-side";
import { ALL_SPOTS_OVER, GAUGE_OUT } from "./assumptions.ts";
import type { Draws } from "./draws.ts";
import type { Person } from "./people.ts";
import { towardBetter } from "./true-readings.ts";

/** What all of one person's readings of one item share: the gauge, or the eye. From −1 to 1 of the stated accuracy, or beyond it. */
export type Gauge = { readonly off: number; readonly byEye: boolean };

/** @example gaugeOf(careful, spec, draws).byEye // false */
export const gaugeOf = ({ rates, gaugesOut }: Person, { eyesRead }: ReadingSpec, draws: Draws): Gauge => {
  const off = 2 * draws.uniform() - 1;
  const isOut = gaugesOut && draws.chance(GAUGE_OUT.share);
  return {
    off: isOut ? Math.sign(off) * GAUGE_OUT.times : off,
    byEye: eyesRead === true && draws.chance(rates.byEye),
  };
};

const roundTo = (value: number, step: number): number =>
  step === 0 ? value : Number((Math.round(value / step) * step).toFixed(6));

/** The largest of 1, 2 and 5 times a power of ten that is not above it. */
export const convenientStep = (size: number): number => {
  const power = 10 ** Math.floor(Math.log10(size));
  return power * ([5, 2, 1].find((step) => step * power <= size * (1 + 1e-9)) ?? 1);
};

/** Two figures exchanged, one dropped, or one doubled. */
export const slipped = (text: string, draws: Draws): string => {
  const at = Math.floor(draws.between([0, text.length]));
  const [before, sign = "", after] = [text.slice(0, at), text[at], text.slice(at + 1)];
  const kind = draws.pick(["exchanged", "dropped", "doubled"]);
  if (kind === "exchanged" && after !== "") return before + after.slice(0, 1) + sign + after.slice(1);
  return kind === "doubled" ? before + sign + sign + after : before + after;
};

const slippedNumber = (value: number, { plausible }: ReadingSpec, draws: Draws): number => {
  const typed = Number(slipped(String(value), draws));
  // What cannot be is refused at the field, and typed again.
  return Number.isFinite(typed) && typed >= plausible[0] && typed <= plausible[1] ? typed : value;
};

type Shown = { readonly step: number; readonly scatter: number };

const shownBy = (spec: ReadingSpec, truth: number, delta: number, person: Person, byEye: boolean): Shown => {
  const scatter = person.noise * repeatabilityAt(spec, truth);
  // What has no resolution is counted, and a count is whole.
  const ordinary = byEye ? 0 : spec.instrument.resolution === 0 ? 1 : spec.instrument.resolution;
  return { step: person.convenient ? Math.max(ordinary, convenientStep(delta)) : ordinary, scatter };
};

const halfWidthOf = (spec: ReadingSpec, truth: number, byEye: boolean): number =>
  toleranceAt(byEye ? spec.byEye : spec.instrument.accuracy, truth);

/** As many spots as the sheet asks for, and all it has where these read as refinished, which it asks for as well. */
const spotsFor = (
  spec: ReadingSpec,
  { byEye }: Gauge,
  read: readonly { readonly value: number }[],
): number => {
  if (byEye) return 1;
  const hasMore = spec.unit === ALL_SPOTS_OVER.unit && spec.spots.length > spec.ask.spots;
  const first = read.slice(0, spec.ask.spots * spec.ask.readings);
  if (!hasMore || first.length < spec.ask.spots * spec.ask.readings) return spec.ask.spots;
  return mean(first.map(({ value }) => value)) > ALL_SPOTS_OVER.value ? spec.spots.length : spec.ask.spots;
};

/**
 * One person's readings of a true value, as many as the sheet asks for: the gauge's own error, which all places of the item share,
 * placement by spot, scatter by reading or by spot, the indicator's step, and what is particular about the person.
 */
export const readingsOf = (
  spec: ReadingSpec,
  truth: number,
  gauge: Gauge,
  person: Person,
  draws: Draws,
): AnswerOf<"reading"> => {
  const delta = deltaOf(spec.delta, truth, truth);
  const { step, scatter } = shownBy(spec, truth, delta, person, gauge.byEye);
  const { over } = spec.repeatability;
  const shared =
    truth +
    person.noise * gauge.off * halfWidthOf(spec, truth, gauge.byEye) +
    person.kindness * delta * towardBetter(spec) +
    (person.elsewhere === 0 ? 0 : person.elsewhere * delta * draws.normal());
  const values: { value: number; spot?: string }[] = [];
  for (let spot = 0; spot < spotsFor(spec, gauge, values); spot += 1) {
    const placed =
      over === "spots" ? scatter * draws.normal() : person.noise * spec.placement * draws.normal();
    const repeats = gauge.byEye ? 1 : spec.ask.readings;
    for (let repeat = 0; repeat < repeats; repeat += 1) {
      const read = shared + placed + (over === "repeats" ? scatter * draws.normal() : 0);
      const within = Math.min(spec.plausible[1], Math.max(spec.plausible[0], read));
      const value = roundTo(within, step);
      const named = spec.spots[spot]?.id ?? `spot-${spot + 1}`;
      values.push(spec.ask.spots > 1 && !gauge.byEye ? { value, spot: named } : { value });
    }
  }
  const [first] = values;
  if (first !== undefined && draws.chance(person.rates.typingSlip)) {
    first.value = slippedNumber(first.value, spec, draws);
  }
  return { kind: "reading", unit: spec.unit, values };
};
