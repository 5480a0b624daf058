import type { VisitStage } from "@evenhand/shared/booking";
import type { Item, Stage } from "@evenhand/shared/sheet";
import type { GateSubject, VisitItem } from "../visit-plan/index.ts";

/** The sheet's finer stages as a booking plans them. */
const PLANNED_AS: Readonly<Record<Stage, VisitStage>> = {
  cold: "before-start",
  papers: "before-start",
  daylight: "before-start",
  "cold-start": "cold-start",
  running: "cold-start",
  lift: "first-lift",
  road: "road",
  hot: "hot",
  "second-lift": "second-lift",
  last: "hot",
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
 * Items of the sheet as a visit plans them: minutes, needs and stage from the sheet, with the subjects of the gate to the road
 * they speak to. What an item says last (compression) is planned with what is done hot.
 *
 * @example toVisitItem({ id: "driveline.leaks-after", minutes: 3, needs: ["lift"], stage: "second-lift" })
 * // { item: "driveline.leaks-after", minutes: 3, needs: ["lift"], stage: "second-lift" }
 */
export function toVisitItem({
  id,
  minutes,
  needs,
  stage,
}: Pick<Item, "id" | "minutes" | "needs" | "stage">): VisitItem {
  const gate = GATE_OF_ITEM[id];
  return {
    item: id,
    minutes,
    needs,
    stage: PLANNED_AS[stage],
    ...(gate === undefined ? {} : { gate }),
  };
}
