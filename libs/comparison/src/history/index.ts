import type { GaugeOffset, HistoryTable, InspectorLean, PastReading } from "@evenhand/shared/history";
import { LEAST_PAIRS } from "@evenhand/shared/history";
import { crossedEffects } from "@evenhand/measurement/crossed-effects";
import type { CrossedReading, Predicted } from "@evenhand/measurement/crossed-effects";
import { median } from "@evenhand/measurement/median";
import { varianceComponents } from "@evenhand/measurement/variance-components";

/** What one pair of reports on one car told. */
export type PastPair = {
  /** The inspection firm, and its inspector by a random id. */
  readonly firm: string;
  readonly inspector: string;
  /** Whose word it was read against: a dealer, or another inspector. Nothing is learned of them. */
  readonly against: string;
  readonly readings: readonly PastReading[];
};

/** A reading with whose it is. */
type Placed = PastReading & Omit<PastPair, "readings">;

/** Farther than this many differences that matter from what is usual against one word, it is no gauge: a lie, a slip, another spot. */
const MOST_APART = 2;
/** The figures are shown to two digits. */
const PATIENCE = { steps: 300, close: 1e-6 };

const familyOf = ({ kind, unit }: PastReading): string => JSON.stringify([kind, unit]);
const gaugeOf = ({ firm, gauge, calibrated }: Placed): string => JSON.stringify([firm, gauge, calibrated]);

/** Without what lies so far off that no gauge explains it, either way, from what is usual against the same word. */
const withoutGross = (all: readonly Placed[]): Placed[] =>
  Array.from(Map.groupBy(all, ({ against }) => against).values()).flatMap((group) => {
    const usual = median(group.map(({ difference }) => difference));
    return group.filter(({ difference, delta }) => Math.abs(difference - usual) <= MOST_APART * delta);
  });

const crossed = (one: Placed): CrossedReading => ({
  inspector: one.inspector,
  gauge: gaugeOf(one),
  value: one.difference,
  against: one.against,
});

/** Whether anything can be told apart: two hands, two gauges, and readings against one word that differ. */
const canTell = (all: readonly CrossedReading[]): boolean =>
  new Set(all.map(({ inspector }) => inspector)).size > 1 &&
  new Set(all.map(({ gauge }) => gauge)).size > 1 &&
  Array.from(Map.groupBy(all, ({ against = "" }) => against).values()).some(
    (group) => new Set(group.map(({ value }) => value)).size > 1,
  );

type Effects = ReturnType<typeof crossedEffects>;

const effectsOf = (all: readonly Placed[]): Effects | undefined => {
  const readings = all.map(crossed);
  return canTell(readings) ? crossedEffects(readings, varianceComponents(readings, PATIENCE)) : undefined;
};

const isEnough = (one: Predicted | undefined): one is Predicted =>
  one !== undefined && one.readings >= LEAST_PAIRS;

const learnedOf = ({ kind, unit }: Placed, { effect, standardError, readings }: Predicted) => ({
  kind,
  unit,
  effect,
  standardError,
  pairs: readings,
});

/** What one family of readings tells of the inspectors and gauges of each firm. */
const learnFrom = (
  all: readonly Placed[],
  leans: (firm: string, lean: InspectorLean) => void,
  gauges: (firm: string, gauge: GaugeOffset) => void,
): void => {
  const effects = effectsOf(all);
  if (effects === undefined) return;
  for (const [one] of Map.groupBy(all, ({ firm, inspector }) => JSON.stringify([firm, inspector])).values()) {
    const lean = effects.inspectors.get(one?.inspector ?? "");
    if (one !== undefined && isEnough(lean))
      leans(one.firm, { inspector: one.inspector, ...learnedOf(one, lean) });
  }
  for (const [one] of Map.groupBy(all, gaugeOf).values()) {
    const gauge = one && effects.gauges.get(gaugeOf(one));
    if (one !== undefined && isEnough(gauge))
      gauges(one.firm, { gauge: one.gauge, calibrated: one.calibrated, ...learnedOf(one, gauge) });
  }
};

/** By what they are written as: the order in which pairs come decides nothing, to the last digit. */
const inOrder = (pairs: readonly PastPair[]): Placed[] =>
  pairs
    .flatMap(({ readings, ...whose }) => readings.map((reading) => ({ ...whose, ...reading })))
    .map((one): [string, Placed] => [
      JSON.stringify([familyOf(one), one.against, one.inspector, gaugeOf(one), one.difference, one.delta]),
      one,
    ])
    .toSorted(([one], [other]) => (one < other ? -1 : Number(one > other)))
    .map(([, one]) => one);

/**
 * What past pairs of reports tell of each inspection firm's inspectors and gauges: leans and offsets by crossed effects (`crossedEffects`),
 * over all firms together, one family of readings (a kind of instrument in a unit) at a time. Shrunk; nothing of whom fewer than twenty
 * pairs tell. Every word that was read against has a mean of its own, which is thrown away: no dealer's lean, however great, moves a figure,
 * and an inspector who alone visits a dealer learns nothing there. What lies farther than two differences that matter from what is usual
 * against that word is left out on both sides.
 *
 * @param pairs one a car and inspection
 * @returns a table a firm of which there is something to say; the order of pairs does not matter
 * @example historyTables(pairs).get(firm)?.gauges[0] // { gauge: "tread-1", kind: "tread depth gauge", effect: 0.31…, pairs: 34, … }
 */
export const historyTables = (pairs: readonly PastPair[]): ReadonlyMap<string, HistoryTable> => {
  const tables = new Map<string, { leans: InspectorLean[]; gauges: GaugeOffset[] }>();
  const of = (firm: string) => {
    const table = tables.get(firm) ?? { leans: [], gauges: [] };
    tables.set(firm, table);
    return table;
  };
  for (const family of Map.groupBy(inOrder(pairs), familyOf).values()) {
    learnFrom(
      withoutGross(family),
      (firm, lean) => of(firm).leans.push(lean),
      (firm, gauge) => of(firm).gauges.push(gauge),
    );
  }
  return new Map(
    Array.from(tables, ([firm, { leans, gauges }]): [string, HistoryTable] => [
      firm,
      { format: "evenhand-history", version: 1, leans, gauges },
    ]),
  );
};
