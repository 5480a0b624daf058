import type { Entry, ReadingFigures, ReadingsToSettle } from "@evenhand/shared/comparison";
import type { Report } from "@evenhand/shared/report";
import type { ReadingSpec } from "@evenhand/shared/sheet";
import { readingsToSettle as settle } from "@evenhand/measurement/readings-to-settle";
import type { ReadingPlan } from "@evenhand/measurement/readings-to-settle";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { movingSide, readSideInto, sideEstimate } from "@evenhand/sheet/reading-side";
import type { ReadingSide } from "@evenhand/sheet/reading-side";
import type { CorrectionOf } from "../corrections/index.ts";
import { findingOf } from "../finding-of/index.ts";
import { leftOf } from "../use-allowed/index.ts";
import { findSharing } from "../sharing/index.ts";
import type { Sharing } from "../sharing/index.ts";

/** A further reading takes a spot of its own where the item asks for several, else the spot it has. */
const planOf = (
  figures: Pick<ReadingFigures, "difference" | "useAllowed" | "correction" | "delta">,
  reading: ReadingSide,
  other: ReadingSide,
  shared: boolean,
  spec: ReadingSpec,
): ReadingPlan => ({
  difference: leftOf(figures),
  delta: figures.delta,
  repeatability: {
    standardUncertainty: reading.scatter,
    degreesOfFreedom: reading.scatterDegreesOfFreedom,
  },
  resolution: reading.resolution,
  // What a correction may be off by no number of readings makes less, as the gauge's accuracy.
  accuracy: Math.hypot(shared ? 0 : reading.accuracy, Math.sqrt(3) * reading.correction),
  placement: reading.placement,
  spots: spec.ask.spots > 1 ? "each" : reading.spots,
  other: sideEstimate(other, !shared),
});

const countOrNull = (plan: ReadingPlan): number | null => {
  const result = settle(plan);
  return result.kind === "readings" ? result.readings : null;
};

/** What settles an entry out of two reports: made once for many entries. */
export type Settler = (entry: Entry) => ReadingsToSettle | undefined;

/** Only what is neither confirmed nor contradicted has anything to settle. */
const isOpen = ({ outcome }: Entry): boolean => outcome === "consistent" || outcome === "doubtful";

/** Reads a finding of one report into a side that is good until the next one; `undefined` where it is no reading. */
const sideReader = ({ findings, instruments }: Report, correctionOf: CorrectionOf | undefined) => {
  const byId = new Map(instruments.map((instrument) => [instrument.id, instrument]));
  const side = movingSide();
  return (index: number | null, spec: ReadingSpec) => {
    const finding = findingOf(findings, index);
    if (finding?.answer.kind !== "reading") return undefined;
    const instrument = byId.get(finding.instrument ?? "");
    return { finding, side: readSideInto(side, finding.answer, spec, instrument, correctionOf?.(finding)) };
  };
};

/**
 * How many readings in all, by either side with what it read with, would settle an entry that is consistent or doubtful,
 * supposing the difference stays what it is; `null` where no number up to 100 would. Arithmetic on the present
 * difference, which new readings will move.
 *
 * @returns a function that gives `undefined` for entries that are settled or are no readings of an item
 * @example settlerOf(statement, inspection, sheet)(entry) // { a: null, b: 6 }
 */
export const settlerOf = (
  a: Report,
  b: Report,
  sheet: CompiledSheet,
  sharing: Sharing = findSharing(a, b, {}),
  corrections: { readonly a?: CorrectionOf | undefined; readonly b?: CorrectionOf | undefined } = {},
): Settler => {
  const [readA, readB] = [sideReader(a, corrections.a), sideReader(b, corrections.b)];
  return (entry) => {
    const { figures, finding } = entry;
    if (figures?.of !== "reading" || !isOpen(entry)) return undefined;
    const spec = sheet.items.get(entry.item)?.item.reading;
    if (spec === undefined) return undefined;
    const [first, second] = [readA(finding.a, spec), readB(finding.b, spec)];
    if (first === undefined || second === undefined) return undefined;
    const shared = sharing.instrument(first.finding, second.finding);
    return {
      a: countOrNull(planOf(figures, first.side, second.side, shared, spec)),
      b: countOrNull(planOf(figures, second.side, first.side, shared, spec)),
    };
  };
};
