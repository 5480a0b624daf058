/** Where on the car a line of body or structure lies; `whole` where it is the car's own shape. */
export const ZONES = [
  "left-front",
  "right-front",
  "left",
  "right",
  "left-rear",
  "right-rear",
  "front",
  "rear",
  "top",
  "whole",
] as const;
export type Zone = (typeof ZONES)[number];

/** Panels, gaps and glass by their positions. */
const panels: Readonly<Record<string, Zone>> = {
  "left-front-fender": "left-front",
  "hood-left-fender": "left-front",
  "left-fender-door": "left-front",
  "right-front-fender": "right-front",
  "hood-right-fender": "right-front",
  "right-fender-door": "right-front",
  "left-front-door": "left",
  "left-rear-door": "left",
  "left-rocker": "left",
  "left-front-door-rear-door": "left",
  "left-front-door-quarter": "left",
  "left-rear-door-quarter": "left",
  "left-door-rocker": "left",
  "left-rear-door-rocker": "left",
  "right-front-door": "right",
  "right-rear-door": "right",
  "right-rocker": "right",
  "right-front-door-rear-door": "right",
  "right-front-door-quarter": "right",
  "right-rear-door-quarter": "right",
  "right-door-rocker": "right",
  "right-rear-door-rocker": "right",
  "left-quarter": "left-rear",
  "trunk-left-quarter": "left-rear",
  "tailgate-left": "left-rear",
  "right-quarter": "right-rear",
  "trunk-right-quarter": "right-rear",
  "tailgate-right": "right-rear",
  hood: "front",
  "nose-panel": "front",
  cowl: "front",
  "hood-cowl": "front",
  "hood-nose": "front",
  "trunk-lid": "rear",
  tailgate: "rear",
  "tail-panel": "rear",
  "trunk-tail": "rear",
  roof: "top",
};

/** Items whose position is a quarter of the floor or a side: the rocker between the wheels. */
const ON_A_SIDE: ReadonlySet<string> = new Set([
  "underbody.lift-points",
  "underbody.torque-boxes",
  "underbody.floor-pans",
  "underbody.floor-repair",
  "underbody.jacking-damage",
  "underbody.welds-and-sealer",
  "underbody.fresh-undercoat",
  "underbody.inner-rockers",
  "underbody.pinch-welds",
]);
/** Items whose side means the rear wheel of that side. */
const AT_A_REAR_WHEEL: ReadonlySet<string> = new Set([
  "underbody.spring-hangers",
  "underbody.rear-rails-over-axle",
  "trunk.wheel-wells",
]);
/** Items that have one place. */
const ITEMS: Readonly<Record<string, Zone>> = {
  "underbody.firewall": "front",
  "underbody.radiator-support": "front",
  "underbody.battery-tray": "front",
  "body.cowl-water": "front",
  "trunk.floor": "rear",
  "trunk.lid-underside": "rear",
  "trunk.channels": "rear",
  "underbody.trunk-drop-offs": "rear",
  "body.vinyl-roof": "top",
  "body.drip-rails": "top",
};

const sideOf = (position: string): "left" | "right" | undefined =>
  position.startsWith("left") ? "left" : position.startsWith("right") ? "right" : undefined;

const cornerOf = (position: string): Zone => {
  const side = sideOf(position);
  if (position === "front" || position === "rear") return position;
  if (side === undefined || position.includes("-rear") === position.includes("-front")) return "whole";
  return position.includes("-rear") ? `${side}-rear` : `${side}-front`;
};

/**
 * Where on the car a line of body or structure lies.
 *
 * @example zoneOf("underbody.inner-rockers", "left") // "left"
 * @example zoneOf("underbody.rails", "right-front") // "right-front"
 * @example zoneOf("underbody.diagonals", "left-front-right-rear") // "whole"
 */
export const zoneOf = (item: string, position: string): Zone => {
  const side = sideOf(position);
  if (ON_A_SIDE.has(item)) return side ?? "whole";
  if (AT_A_REAR_WHEEL.has(item)) return side === undefined ? "whole" : `${side}-rear`;
  return ITEMS[item] ?? panels[position] ?? cornerOf(position);
};

const NEIGHBORS: Readonly<Record<Zone, readonly Zone[]>> = {
  "left-front": ["front", "left"],
  "right-front": ["front", "right"],
  left: ["left-front", "left-rear"],
  right: ["right-front", "right-rear"],
  "left-rear": ["rear", "left"],
  "right-rear": ["rear", "right"],
  front: ["left-front", "right-front"],
  rear: ["left-rear", "right-rear"],
  top: [],
  whole: ["left-front", "right-front", "left-rear", "right-rear", "front", "rear"],
};

/**
 * Zones that touch one: what bends one shows in the other.
 *
 * @example neighborsOf("front") // ["left-front", "right-front"]
 */
export const neighborsOf = (zone: Zone): readonly Zone[] => NEIGHBORS[zone];
