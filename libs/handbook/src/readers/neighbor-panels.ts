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

/**
 * Pairs among the given panels that meet on a car.
 *
 * @example neighborPanels(["hood", "left-front-fender", "trunk-lid"]) // [["hood", "left-front-fender"]]
 */
export const neighborPanels = (panels: readonly string[]): (readonly [string, string])[] => {
  const there = new Set(panels);
  const left = SIDE.filter(
    (pair) => !(there.has("left-rear-door") && pair.every((panel) => FRONT_DOOR_TO_QUARTER.includes(panel))),
  );
  const right = left.map(([one, other]) => [mirror(one), mirror(other)] as const);
  return [...left, ...right, ...MIDDLE].filter(([one, other]) => there.has(one) && there.has(other));
};
