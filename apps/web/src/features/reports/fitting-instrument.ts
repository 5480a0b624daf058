import { convert } from "@evenhand/measurement/unit";
import type { Finding } from "@evenhand/shared/finding";
import type { Instrument } from "@evenhand/shared/report";
import type { Item } from "@evenhand/shared/sheet";
import { UNITS, type UnitSymbol } from "@evenhand/shared/unit";

const plain = new Set(["gauge", "meter", "tester", "digital", "with", "and", "the", "depth", "for"]);
const words = (text: string): ReadonlySet<string> =>
  new Set(
    text
      .toLowerCase()
      .match(/[a-z]{3,}/g)
      ?.filter((word) => !plain.has(word)) ?? [],
  );

const stepIn = (instrument: Instrument, unit: UnitSymbol): number | undefined => {
  const shown = instrument.resolution ?? instrument.accuracy?.absolute;
  if (shown === undefined || UNITS[shown.unit].dimension !== UNITS[unit].dimension) return undefined;
  return convert(shown.value, shown.unit, unit);
};

/**
 * The instrument of the visit that an item's readings are taken with: it measures in the item's kind of unit, and is of the kind of
 * the item's ordinary instrument, else is called as that one is, else shows steps as fine. Where two fit alike, none is chosen for
 * the person.
 */
export const fittingInstrument = (item: Item, instruments: readonly Instrument[]): string | undefined => {
  const spec = item.reading;
  if (!spec) return undefined;
  const asked = words(`${spec.instrument.name} ${item.words.american}`);
  const fits = instruments.flatMap((instrument) => {
    const step = stepIn(instrument, spec.unit);
    if (step === undefined) return [];
    const named =
      instrument.kind === spec.instrument.name
        ? Number.POSITIVE_INFINITY
        : [...words(instrument.name)].filter((word) => asked.has(word)).length;
    const fine =
      spec.instrument.resolution > 0 &&
      step <= spec.instrument.resolution * 2 &&
      step >= spec.instrument.resolution / 10;
    return named > 0 || fine ? [{ id: instrument.id, named }] : [];
  });
  const most = Math.max(0, ...fits.map(({ named }) => named));
  const best = fits.filter(({ named }) => named === most);
  return best.length === 1 ? best[0]?.id : undefined;
};

/**
 * The unit a reading is typed in: the one this item was read in last, else the one its instrument shows where the sheet offers it,
 * else the sheet's own.
 */
export const usualUnit = (
  item: Item,
  instrument: Instrument | undefined,
  last: Pick<Finding, "answer"> | undefined,
): UnitSymbol | undefined => {
  const spec = item.reading;
  if (!spec) return undefined;
  if (last?.answer.kind === "reading") return last.answer.unit;
  const shown = (instrument?.resolution ?? instrument?.accuracy?.absolute)?.unit;
  return [spec.unit, ...spec.alsoIn].find((unit) => unit === shown) ?? spec.unit;
};
