import { estimate } from "@evenhand/measurement/estimate";
import { between } from "../draws/index.ts";
import type { DrawnReading } from "../draws/index.ts";
import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { RoadRatioInput } from "./index.ts";
import type { roadRatioRecord } from "./record.ts";

const makers = [3.23, 3.58, 3.73];
const cruise = {
  engineSpeed: estimate(2400, 15),
  roadSpeed: estimate(60, 0.2),
  circumference: estimate(83.6, 0.2),
  gear: 1,
  coupling: "clutch",
  makers,
} as const;
const road = (read: DrawnReading, slip: number) => ({
  engineSpeed: read((3.58 * 1056 * 60) / (82 * (1 - slip)), 12),
  roadSpeed: read(60, 0.25),
  circumference: read(82, 0.35),
  gear: 1,
  claimed: 3.58,
});

export const examples: Examples<typeof roadRatioRecord, RoadRatioInput> = {
  "claimed-ratio": { ...cruise, claimed: 3.23, engineSpeed: estimate(2448, 15) },
  "other-ratio": { ...cruise, claimed: 3.58 },
  "cannot-separate": { ...cruise, engineSpeed: estimate(2700, 120), claimed: 3.58 },
  "no-claim": cruise,
  "gear-unknown": { ...cruise, gear: undefined, claimed: 3.58 },
  "too-slow": { ...cruise, roadSpeed: estimate(12, 0.2), claimed: 3.58 },
};

export const trueClaims: TrueClaims<RoadRatioInput> = {
  "axle from the road, clutch": (read) => ({ ...road(read, 0), coupling: "clutch" }),
  "axle from the road, converter at its least slip": (read) => ({
    ...road(read, 0.01),
    coupling: "unlocked",
  }),
  "axle from the road, converter at its greatest slip": (read) => ({
    ...road(read, 0.08),
    coupling: "unlocked",
  }),
};

export const growth: Growth<RoadRatioInput> = {
  numbers: (n, u) => ({
    engineSpeed: between(n, 0, 2000, 3000, u),
    roadSpeed: between(n, 1, 55, 65, u),
    circumference: between(n, 2, 80, 88, u),
    gear: 1,
    coupling: "unlocked",
    claimed: 3.23,
    makers: [2.76, 3.23, 3.91],
  }),
};
