import type { VehicleForm } from "@evenhand/shared/report";
import { STAGES } from "@evenhand/shared/sheet";
import type { Caution, Depth, Item, Place, Sheet, Stage } from "@evenhand/shared/sheet";
import { askedAt, isAskedOnVisit, type Asked } from "../asked-at/index.ts";
import { applicablePlaces, type Place as Line } from "../expand/index.ts";

/** Minutes to drive on, set the arms and raise; common practice, no source. */
const LIFT_HANDLING = 5;

/** Where one stands, and what is looked at from there, in the order of the sheet. */
export type Stop = { readonly place: Place; readonly lines: readonly Line[] };

/** One stage of a visit: what is looked at, how long it takes one person alone, and what is acknowledged at its gate. */
export type StageOfVisit = {
  readonly stage: Stage;
  readonly minutes: number;
  /** Minutes of it for raising the car. */
  readonly raising: number;
  readonly items: readonly Item[];
  /** The same as one walks round the car. */
  readonly stops: readonly Stop[];
  readonly cautions: readonly Caution[];
};

/** What of an item is asked; `null` where nothing is. */
export type Scope = (item: Item) => Asked | null;

/** An item of a brief: all of it, or these positions alone. */
export type AskedItem = { readonly item: string; readonly positions?: readonly string[] | undefined };

/**
 * All that a visit of one depth asks.
 *
 * @example visitOf(sheetVersion1, coupe, ofDepth("first-look")).map(({ stage }) => stage)[0]; // "cold"
 */
export const ofDepth =
  (depth: Depth): Scope =>
  (item) =>
    askedAt(item, depth);

/**
 * All that a brief names.
 *
 * @example ofBrief([{ item: "electrics.lamps", positions: ["left-stop"] }])(lamps) // { minutes: 2, positions: ["left-stop"] }
 */
export function ofBrief(items: readonly AskedItem[]): Scope {
  const named = new Map(items.map((one) => [one.item, one]));
  return (item) => {
    const one = named.get(item.id);
    if (one === undefined || !isAskedOnVisit(item)) return null;
    if (one.positions === undefined) return { minutes: item.minutes };
    return { minutes: item.sooner?.minutes ?? item.minutes, positions: one.positions };
  };
}

const placeOf = (sheet: Sheet): ((line: Line) => string) => {
  const standing = new Map(
    sheet.positionSets.flatMap(({ id, positions }) =>
      positions.map((one) => [`${id}@${one.id}`, one.place] as const),
    ),
  );
  return ({ item, position }) => {
    const own = item.inOneGo === true ? undefined : standing.get(`${item.positions ?? ""}@${position}`);
    return own ?? item.place ?? "";
  };
};

function stopsOf(sheet: Sheet, lines: readonly Line[]): Stop[] {
  const where = placeOf(sheet);
  const byPlace = Map.groupBy(lines, where);
  return sheet.places.flatMap((place) => {
    const here = byPlace.get(place.id);
    return here === undefined ? [] : [{ place, lines: here }];
  });
}

/**
 * A visit to one car by the sheet: its stages in order with their items as one walks round the car, the minutes of one person
 * alone (raising the car included), and the cautions that stand at each stage's gate because one of its items carries them. What
 * only a seller can claim and what another item asks is left out; a stage with nothing to do is too.
 *
 * @param asked what of each item is asked: by depth (`ofDepth`; each holds the ones before it) or as a brief names it (`ofBrief`)
 * @example
 * visitOf(sheetVersion1, coupe, ofDepth("first-look")).map(({ stage }) => stage)[0]; // "cold"
 */
export function visitOf(sheet: Sheet, form: VehicleForm, asked: Scope): StageOfVisit[] {
  const lines = applicablePlaces(sheet, form).filter(({ item, position }) => {
    const what = asked(item);
    return what !== null && (what.positions === undefined || what.positions.includes(position));
  });
  return STAGES.map((stage) => {
    const stops = stopsOf(
      sheet,
      lines.filter(({ item }) => item.stage === stage),
    );
    const items = [...new Set(stops.flatMap((stop) => stop.lines.map(({ item }) => item)))];
    const carried = new Set(items.flatMap((item) => item.cautions));
    const raising = stage === "lift" || stage === "second-lift" ? LIFT_HANDLING : 0;
    return {
      stage,
      raising,
      minutes: items.reduce((sum, item) => sum + (asked(item)?.minutes ?? 0), raising),
      items,
      stops,
      cautions: sheet.cautions.filter(
        ({ id, stages }) => stages?.includes(stage) === true && carried.has(id),
      ),
    };
  }).filter((each) => each.items.length > 0);
}
