import type { RuleResult } from "@evenhand/shared/cross-check";
import type { Estimate } from "@evenhand/measurement/estimate";
import { rectangular } from "@evenhand/measurement/type-b";
import { convert, convertDifference } from "@evenhand/measurement/unit";
import { inUseRunout, inUseTread } from "../in-use/index.ts";
import { limitUse } from "../limits/index.ts";
import { ratioCombined } from "../ratio-combined/index.ts";
import type { RatioWay } from "../ratio-combined/index.ts";
import { roadEstimate, roadRatio } from "../road-ratio/index.ts";
import type { Coupling, RoadReading } from "../road-ratio/index.ts";
import { rollingCircumference } from "../rolling-circumference/index.ts";
import { speedometer } from "../speedometer/index.ts";
import { teeth } from "../teeth/index.ts";
import { tireDiameter } from "../tire-diameter/index.ts";
import { findTireSize } from "../tire-size/index.ts";
import type { Construction } from "../tire-size/index.ts";
import { tiresMixed } from "../tires-mixed/index.ts";
import type { FittedTire } from "../tires-mixed/index.ts";
import { turnsEstimate, turnsRatio } from "../turns-ratio/index.ts";
import type { Turning } from "../turns-ratio/index.ts";
import type { Checks, Finder, Prepared } from "./prepared.ts";
import { estimateOf, lowestOf, findClaim, findRead, findReads, optionOf, vehicleOf } from "./view.ts";
import type { Found, Read, View } from "./view.ts";

const present = <T>(values: readonly (T | undefined)[]): T[] =>
  values.flatMap((value) => (value === undefined ? [] : [value]));

const inInches = ({ value, standardUncertainty, degreesOfFreedom }: Estimate): Estimate => ({
  value: convert(value, "mm", "in"),
  standardUncertainty: convertDifference(standardUncertainty, "mm", "in"),
  degreesOfFreedom,
});

const constructionOf = (read: Read<"choice"> | undefined): Construction | undefined => {
  const option = optionOf(read);
  return option === "radial" || option === "bias" || option === "bias-belted" ? option : undefined;
};

type Fitted = { readonly tire: FittedTire; readonly reads: readonly Found[] };

const fittedAt = (view: View, corner: string): Fitted => {
  const size = findRead(view, "code", "wheels.tire-size", corner);
  const construction = findRead(view, "choice", "wheels.tire-construction", corner);
  return {
    tire: { size: size?.answer.text, construction: constructionOf(construction) },
    reads: present<Found>([size, construction]),
  };
};

const mixed: Finder = (view) => {
  const corners = {
    leftFront: fittedAt(view, "left-front"),
    rightFront: fittedAt(view, "right-front"),
    leftRear: fittedAt(view, "left-rear"),
    rightRear: fittedAt(view, "right-rear"),
  };
  const reads = Object.values(corners).flatMap((corner) => corner.reads);
  if (reads.length < 2) return [];
  const input = {
    leftFront: corners.leftFront.tire,
    rightFront: corners.rightFront.tire,
    leftRear: corners.leftRear.tire,
    rightRear: corners.rightRear.tire,
  };
  return [{ rule: "tires-mixed", reads, run: () => tiresMixed(input) }];
};

const rollouts: Finder = (view) =>
  findReads(view, "reading", "wheels.rollout").flatMap((rollout): Prepared[] => {
    const size = findRead(view, "code", "wheels.tire-size", rollout.position);
    const measured = estimateOf(view, rollout);
    if (size === undefined || measured === undefined) return [];
    const input = { size: size.answer.text, rollout: inInches(measured) };
    return [
      {
        rule: "tire-diameter",
        reads: [size, rollout],
        claim: size,
        run: () => tireDiameter(input, view.firm),
      },
    ];
  });

type Quantity = { readonly value: Estimate; readonly reads: readonly Found[] };

const DRIVEN_CORNERS = {
  rear: ["left-rear", "right-rear"],
  front: ["left-front", "right-front"],
  all: ["left-rear", "right-rear"],
};

/** What a driven wheel rolls in a turn: its measured rollout, else by its size; in. */
const findCircumference = (view: View): Quantity | undefined => {
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

const findQuantity = (view: View, item: string): Quantity | undefined => {
  const read = findRead(view, "reading", item);
  const value = read === undefined ? undefined : estimateOf(view, read);
  return read === undefined || value === undefined ? undefined : { value, reads: [read] };
};

const speeds: Finder = (view) => {
  const indicated = findQuantity(view, "road.indicated-speed");
  const satellite = findQuantity(view, "road.gps-speed");
  if (indicated === undefined || satellite === undefined) return [];
  const circumference = findCircumference(view);
  const claim = findClaim(view, "working", "electrics.speedometer");
  const fittedDiameter = circumference === undefined ? undefined : scaled(circumference.value, 1 / Math.PI);
  return [
    {
      rule: "speedometer",
      reads: [...indicated.reads, ...satellite.reads, ...(circumference?.reads ?? [])],
      claim: claim?.answer.value === "yes" ? claim : undefined,
      run: () =>
        speedometer({ indicated: indicated.value, satellite: satellite.value, fittedDiameter }, view.firm),
    },
  ];
};

const scaled = (estimate: Estimate, factor: number): Estimate => ({
  ...estimate,
  value: estimate.value * factor,
  standardUncertainty: estimate.standardUncertainty * factor,
});

type RatioClaimed = {
  readonly read: Read<"reading"> | undefined;
  readonly claimed: number | undefined;
  readonly makers: readonly number[] | undefined;
};

const claimedRatio = (view: View): RatioClaimed => {
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

type Road = {
  readonly reading: Omit<RoadReading, "gear"> & { readonly gear?: number };
  readonly reads: readonly Found[];
};

const findRoad = (view: View): Road | undefined => {
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

const findTurning = (view: View): { turning: Turning; read: Found } | undefined => {
  const read = findRead(view, "reading", "driveline.axle-turns");
  const shaftTurns = read === undefined ? undefined : estimateOf(view, read);
  const both = read?.finding.conditions?.["both-wheels"];
  if (read === undefined || shaftTurns === undefined || typeof both !== "boolean") return undefined;
  return { turning: { shaftTurns, wheelTurns: 1, wheels: both ? "both" : "one-held" }, read };
};

const findTeeth = (view: View): { ring: number; pinion: number; reads: readonly Found[] } | undefined => {
  const ring = findQuantity(view, "driveline.ring-teeth");
  const pinion = findQuantity(view, "driveline.pinion-teeth");
  if (ring === undefined || pinion === undefined) return undefined;
  return {
    ring: Math.round(ring.value.value),
    pinion: Math.round(pinion.value.value),
    reads: [...ring.reads, ...pinion.reads],
  };
};

/** Each way to the axle ratio by itself. */
const ratios: Finder = (view) => {
  const { read: claim, claimed, makers } = claimedRatio(view);
  if (claimed === undefined) return [];
  const [road, turning, counted] = [findRoad(view), findTurning(view), findTeeth(view)];
  const prepare = (rule: Prepared["rule"], reads: readonly Found[], run: () => RuleResult): Prepared => ({
    rule,
    reads,
    claim,
    run,
  });
  return present([
    road &&
      prepare("road-ratio", road.reads, () => roadRatio({ ...road.reading, claimed, makers }, view.firm)),
    turning &&
      prepare("turns-ratio", [turning.read], () =>
        turnsRatio({ ...turning.turning, claimed, makers }, view.firm),
      ),
    counted &&
      prepare("teeth", counted.reads, () =>
        teeth({ ring: counted.ring, pinion: counted.pinion, claimed, makers }, view.firm),
      ),
  ]);
};

type Way = RatioWay & { readonly reads: readonly Found[] };

/** A ratio on a tag, or from teeth, is quoted to two decimals. */
const quoted = (view: View, value: number): Estimate => ({
  value,
  standardUncertainty: rectangular(limitUse("ratio.rounding", view.firm).value),
  degreesOfFreedom: Number.POSITIVE_INFINITY,
});

const waysOf = (view: View): Way[] => {
  const tag = findQuantity(view, "driveline.axle-ratio-tag");
  const [road, turning, counted] = [findRoad(view), findTurning(view), findTeeth(view)];
  const gear = road?.reading.gear;
  return present<Way>([
    tag && { way: "tag", ratio: quoted(view, tag.value.value), reads: tag.reads },
    counted && { way: "teeth", ratio: quoted(view, counted.ring / counted.pinion), reads: counted.reads },
    turning && { way: "turns", ratio: turnsEstimate(turning.turning), reads: [turning.read] },
    road && gear !== undefined
      ? { way: "road", ratio: roadEstimate({ ...road.reading, gear }, view.firm), reads: road.reads }
      : undefined,
  ]);
};

const ratiosTogether: Finder = (view) => {
  const { read: claim, claimed, makers } = claimedRatio(view);
  if (claimed === undefined) return [];
  const ways = waysOf(view);
  if (ways.length < 2) return [];
  return [
    {
      rule: "ratio-combined",
      reads: ways.flatMap(({ reads }) => reads),
      claim,
      run: () => ratioCombined({ ways, claimed, makers }, view.firm),
    },
  ];
};

const treads: Finder = (view) =>
  findReads(view, "reading", "wheels.tread-depth").flatMap((read): Prepared[] => {
    const shallowest = lowestOf(view, read);
    return shallowest === undefined
      ? []
      : [{ rule: "in-use-tread", reads: [read], run: () => inUseTread(shallowest) }];
  });

const runouts: Finder = (view) =>
  ["wheels.runout-lateral", "wheels.runout-radial"]
    .flatMap((item) => findReads(view, "reading", item))
    .flatMap((read): Prepared[] => {
      const runout = estimateOf(view, read);
      return runout === undefined
        ? []
        : [{ rule: "in-use-runout", reads: [read], run: () => inUseRunout(runout) }];
    });

/** Rules on tires, road speed and the axle. */
export const wheelChecks: Checks = {
  oneReport: [mixed, treads, runouts],
  bothReports: [rollouts, speeds, ratios, ratiosTogether],
};
