import type { VisitStage } from "@evenhand/shared/booking";
import type { Item } from "@evenhand/shared/sheet";
import type { GateSubject, VisitItem } from "../visit-plan/index.ts";

/** Items of the sheet whose needs alone do not say when in the visit they are looked at. */
export const STAGE_OF_ITEM: Readonly<Record<string, VisitStage>> = {
  "engine.smoke-cold": "cold-start",
  "road.cold-start": "cold-start",
  "driveline.leaks-after": "second-lift",
};

/** Items of the sheet that speak to the gate to the road. */
export const GATE_OF_ITEM: Readonly<Record<string, readonly GateSubject[]>> = {
  "underbody.lift-points": ["lift-points"],
  "brakes.pedal-reserve": ["brakes"],
  "brakes.pedal-sink": ["brakes"],
  "brakes.hoses": ["brakes"],
  "driveline.lines": ["brakes", "fuel-lines"],
  "driveline.fuel-hoses": ["fuel-lines"],
  "steering.free-play": ["steering"],
  "steering.ball-joint-play": ["steering"],
  "steering.tie-rod-ends": ["steering"],
  "wheels.tire-faults": ["tires"],
  "wheels.tread-depth": ["tires"],
  "wheels.fixings": ["wheel-fixings"],
};

/**
 * Items of the sheet as a visit plans them: minutes and needs from the sheet, stage and gate where the sheet's needs do
 * not tell. An id the sheet no longer has shows at once: a brief with the road in it is then refused for its gate.
 *
 * @example toVisitItem({ id: "driveline.leaks-after", minutes: 3, needs: ["lift"] })
 * // { item: "driveline.leaks-after", minutes: 3, needs: ["lift"], stage: "second-lift" }
 */
export function toVisitItem({ id, minutes, needs }: Pick<Item, "id" | "minutes" | "needs">): VisitItem {
  const stage = STAGE_OF_ITEM[id];
  const gate = GATE_OF_ITEM[id];
  return {
    item: id,
    minutes,
    needs,
    ...(stage === undefined ? {} : { stage }),
    ...(gate === undefined ? {} : { gate }),
  };
}
