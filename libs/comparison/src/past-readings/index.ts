import type { Comparison, Entry } from "@evenhand/shared/comparison";
import type { PastReading } from "@evenhand/shared/history";
import type { Report } from "@evenhand/shared/report";
import { median } from "@evenhand/measurement/median";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { instrumentKinds } from "@evenhand/sheet/instrument-kinds";
import { NO_ERROR } from "../declared-scatter/index.ts";

type Told = Pick<PastReading, "kind" | "unit" | "gauge" | "calibrated"> & {
  readonly apart: number;
  readonly delta: number;
};

/**
 * What one line tells of the gauge its second side was read with; `undefined` where it tells nothing: not a reading of both, not blind,
 * without a named gauge, of what moves by itself, too coarse to tell, or apart for a reason that is no error.
 */
const toldBy = (
  { item: id, atom, figures, reason, finding }: Entry,
  b: Report,
  sheet: CompiledSheet,
  kinds: ReadonlySet<string>,
): Told | undefined => {
  if (figures?.of !== "reading" || atom.of !== "answer" || NO_ERROR.has(reason)) return undefined;
  const item = sheet.items.get(id)?.item;
  const found = b.findings[finding.b ?? -1];
  const gauge = b.instruments.find((one) => one.id === found?.instrument);
  if (item?.reading === undefined || found?.blind !== true || gauge === undefined) return undefined;
  const { difference, delta, standardUncertainty, unit } = figures;
  const kind = item.reading.instrument.name;
  if (item.time === "drifts" || !kinds.has(kind) || !(standardUncertainty <= delta)) return undefined;
  const calibrated = gauge.calibrated ?? null;
  return { kind, unit, gauge: gauge.id, calibrated, apart: 0 - difference, delta };
};

const keyOf = ({ kind, unit, gauge, calibrated }: Told): string =>
  JSON.stringify([kind, unit, gauge, calibrated]);

/** All that was told of one gauge, as one. */
const middle = ({ kind, unit, gauge, calibrated }: Told, all: readonly Told[]): PastReading => ({
  kind,
  unit,
  gauge,
  calibrated,
  difference: median(all.map(({ apart }) => apart)),
  delta: median(all.map(({ delta }) => delta)),
  places: all.length,
});

/**
 * What a comparison tells of the gauges that the second report was read with: by how much each read more than the first report says, in the
 * middle of all its places, so that a false statement of some tires is not the gauge's. As read, before any correction. Only what was answered
 * blind, and of two houses: what was seen before or read with one gauge tells nothing.
 *
 * @param b the second report, with the instruments it names
 * @returns one a gauge, kind of instrument and unit, by name
 * @example pastReadings(comparison, inspection, sheet)[0] // { kind: "tread depth gauge", unit: "1/32in", gauge: "g", difference: 0.3, … }
 */
export const pastReadings = (
  { a: first, b: second, entries }: Pick<Comparison, "a" | "b" | "entries">,
  b: Report,
  sheet: CompiledSheet,
): PastReading[] => {
  if (first.organization === second.organization) return [];
  const kinds = new Set(instrumentKinds(sheet.sheet).map(({ name }) => name));
  const told = entries.flatMap((entry) => toldBy(entry, b, sheet, kinds) ?? []);
  return Array.from(Map.groupBy(told, keyOf))
    .toSorted(([one], [other]) => (one < other ? -1 : 1))
    .flatMap(([, all]) => (all[0] === undefined ? [] : middle(all[0], all)));
};
