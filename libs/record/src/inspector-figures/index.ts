import type { Cluster } from "@evenhand/measurement/cluster-ratio";
import { carShare, LEAST_CARS, type Share } from "../car-share/index.ts";

/** What became of one inspected car's report. */
export type InspectedReport = {
  readonly inspector: string;
  /** Findings that were re-checked by somebody else, or decided by evidence that either side could have won: how many stood. */
  readonly decided: { readonly upheld: number; readonly overturned: number };
  /** What the delivery of the car showed: of the places seen again, how many had a fault that the inspector had called sound. */
  readonly delivery: { readonly seenAgain: number; readonly missed: number } | null;
};

/**
 * A share of an inspector's work: `nothing-known` where nothing ever came back of it, which is no praise and is never shown as
 * everything; `too-few` under twenty cars.
 */
export type InspectorShare =
  | { readonly state: "nothing-known" }
  | { readonly state: "too-few"; readonly cars: number; readonly needed: number }
  | { readonly state: "known"; readonly cars: number; readonly of: number; readonly share: Share };

export type InspectorFigures = {
  readonly inspector: string;
  readonly reports: number;
  /** Of the findings that were re-checked or decided by evidence, those that stood. */
  readonly upheld: InspectorShare;
  /** Of the places that a delivery showed again, those where a fault had been missed. */
  readonly missed: InspectorShare;
};

const shareOf = (parts: readonly Cluster[]): InspectorShare => {
  const known = parts.filter(({ count }) => count > 0);
  if (known.length === 0) return { state: "nothing-known" };
  if (known.length < LEAST_CARS) return { state: "too-few", cars: known.length, needed: LEAST_CARS };
  return { state: "known", cars: known.length, ...carShare(known) };
};

/**
 * How an inspector's findings fared, with the car as the cluster: the share that stood, counted over what was re-checked or
 * decided by evidence alone, since nobody contests most findings and a dealer's silence upholds nothing; beside it what a
 * delivery showed to have been missed, or whoever finds little would have nothing to lose.
 *
 * @example inspectorFigures([{ inspector: "…", decided: { upheld: 0, overturned: 0 }, delivery: null }])[0]
 * // { inspector: "…", reports: 1, upheld: { state: "nothing-known" }, missed: { state: "nothing-known" } }
 */
export const inspectorFigures = (reports: readonly InspectedReport[]): InspectorFigures[] =>
  Array.from(
    Map.groupBy(reports, ({ inspector }) => inspector),
    ([inspector, own]) => ({
      inspector,
      reports: own.length,
      upheld: shareOf(
        own.map(({ decided: { upheld, overturned } }) => ({ total: upheld, count: upheld + overturned })),
      ),
      missed: shareOf(
        own.map(({ delivery }) => ({ total: delivery?.missed ?? 0, count: delivery?.seenAgain ?? 0 })),
      ),
    }),
  );
