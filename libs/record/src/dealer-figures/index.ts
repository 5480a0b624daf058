import { median } from "@evenhand/measurement/median";
import { carShare, LEAST_CARS, type Share } from "../car-share/index.ts";
import type { SectionCounts, StatementCounts } from "../statement-counts/index.ts";

/** What was decided of a fall after the comparison: it stands, the statement stands, or money settled it and nobody knows. */
export type Decided = "fell" | "stood" | "settled-by-money";

/** One car a dealer stated and somebody inspected. */
export type InspectedCar = {
  readonly dealer: string;
  readonly counts: StatementCounts;
  /** By `lineKey`: what came of it later. A line that is not in it is open, unless the comparison itself upheld it. */
  readonly decided: ReadonlyMap<string, Decided>;
};

/** Fewer other dealers are no reference. */
export const LEAST_OTHERS = 3;

/** The other dealers of whom as much is known: how many, and the one in the middle of them. */
export type Others = { readonly dealers: number; readonly fallen: number; readonly stated: number };

export type DealerFigures = {
  readonly dealer: string;
  /** `null` for the whole sheet. */
  readonly section: string | null;
  /** Cars of which a statement was tested here. */
  readonly cars: number;
} & (
  | { readonly state: "too-few" }
  | {
      readonly state: "known";
      /** Statements that were borne out or fell. */
      readonly tested: number;
      readonly fell: number;
      /** Found worse by one look, and nothing upholds it: not tested, and not fallen. */
      readonly open: number;
      readonly settledByMoney: number;
      readonly notContradicted: number;
      /** Faults made out worse than they were found: a credit by itself, which no share and no fall is lowered by. */
      readonly statedWorse: number;
      /** Fallen over tested statements, 90 %, the car as the cluster. */
      readonly fallen: Share;
      /** The same if everything open should fall; `null` where nothing is open. */
      readonly fallenIfAllOpen: Share | null;
      /** Places stated over places of the sheet that apply. */
      readonly stated: Share;
      /** `null` where there are too few. */
      readonly others: Others | null;
    }
);

/** What one car came to, in a section or over the whole sheet. */
type CarSum = {
  places: number;
  stated: number;
  held: number;
  fell: number;
  open: number;
  settledByMoney: number;
  notContradicted: number;
  statedWorse: number;
};

const nothing = (): CarSum => ({
  places: 0,
  stated: 0,
  held: 0,
  fell: 0,
  open: 0,
  settledByMoney: 0,
  notContradicted: 0,
  statedWorse: 0,
});

const FATE = { fell: "fell", stood: "held", "settled-by-money": "settledByMoney" } as const;

const add = (sum: CarSum, counts: SectionCounts, decided: InspectedCar["decided"]): void => {
  sum.places += counts.places;
  sum.stated += counts.stated;
  sum.held += counts.confirmed;
  sum.notContradicted += counts.notContradicted;
  sum.statedWorse += counts.statedWorse;
  for (const { line, by } of counts.falls) {
    const later = decided.get(line);
    sum[later === undefined ? (by === null ? "open" : "fell") : FATE[later]] += 1;
  }
};

const total = (cars: readonly CarSum[], key: keyof CarSum): number =>
  cars.reduce((sum, car) => sum + car[key], 0);

type Known = Omit<Extract<DealerFigures, { state: "known" }>, "others" | "dealer" | "section">;
type Figures = Known | { readonly state: "too-few"; readonly cars: number };

const figuresOf = (cars: readonly CarSum[]): Figures => {
  const tested = cars.filter(({ held, fell }) => held + fell > 0);
  if (tested.length < LEAST_CARS) return { state: "too-few", cars: tested.length };
  const open = total(cars, "open");
  return {
    state: "known",
    cars: tested.length,
    tested: total(cars, "held") + total(cars, "fell"),
    fell: total(cars, "fell"),
    open,
    settledByMoney: total(cars, "settledByMoney"),
    notContradicted: total(cars, "notContradicted"),
    statedWorse: total(cars, "statedWorse"),
    fallen: carShare(tested.map(({ fell, held }) => ({ total: fell, count: held + fell }))).share,
    fallenIfAllOpen:
      open === 0
        ? null
        : carShare(cars.map((car) => ({ total: car.fell + car.open, count: car.held + car.fell + car.open })))
            .share,
    stated: carShare(cars.map(({ stated, places }) => ({ total: stated, count: places }))).share,
  };
};

const othersOf = (dealer: string, all: ReadonlyMap<string, Figures>): Others | null => {
  const others = Array.from(all)
    .filter(([name]) => name !== dealer)
    .flatMap(([, figures]) => (figures.state === "known" ? [figures] : []));
  if (others.length < LEAST_OTHERS) return null;
  return {
    dealers: others.length,
    fallen: median(others.map(({ fallen }) => fallen.estimate)),
    stated: median(others.map(({ stated }) => stated.estimate)),
  };
};

const WHOLE = null;

/** Every car's sums, by section (the whole sheet first), then by dealer. */
const sumsOf = (cars: readonly InspectedCar[]): Map<string | null, Map<string, CarSum[]>> => {
  const sections = new Map<string | null, Map<string, CarSum[]>>();
  const keep = (section: string | null, dealer: string, sum: CarSum): void => {
    const dealers = sections.get(section) ?? new Map<string, CarSum[]>();
    const sums = dealers.get(dealer) ?? [];
    sums.push(sum);
    dealers.set(dealer, sums);
    sections.set(section, dealers);
  };
  for (const { dealer, counts, decided } of cars) {
    const whole = nothing();
    keep(WHOLE, dealer, whole);
    for (const [section, counted] of Object.entries(counts)) {
      const sum = nothing();
      add(sum, counted, decided);
      add(whole, counted, decided);
      keep(section, dealer, sum);
    }
  }
  return sections;
};

/**
 * How often a dealer's statements fell: of all statements that an inspection could test, those that fell, with the car as the
 * cluster (`clusterShare`; t with cars − 1), over the whole sheet and by section; beside it how much was stated at all, and the
 * median of the other dealers. The share is over statements, never over cars without a fall: that would reward silence.
 *
 * Only what figures, a second look or a dispute upheld has fallen. What one look alone found worse is open: counted beside it,
 * neither tested nor fallen, with what the share would be if all of it should fall. What was only not contradicted is not
 * tested either, or soft words would thin the falls out. Each dealer's interval is the dealer's own: nothing is drawn toward
 * other dealers. Nothing is said under twenty cars.
 *
 * @returns the whole sheet first, then each section, by dealer, in the order of first meeting
 * @example dealerFigures(cars)[0] // { dealer: "…", section: null, state: "known", cars: 34, tested: 4120, fell: 61, … }
 */
export const dealerFigures = (cars: readonly InspectedCar[]): DealerFigures[] =>
  Array.from(sumsOf(cars), ([section, dealers]) => {
    const all = new Map(Array.from(dealers, ([dealer, sums]) => [dealer, figuresOf(sums)]));
    return Array.from(all, ([dealer, figures]): DealerFigures => {
      const of = { dealer, section };
      return figures.state === "too-few"
        ? { ...of, ...figures }
        : { ...of, ...figures, others: othersOf(dealer, all) };
    });
  }).flat();
