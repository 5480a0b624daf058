import { dimensionOf } from "@evenhand/measurement/unit";
import type { Sheet } from "@evenhand/shared/sheet";
import type { Dimension, UnitSymbol } from "@evenhand/shared/unit";

/** A kind of instrument as the sheet names it, what it measures, and the units its items are read in, most usual first. */
export type InstrumentKind = {
  readonly name: string;
  readonly dimensions: readonly Dimension[];
  readonly units: readonly UnitSymbol[];
};

/** What a figure is read from that nobody brings along: the car, its papers, a count. */
const broughtByNobody = (name: string): boolean =>
  name.startsWith("the ") || name === "counting" || name === "chalk marks";

/**
 * The instruments the sheet's readings are ordinarily taken with, by name.
 *
 * @example instrumentKinds(sheetVersion1).find(({ name }) => name === "tread depth gauge")?.dimensions // ["length"]
 */
export function instrumentKinds({ items }: Pick<Sheet, "items">): InstrumentKind[] {
  const units = new Map<string, Set<UnitSymbol>>();
  for (const { reading } of items) {
    if (reading === undefined || broughtByNobody(reading.instrument.name)) continue;
    const known = units.get(reading.instrument.name) ?? new Set();
    units.set(reading.instrument.name, known);
    for (const unit of [reading.unit, ...reading.alsoIn]) known.add(unit);
  }
  return [...units]
    .map(([name, found]) => ({
      name,
      units: [...found],
      dimensions: [...new Set([...found].map(dimensionOf))],
    }))
    .toSorted((one, other) => one.name.localeCompare(other.name, "en"));
}
