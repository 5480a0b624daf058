import { neighborsOf, zoneOf } from "../zone/index.ts";
import type { Zone } from "../zone/index.ts";
import { kindOf } from "../kinds/index.ts";
import type { Kind } from "../kinds/index.ts";
import { addTo, groupOf, leastWeight } from "./line.ts";
import type { Group, Line } from "./line.ts";
import { zoneAt } from "./of-sheet.ts";

const CARRIES: ReadonlySet<string> = new Set(["structure", "bodywork"]);
/** What shows at a place and does not make one: paint, gaps, a door that will not latch. */
const SHOWS: ReadonlySet<string> = new Set(["paint", "fit", "latches"]);
/** What a blow bends. */
const BENT: ReadonlySet<string> = new Set([
  "underbody.rails",
  "underbody.rail-joints",
  "underbody.towers",
  "underbody.outer-wheelhouses",
  "body.fender-inner-face",
  "body.spot-welds",
]);
/** Found, and what the price rests on or graver. */
const GRAVE = 3;

const isGrave = ({ weight }: Line): boolean => weight < GRAVE;
const zoneOfLine = ({ entry: { item, position }, of }: Line): Zone =>
  of === undefined ? zoneOf(item, position) : zoneAt(of, item, position);

const OF_BODY: ReadonlySet<string> = new Set([...CARRIES, ...SHOWS]);

/** Whether a kind's lines are joined by their place on the car. */
export const isOfBody = ({ kind }: Line): boolean => OF_BODY.has(kind.id);

const ENDS: readonly Zone[] = ["front", "rear"];

type Anchors = ReadonlyMap<Zone, readonly Line[]>;

const graver = (anchors: Anchors, zones: readonly Zone[]): Zone | undefined => {
  let best: Zone | undefined;
  let least = Infinity;
  for (const zone of zones) {
    const lines = anchors.get(zone);
    const weight = lines === undefined ? Infinity : leastWeight(lines);
    if (weight < least) [best, least] = [zone, weight];
  }
  return best;
};

/** A line with its place on the car. */
type Placed = { readonly line: Line; readonly zone: Zone };

const isCarrying = (line: Line): boolean => CARRIES.has(line.kind.id) && isGrave(line);

/** Of some places those where something is bent. */
const bentOf = (anchors: Anchors): Anchors =>
  new Map([...anchors].filter(([, at]) => at.some(({ entry }) => BENT.has(entry.item))));

/** Places where something grave carries; what lies across the whole car belongs to the corner that was bent, if one was. */
const anchorsOf = (placed: readonly Placed[]): Anchors => {
  const grave = new Map<Zone, Line[]>();
  for (let index = 0; index < placed.length; index += 1) {
    const one = placed[index];
    if (one !== undefined && isCarrying(one.line)) addTo(grave, one.zone, one.line);
  }
  const bent = bentOf(grave);
  for (const end of ENDS) {
    if (grave.has(end) && graver(grave, neighborsOf(end)) !== undefined) grave.delete(end);
  }
  if (graver(bent, neighborsOf("whole")) !== undefined) grave.delete("whole");
  return grave;
};

/** Where each line belongs, by the places that hold something grave. */
const placing = (anchors: Anchors) => {
  const bentCorner = graver(bentOf(anchors), neighborsOf("whole"));
  return ({ line, zone }: Placed): Zone | undefined => {
    if (anchors.has(zone)) return zone;
    if (zone === "whole") return bentCorner;
    const carriesAtAnEnd = ENDS.includes(zone) && isCarrying(line);
    const follows = line.kind.id === "paint" || line.kind.id === "fit" || carriesAtAnEnd;
    return follows ? graver(anchors, neighborsOf(zone)) : undefined;
  };
};

/** What a place is called by: its structure, where that is grave, else its panels. */
const kindOfPlace = (lines: readonly Line[]) =>
  kindOf(lines.some((line) => line.kind.id === "structure" && isGrave(line)) ? "structure" : "bodywork");

/**
 * Lines of body and structure joined by place: one group for each corner or side where something grave carries, with the paint, the
 * gaps and the doors that show it; what no such place takes stands together by its kind.
 *
 * @param lines found lines of body and structure
 */
export const joinBody = (lines: readonly Line[]): Group[] => {
  const placed = lines.map((line): Placed => ({ line, zone: zoneOfLine(line) }));
  const anchors = anchorsOf(placed);
  const anchorFor = placing(anchors);
  const groups = new Map<Zone | Kind, Line[]>();
  for (const one of placed) addTo(groups, anchorFor(one) ?? one.line.kind, one.line);
  return [...groups].map(([key, at]): Group =>
    typeof key === "string" ? groupOf(kindOfPlace(at), key, at) : groupOf(key, null, at),
  );
};

/**
 * What stands at the place where a line of the body lies.
 *
 * @param there by place
 * @example findPlace(unseenRail, new Map([["right-front", group]])) === group // true
 */
export const findPlace = <At>(line: Line, there: ReadonlyMap<Zone, At>): At | undefined => {
  const own = zoneOfLine(line);
  const at = there.get(own);
  if (at !== undefined || (line.kind.id !== "paint" && line.kind.id !== "fit")) return at;
  const beside = neighborsOf(own).find((zone) => there.has(zone));
  return beside === undefined ? undefined : there.get(beside);
};
