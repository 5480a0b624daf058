import type { Estimate } from "@evenhand/measurement/estimate";
import { convert, convertDifference } from "@evenhand/measurement/unit";
import type { Coupling, RoadReading } from "../road-ratio/index.ts";
import { rollingCircumference } from "../rolling-circumference/index.ts";
import { findTireSize } from "../tire-size/index.ts";
import type { Turning } from "../turns-ratio/index.ts";
import { estimateOf, findClaim, findRead, optionOf, vehicleOf } from "../view/index.ts";
import type { Found, Read, View } from "../view/index.ts";
import { present } from "./present.ts";

/** A length read in millimeters, in inches. */
export const inInches = ({ value, standardUncertainty, degreesOfFreedom }: Estimate): Estimate => ({
  value: convert(value, "mm", "in"),
  standardUncertainty: convertDifference(standardUncertainty, "mm", "in"),
  degreesOfFreedom,
});

/** A value with the findings it is from. */
export type Quantity = { readonly value: Estimate; readonly reads: readonly Found[] };

const DRIVEN_CORNERS = {
  rear: ["left-rear", "right-rear"],
  front: ["left-front", "right-front"],
  all: ["left-rear", "right-rear"],
};

/** What a driven wheel rolls in a turn: its measured rollout, else by its size; in. */
export const findCircumference = (view: View): Quantity | undefined => {
  const corners = DRIVEN_CORNERS[vehicleOf(view)?.form.driven ?? "rear"];
  for (const corner of corners) {
    const rollout = findRead(view, "reading", "wheels.rollout", corner);
    const measured = rollout === undefined ? undefined : estimateOf(view, rollout);
    if (rollout !== undefined && measured !== undefined)
      return { value: inInches(measured), reads: [rollout] };
  }
  for (const corner of corners) {
    const size = findRead(view, "code", "wheels.tire-size", corner);
    const tire = size === undefined ? undefined : findTireSize(size.answer.text);
    if (size !== undefined && tire !== undefined)
      return { value: rollingCircumference(tire.diameter, view.firm), reads: [size] };
  }
  return undefined;
};

/** A reading of the car as a whole. */
export const findQuantity = (view: View, item: string): Quantity | undefined => {
  const read = findRead(view, "reading", item);
  const value = read === undefined ? undefined : estimateOf(view, read);
  return read === undefined || value === undefined ? undefined : { value, reads: [read] };
};

/** An estimate times a number. */
export const scaled = (estimate: Estimate, factor: number): Estimate => ({
  ...estimate,
  value: estimate.value * factor,
  standardUncertainty: estimate.standardUncertainty * factor,
});

/** A ratio claimed, with the finding that claims it. */
export type RatioClaimed = {
  readonly read: Read<"reading"> | undefined;
  readonly claimed: number | undefined;
  readonly makers: readonly number[] | undefined;
};

/** The axle ratio claimed, and those the maker offered. */
export const claimedRatio = (view: View): RatioClaimed => {
  const read = findClaim(view, "reading", "driveline.axle-ratio");
  return {
    read,
    claimed: read === undefined ? undefined : estimateOf(view, read)?.value,
    makers: view.maker.axleRatios,
  };
};

const couplingOf = (view: View, lockUp: Read<"choice"> | undefined): Coupling => {
  if (vehicleOf(view)?.form.gearbox === "manual") return "clutch";
  const option = optionOf(lockUp);
  if (option === "in") return "locked";
  return option === "out" || option === "none-fitted" ? "unlocked" : "unknown";
};

/** A reading of the road with its findings. */
export type Road = {
  readonly reading: Omit<RoadReading, "gear"> & { readonly gear?: number };
  readonly reads: readonly Found[];
};

/** What the road told of the axle. */
export const findRoad = (view: View): Road | undefined => {
  const engineSpeed = findQuantity(view, "road.revolutions");
  const roadSpeed = findQuantity(view, "road.gps-speed");
  const circumference = findCircumference(view);
  if (engineSpeed === undefined || roadSpeed === undefined || circumference === undefined) return undefined;
  const gear = findQuantity(view, "road.gear-ratio");
  const lockUp = findRead(view, "choice", "road.lock-up");
  return {
    reading: {
      engineSpeed: engineSpeed.value,
      roadSpeed: roadSpeed.value,
      circumference: circumference.value,
      gear: gear?.value.value,
      coupling: couplingOf(view, lockUp),
    },
    reads: present<Found>([
      ...engineSpeed.reads,
      ...roadSpeed.reads,
      ...circumference.reads,
      gear?.reads[0],
      lockUp,
    ]),
  };
};

/** What turning the wheels told of the axle. */
export const findTurning = (view: View): { turning: Turning; read: Found } | undefined => {
  const read = findRead(view, "reading", "driveline.axle-turns");
  const shaftTurns = read === undefined ? undefined : estimateOf(view, read);
  const both = read?.finding.conditions?.["both-wheels"];
  if (read === undefined || shaftTurns === undefined || typeof both !== "boolean") return undefined;
  return { turning: { shaftTurns, wheelTurns: 1, wheels: both ? "both" : "one-held" }, read };
};

/** The teeth counted or on the tag. */
export const findTeeth = (
  view: View,
): { ring: number; pinion: number; reads: readonly Found[] } | undefined => {
  const ring = findQuantity(view, "driveline.ring-teeth");
  const pinion = findQuantity(view, "driveline.pinion-teeth");
  if (ring === undefined || pinion === undefined) return undefined;
  return {
    ring: Math.round(ring.value.value),
    pinion: Math.round(pinion.value.value),
    reads: [...ring.reads, ...pinion.reads],
  };
};
