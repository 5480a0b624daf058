import { neighborsOf, zoneOf } from "../zone/index.ts";
import type { Zone } from "../zone/index.ts";
import { kindOf } from "../kinds/index.ts";
import { weightOfGroup } from "./line.ts";
import type { Group, Line } from "./line.ts";

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
const zoneOfLine = ({ entry }: Line): Zone => zoneOf(entry.item, entry.position);

/** Whether a kind's lines are joined by their place on the car. */
export const isOfBody = ({ kind }: Line): boolean => CARRIES.has(kind.id) || SHOWS.has(kind.id);

const ENDS: readonly Zone[] = ["front", "rear"];

type Anchors = ReadonlyMap<Zone, readonly Line[]>;

const graver = (anchors: Anchors, zones: readonly Zone[]): Zone | undefined => {
  let best: Zone | undefined;
  let least = Infinity;
  for (const zone of zones) {
    const lines = anchors.get(zone);
    const weight = lines === undefined ? Infinity : weightOfGroup({ lines });
    if (weight < least) [best, least] = [zone, weight];
  }
  return best;
};

/** Places where something grave carries; what lies across the whole car belongs to the corner that was bent, if one was. */
const anchorsOf = (lines: readonly Line[]): Anchors => {
  const grave = Map.groupBy(
    lines.filter((line) => CARRIES.has(line.kind.id) && isGrave(line)),
    zoneOfLine,
  );
  const bent = new Map([...grave].filter(([, at]) => at.some(({ entry }) => BENT.has(entry.item))));
  for (const end of ENDS) {
    if (grave.has(end) && graver(grave, neighborsOf(end)) !== undefined) grave.delete(end);
  }
  if (graver(bent, neighborsOf("whole")) !== undefined) grave.delete("whole");
  return grave;
};

const anchorFor = (line: Line, anchors: Anchors): Zone | undefined => {
  const zone = zoneOfLine(line);
  if (anchors.has(zone)) return zone;
  if (zone === "whole") {
    const bent = new Map([...anchors].filter(([, at]) => at.some(({ entry }) => BENT.has(entry.item))));
    return graver(bent, neighborsOf(zone));
  }
  const carriesAtAnEnd = ENDS.includes(zone) && CARRIES.has(line.kind.id) && isGrave(line);
  const follows = line.kind.id === "paint" || line.kind.id === "fit" || carriesAtAnEnd;
  return follows ? graver(anchors, neighborsOf(zone)) : undefined;
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
  const anchors = anchorsOf(lines);
  const placed = Map.groupBy(lines, (line) => anchorFor(line, anchors) ?? line.kind.id);
  return [...placed].map(([key, at]): Group => {
    const zone = [...anchors.keys()].find((anchor) => anchor === key);
    const kind = zone === undefined ? kindOf(key) : kindOfPlace(at);
    return { kind, zone: zone ?? null, lines: at };
  });
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
