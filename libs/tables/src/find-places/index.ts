import { positionsOf } from "@evenhand/sheet/expand";
import type { VehicleForm } from "@evenhand/shared/report";
import type { Item, PositionSet, Sheet } from "@evenhand/shared/sheet";
import { labelOf } from "../label/index.ts";
import type { Label, PlaceWord } from "../label/index.ts";

/** What places are found by: those of the item's own name, and the car's form or on which side its wheel is. */
type PlaceContext = {
  readonly at?: readonly string[] | undefined;
  readonly form?: VehicleForm | undefined;
  readonly rightHandDrive?: boolean | undefined;
};

/** Where an item is meant: its positions, and how it was said. */
export type Places = {
  readonly positions: readonly string[];
  /** `said`: these and no others · `some`: several where one may be meant · `all`: no place was said, so all there are. */
  readonly how: "said" | "some" | "all";
};

type Position = {
  readonly id: string;
  readonly sides: ReadonlySet<PlaceWord>;
  readonly nouns: readonly (readonly string[])[];
};

const SIDES: ReadonlySet<string> = new Set([
  "left",
  "right",
  "front",
  "rear",
  "upper",
  "lower",
  "inner",
  "outer",
  "middle",
]);

/** Nouns of a place that everybody leaves out. */
const WEAK = new Set([
  "axle",
  "seat",
  "belt",
  "window",
  "carpet",
  "rail",
  "joint",
  "panel",
  "pedal",
  "lamp",
  "glass",
]);

const positionOf = ({ id, words }: PositionSet["positions"][number]): Position => {
  const own = labelOf(words.american);
  const names = [words.american, words.british ?? words.american, ...words.synonyms, id.replaceAll("-", " ")];
  return {
    id,
    sides: new Set([...own.places].filter((place) => SIDES.has(place))),
    nouns: [...new Set(names.map((name) => [...new Set(labelOf(name).core)].join(" ")))].map((noun) =>
      noun.split(" ").filter(Boolean),
    ),
  };
};

const sets = new WeakMap<Sheet, Map<string, readonly Position[]>>();

/** Names of panels in Britain and in short, which the sheet's places do not say. No source: the trade's own words. */
const OTHER_NOUNS: Readonly<Record<string, readonly string[]>> = {
  wing: ["fender"],
  bonnet: ["hood"],
  boot: ["trunk", "lid"],
  trunk: ["lid"],
  decklid: ["trunk", "lid"],
  sill: ["rocker"],
  windscreen: ["windshield"],
  scuttle: ["cowl"],
  hatch: ["tailgate"],
  silencer: ["muffler"],
  brake: ["stop"],
};

const positionsOfSet = (sheet: Sheet, id: string): readonly Position[] => {
  const known = sets.get(sheet) ?? new Map<string, readonly Position[]>();
  sets.set(sheet, known);
  const before = known.get(id);
  if (before !== undefined) return before;
  const made = sheet.positionSets.find((set) => set.id === id)?.positions.map(positionOf) ?? [];
  known.set(id, made);
  return made;
};

/** `driver` and `passenger` are sides once it is known on which the wheel is. */
const sidesSaid = (labels: readonly Label[], leftHandDrive: boolean): Set<PlaceWord> => {
  const said = new Set(labels.flatMap(({ places }) => [...places]));
  const [driver, passenger]: PlaceWord[] = leftHandDrive ? ["left", "right"] : ["right", "left"];
  if (said.delete("driver") && driver !== undefined) said.add(driver);
  if (said.delete("passenger") && passenger !== undefined) said.add(passenger);
  return said;
};

const PAIRS: readonly (readonly PlaceWord[])[] = [
  ["left", "right"],
  ["front", "rear"],
  ["upper", "lower"],
  ["inner", "outer"],
];

/** Whether a place is none of those the words rule out: `left` rules out what is on the right. */
const isAllowed = ({ sides }: Position, said: ReadonlySet<PlaceWord>): boolean =>
  PAIRS.every((pair) => {
    const [own, named] = [pair.filter((word) => sides.has(word)), pair.filter((word) => said.has(word))];
    return own.length !== 1 || named.length !== 1 || own[0] === named[0];
  });

/** `least`: of a gap both panels must be named. */
const nounFit = (
  { nouns }: Position,
  stems: ReadonlySet<string>,
  least: number,
  own: ReadonlySet<string>,
): number =>
  Math.max(
    0,
    ...nouns.map((noun) => {
      const said = noun.filter((stem) => stems.has(stem) && !WEAK.has(stem)).length;
      const whole = said === noun.length && said >= least;
      if (whole && noun.length > 0) return said + 0.5;
      return noun.filter((stem) => stems.has(stem) && !WEAK.has(stem) && !own.has(stem)).length * 0.5;
    }),
  );

/** `Dents` over `R door` counts the dents. */
const saysWhere = ({ stems, places }: Label): boolean =>
  places.size > 0 || stems.some((stem) => ["door", "window", "fender", "wing"].includes(stem));

/** Doors, their windows, and wings where nothing is said of front or rear: a car with two has those in front. */
const frontOnly = (
  positions: readonly Position[],
  said: ReadonlySet<PlaceWord>,
  labels: readonly Label[],
): readonly Position[] => {
  const named = said.has("left") || said.has("right");
  if (
    !named ||
    said.has("front") ||
    said.has("rear") ||
    labels.some((label) => label.all || (label.plural && saysWhere(label)))
  )
    return positions;
  const front = positions.filter(
    ({ sides, nouns }) =>
      sides.has("front") &&
      nouns.some((noun) => noun.some((stem) => ["door", "window", "fender", "wing"].includes(stem))),
  );
  return front.length === 0 ? positions : front;
};

const numbered = (
  set: PositionSet,
  labels: readonly Label[],
  form: VehicleForm | undefined,
): Places | undefined => {
  if (set.numbered === undefined) return undefined;
  const number = labels.map((label) => label.number).find((one) => one !== undefined);
  if (number !== undefined && number >= 1 && number <= 16)
    return { positions: [`${set.numbered.prefix}-${number}`], how: "said" };
  return { positions: form === undefined ? [] : positionsOf(set, form), how: "all" };
};

const withOthers = (labels: readonly Label[], said: ReadonlySet<PlaceWord>): Set<string> => {
  const stems = labels.flatMap((label) =>
    label.stems.flatMap((stem) => [stem, ...(OTHER_NOUNS[stem] ?? [])]),
  );
  // A rear fender, or wing, is a quarter panel.
  return new Set(said.has("rear") && stems.includes("fender") ? [...stems, "quarter"] : stems);
};

/** Half of a place's name says nothing where it is the item's own name: `Exhaust` is not its manifolds. */
const itemWords = (item: Item): ReadonlySet<string> =>
  new Set([item.words.american, item.words.british ?? ""].flatMap((name) => labelOf(name).core));

/**
 * The positions of an item that the words of a row, a column and what stands above them name.
 *
 * @param at positions the item's own name is of (`Brake lights` are two of the lamps)
 * @returns no positions at all where the item has some and none fits
 */
export const placesOf = (
  sheet: Sheet,
  item: Item,
  labels: readonly Label[],
  context: PlaceContext,
): Places => {
  if (item.positions === undefined) return { positions: [""], how: "said" };
  const set = sheet.positionSets.find(({ id }) => id === item.positions);
  if (set === undefined) return { positions: [], how: "all" };
  const counted = numbered(set, labels, context.form);
  if (counted !== undefined) return counted;
  return namedPlaces(sheet, item, set, labels, context);
};

/** Of places on a side and places without, those on the side that is said: a driver's seat is not the rear one. */
const withSide =
  (said: ReadonlySet<PlaceWord>) =>
  (positions: readonly Position[], pair: readonly PlaceWord[]): readonly Position[] => {
    const named = pair.filter((word) => said.has(word));
    const on = positions.filter(({ sides }) => named.some((word) => sides.has(word)));
    return named.length === 1 && on.length > 0 ? on : positions;
  };

/** What has no side is not meant where one is said, and the spare only where it is named. */
const withoutSideless = (
  chosen: readonly Position[],
  fits: readonly number[],
  allowed: readonly Position[],
  said: ReadonlySet<PlaceWord>,
): readonly Position[] => {
  const sided = PAIRS.reduce(withSide(said), chosen);
  if (sided.length < chosen.length) return sided;
  const named = new Set(allowed.filter((_, at) => (fits[at] ?? 0) > 0));
  return chosen.filter((position) => named.has(position) || position.id !== "spare");
};

const namedPlaces = (
  sheet: Sheet,
  item: Item,
  set: PositionSet,
  labels: readonly Label[],
  { at, form, rightHandDrive }: PlaceContext,
): Places => {
  const applicable = form === undefined ? undefined : new Set(positionsOf(set, form));
  const all = positionsOfSet(sheet, set.id).filter(({ id }) => applicable?.has(id) !== false);
  const said = sidesSaid(labels, form?.leftHandDrive ?? rightHandDrive !== true);
  const named = at === undefined ? all : all.filter(({ id }) => at.includes(id));
  // `Fender` under `Left rear` is none of those in front.
  const own = named.some((position) => isAllowed(position, said)) ? named : [];
  const allowed = (own.length === 0 ? all : own).filter((position) => isAllowed(position, said));
  const stems = withOthers(labels, said);
  const fits = allowed.map((position) =>
    nounFit(position, stems, set.id === "gaps" ? 2 : 1, itemWords(item)),
  );
  const best = Math.max(0, ...fits);
  const nouned =
    best === 0 || (own.length > 0 && at !== undefined)
      ? allowed
      : allowed.filter((_, index) => fits[index] === best);
  const narrowed = withoutSideless(nouned, fits, allowed, said);
  const chosen = set.id === "gaps" ? narrowed : frontOnly(narrowed, said, labels);
  const relevant = chosen.length < all.length;
  const every = labels.some((label) => label.all);
  const positions = chosen.map(({ id }) => id);
  if (positions.length <= 1 || every) return { positions, how: "said" };
  if (own.length > 0 && at !== undefined && positions.length === own.length)
    return { positions, how: "some" };
  return { positions, how: relevant ? "some" : "all" };
};
