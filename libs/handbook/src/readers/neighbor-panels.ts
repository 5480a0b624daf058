/** Panels that meet, from nose to tail, on the left; the right mirrors them. */
const SIDE = [
  ["hood", "left-front-fender"],
  ["nose-panel", "left-front-fender"],
  ["left-front-fender", "left-front-door"],
  ["left-front-door", "left-rear-door"],
  ["left-front-door", "left-quarter"],
  ["left-rear-door", "left-quarter"],
  ["left-front-door", "left-rocker"],
  ["left-rear-door", "left-rocker"],
  ["left-quarter", "trunk-lid"],
  ["left-quarter", "tailgate"],
  ["left-quarter", "tail-panel"],
] as const;

const MIDDLE = [
  ["hood", "nose-panel"],
  ["hood", "cowl"],
  ["trunk-lid", "tail-panel"],
  ["tailgate", "tail-panel"],
] as const;

/** On a car with rear doors the front door does not reach the quarter. */
const FRONT_DOOR_TO_QUARTER = ["left-front-door", "left-quarter"];

const mirror = (panel: string): string => panel.replace("left", "right");

type Pair = readonly [string, string];

const isFrontDoorToQuarter = ([one, other]: Pair): boolean =>
  FRONT_DOOR_TO_QUARTER.includes(one) && FRONT_DOOR_TO_QUARTER.includes(other);

/** Every pair of panels that meet, on a car with rear doors at the left and without. */
const withPairs = (left: readonly Pair[]): readonly Pair[] => [
  ...left,
  ...left.map(([one, other]): Pair => [mirror(one), mirror(other)]),
  ...MIDDLE,
];
const TWO_DOORS = withPairs(SIDE);
const FOUR_DOORS = withPairs(SIDE.filter((pair) => !isFrontDoorToQuarter(pair)));

/**
 * Pairs among the given panels that meet on a car.
 *
 * @example neighborPanels(["hood", "left-front-fender", "trunk-lid"]) // [["hood", "left-front-fender"]]
 */
export const neighborPanels = (panels: readonly string[]): Pair[] => {
  const there = new Set(panels);
  const pairs = there.has("left-rear-door") ? FOUR_DOORS : TWO_DOORS;
  return pairs.filter(([one, other]) => there.has(one) && there.has(other));
};
