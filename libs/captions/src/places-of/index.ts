import { positionsOf } from "@evenhand/sheet/expand";
import type { VehicleForm } from "@evenhand/shared/report";
import type { Item, PositionSet } from "@evenhand/shared/sheet";
import type { Subject } from "@evenhand/lexicon/lexicon-version-1";

/** Sides that were said with a subject. */
export type SaidSides = {
  /** Parts of a position's id: left, front, upper; `driver` and `passenger` hang on the wheel. */
  readonly adds: readonly string[];
  readonly all: boolean;
  readonly other: boolean;
  readonly spare: boolean;
  /** One of several, and nobody says which. */
  readonly one?: boolean;
  /** The driver's own, or the passenger's: the door beside the seat, and no side of the car. */
  readonly seat?: boolean;
  /** A number that counts places: cylinder three. */
  readonly index?: number | undefined;
};

/** Words that mean the whole of it where they stand in the singular. */
const WHOLE = new Set(
  "glass door-glass floors rails carpet all-panels seats front-seats front-bench exhaust compression tread pressure door-seals wiring interior cross-members top volts torque tire-size tire-code bed leak-down leaks undercoat".split(
    " ",
  ),
);

/** Front and rear. */
const ENDS = 2;

const partsOf = (position: string): readonly string[] => position.split("-");

/** A side by the car: the driver's hangs on the wheel. */
export const sided = (add: string, form: VehicleForm): string => {
  if (add === "driver") return form.leftHandDrive ? "left" : "right";
  if (add === "passenger") return form.leftHandDrive ? "right" : "left";
  return add;
};

/** Of places, those a side asks for; a side that tells none of them apart asks for all. */
const onSide = (places: readonly string[], add: string): readonly string[] => {
  const kept = places.filter((place) => partsOf(place).includes(add));
  if (kept.length > 0) return kept;
  // "The rear doors", of a car that has two: all there are stand at the other end.
  const other = ENDS_APART[add];
  const areElsewhere =
    other !== undefined &&
    places.length > 0 &&
    places.every((place) => partsOf(place).includes(other) && place.endsWith("-door"));
  return areElsewhere ? [] : places;
};
const ENDS_APART: Readonly<Record<string, string>> = { front: "rear", rear: "front" };

const tellsApart = (places: readonly string[], add: string): boolean =>
  places.some((place) => partsOf(place).includes(add));

export type PlacesFound = {
  readonly places: readonly string[];
  /** The side was not said, and taken from what was in view. */
  readonly inferred: boolean;
};

/**
 * The places of an item that a remark speaks of: by its sides, by the places its subject has, by how many there are, and by the side last
 * in view. None where it could be any of several.
 */
export const placesOf = (
  item: Item,
  subject: Subject | undefined,
  said: SaidSides,
  plural: boolean,
  inView: { readonly side: string | undefined; readonly end: string | undefined },
  within: readonly string[],
  context: { readonly form: VehicleForm; readonly sets: ReadonlyMap<string, PositionSet> },
): PlacesFound => {
  if (item.positions === undefined) return { places: [""], inferred: false };
  const set = context.sets.get(item.positions);
  const here = set === undefined ? [] : positionsOf(set, context.form);
  const mine =
    subject?.at === undefined ? here : here.filter((place) => subject.at?.includes(place) === true);
  const inside = mine.filter((place) => within.includes(place));
  const kept = inside.length > 0 ? inside : mine;
  // "Front pads six, rears four": a new end leaves the places the first name had.
  const isOfEnd = ["front", "rear"].some((end) => kept.every((place) => partsOf(place).includes(end)));
  const left =
    isOfEnd && said.adds.some((add) => tellsApart(here, add) && !tellsApart(kept, add) && kept.length > 1);
  const own = left ? here : kept;
  if (said.index !== undefined && set?.numbered !== undefined)
    return {
      places: own.filter((place) => place === `${set.numbered?.prefix ?? ""}-${said.index ?? 0}`),
      inferred: false,
    };
  const byDriver =
    (/^(?:interior\.|underbody\.floor|doors\.regulators|electrics\.power-windows)/u.test(item.id) ||
      ((!plural || said.seat === true) &&
        /^(?:door|door-bottom|latches|locks|jambs|door-panels|hinge-play|door-drop|door-seals|door-glass)$/u.test(
          subject?.id ?? "",
        ))) &&
    said.adds.some((add) => add === "driver" || add === "passenger") &&
    !said.adds.includes("rear");
  const adds = [...said.adds.map((add) => sided(add, context.form)), ...(byDriver ? ["front"] : [])];
  const places = adds
    .reduce<readonly string[]>(onSide, own)
    .filter((place) => place !== "spare" || said.spare || adds.includes("spare"));
  // "One indicator's out at the back": which of them nobody said yet.
  if (said.one === true && places.length > 1 && !said.all) return { places: [], inferred: true };
  const narrowed = places.length < own.length;
  if (places.length <= 1 || said.all || plural || narrowed || said.other) return { places, inferred: false };
  if (WHOLE.has(subject?.id ?? "")) return { places, inferred: false };
  if (said.one === true) return { places: [], inferred: true };
  if (inView.side !== undefined && tellsApart(places, inView.side))
    return { places: onSide(places, inView.side), inferred: true };
  if (inView.end !== undefined && places.length === ENDS && tellsApart(places, inView.end))
    return { places: onSide(places, inView.end), inferred: true };
  return { places: [], inferred: true };
};
