import { normalQuantile } from "@evenhand/measurement/normal-distribution";
import type { Comparison, Entry } from "@evenhand/shared/comparison";
import type { CostTable } from "@evenhand/shared/cost-table";
import type { Instrument, Report } from "@evenhand/shared/report";
import type { Item, ReadingSpec, Sheet } from "@evenhand/shared/sheet";
import { readSide, sideEstimate, toleranceAt } from "@evenhand/sheet/reading-side";
import { betaPertMean } from "../beta-pert/index.ts";
import { type CostAtStake, costsAtStake } from "../costs-at-stake/index.ts";
import type { Look } from "../worth-of-looking/index.ts";

/** A look, with the row of the table it decides and the items that ask for it. */
export type LookAtStake = Look & { readonly row: string; readonly items: readonly string[] };

export type LooksAtStakeInput = {
  readonly comparison: Pick<Comparison, "entries">;
  /** The second report: for what was found, and with which instruments. Without findings before any visit. */
  readonly found: Report;
  readonly sheet: Sheet;
  readonly table: CostTable;
};

/**
 * Standard uncertainty of a look at a reading item: as often as the sheet asks, with the instrument named, or the item's ordinary one;
 * in the item's base unit.
 *
 * @param size about what will be read, in the item's base unit
 * @example lookUncertainty(treadSpec, 6) // 0.44… (1/32 in)
 */
export function lookUncertainty(spec: ReadingSpec, size: number, named?: Instrument): number {
  const { unit, instrument, ask } = spec;
  const { resolution, accuracy } = instrument;
  const ordinary: Instrument = {
    id: "ordinary",
    name: instrument.name,
    resolution: { value: resolution, unit },
    accuracy: { absolute: { value: accuracy.absolute, unit }, share: accuracy.share },
  };
  const values = Array.from({ length: ask.readings * ask.spots }, () => ({ value: size }));
  const side = readSide({ kind: "reading", unit, values }, spec, named ?? ordinary);
  return sideEstimate(side, true).standardUncertainty;
}

/** Of what nobody read: so wide that the chance of being off by more than δ is the owner's own. */
const widthOf = ({ delta }: ReadingSpec, size: number, probability: number): number => {
  const off = Math.max(delta.absolute, toleranceAt({ absolute: 0, share: delta.share }, size));
  return off / Math.max(1e-6, Math.abs(normalQuantile(probability)));
};

const namedIn = ({ instruments, findings }: Report, { finding }: Entry): Instrument | undefined =>
  instruments.find(({ id }) => id === findings[finding.b ?? -1]?.instrument);

/** How well an instrument would tell it; nothing where eyes, papers or hands tell. */
function readingOf(entry: Entry, item: Item, cost: CostAtStake, found: Report): Look["reading"] | undefined {
  const spec = item.reading;
  if (spec === undefined || cost.probability <= 0 || cost.probability >= 1) return undefined;
  const figures = entry.figures?.of === "reading" ? entry.figures : undefined;
  const size = figures?.b.mean ?? spec.typical ?? (spec.plausible[0] + spec.plausible[1]) / 2;
  return {
    spread: figures?.standardUncertainty ?? widthOf(spec, size, cost.probability),
    uncertainty: lookUncertainty(spec, size, namedIn(found, entry)),
  };
}

const tells = ({ spread, uncertainty }: NonNullable<Look["reading"]>): number => spread / uncertainty;

function lookOf(cost: CostAtStake, at: number, input: LooksAtStakeInput, items: ItemsById): LookAtStake {
  const { comparison, found } = input;
  const asked = cost.entries.flatMap((index) => {
    const entry = comparison.entries[index];
    const item = items.get(entry?.item ?? "");
    return entry === undefined || item === undefined ? [] : [{ entry, item }];
  });
  const named = new Map(asked.map(({ item }) => [item.id, item]));
  const readings = asked.map(({ entry, item }) => readingOf(entry, item, cost, found));
  // What tells best is what the look tells; one that needs no instrument tells for certain.
  const read = readings.filter((reading) => reading !== undefined);
  const [best] = read.length < readings.length ? [] : read.toSorted((a, b) => tells(b) - tells(a));
  return {
    id: `${cost.row} ${at}`,
    row: cost.row,
    items: [...named.keys()],
    probability: cost.probability,
    mean: betaPertMean(cost),
    minutes: Math.max(
      1,
      [...named.values()].reduce((sum, { minutes }) => sum + minutes, 0),
    ),
    first: asked.some(({ entry: { severity } }) => severity === "halt" || severity === "danger"),
    ...(best === undefined ? {} : { reading: best }),
  };
}

type ItemsById = ReadonlyMap<string, Item>;

/**
 * What is in doubt and priced, each with the minutes the sheet gives for looking at what asks for it, and with what the look would be
 * read with where it is a reading.
 *
 * @example looksAtStake({ comparison, found, sheet, table })[0]?.row // "tire"
 */
export function looksAtStake(input: LooksAtStakeInput): LookAtStake[] {
  const items = new Map(input.sheet.items.map((item) => [item.id, item]));
  return costsAtStake(input).costs.map((cost, at) => lookOf(cost, at, input, items));
}
