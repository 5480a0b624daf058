import type { Place, Station, Words } from "@evenhand/shared/sheet";
import { words } from "./draft.ts";

const numbered = (plan: Station["plan"], places: [id: string, named: Words][]): Station[] =>
  places.map(([id, named], index) => ({ id, plan, number: index + 1, words: named }));

/**
 * Places on the plan drawing, numbered in the order one walks: from the nose down the driver's left side, across the back, up the
 * right side, then inside; underneath from the left front round to the right front, then along the middle. Left is the driver's
 * left, whatever side the wheel is on.
 */
export const stations: Station[] = [
  ...numbered("outside", [
    ["nose", words("nose", "front", ["front bumper", "grille"])],
    ["left-fender", words("left front fender", "left front wing")],
    ["left-front-door", words("left front door")],
    ["left-rear-door", words("left rear door")],
    ["left-quarter", words("left quarter panel", "left rear wing")],
    ["tail", words("tail", "rear", ["rear bumper"])],
    ["trunk", words("trunk", "boot")],
    ["right-quarter", words("right quarter panel", "right rear wing")],
    ["right-rear-door", words("right rear door")],
    ["right-front-door", words("right front door")],
    ["right-fender", words("right front fender", "right front wing")],
    ["hood", words("hood", "bonnet")],
    ["windshield", words("windshield", "windscreen")],
    ["roof", words("roof", undefined, ["top"])],
    ["cabin", words("cabin", undefined, ["inside"])],
    ["engine-bay", words("engine bay")],
  ]),
  ...numbered("underneath", [
    ["under-left-front", words("left front, underneath")],
    ["under-left-middle", words("left middle, underneath")],
    ["under-left-rear", words("left rear, underneath")],
    ["under-tail", words("tail, underneath")],
    ["under-right-rear", words("right rear, underneath")],
    ["under-right-middle", words("right middle, underneath")],
    ["under-right-front", words("right front, underneath")],
    ["under-front", words("front middle, underneath")],
    ["under-middle", words("middle, underneath")],
    ["under-rear", words("rear middle, underneath")],
  ]),
];

/** Where one stands, in the order one walks: the desk with its papers, the stations of the plan drawing, and where one sums up. */
export const standingPlaces: Place[] = [
  { id: "desk", words: words("at the desk, with the papers") },
  ...stations.map((station) => ({ id: station.id, words: station.words })),
  { id: "summing-up", words: words("when all is looked at") },
];
