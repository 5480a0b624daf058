import { estimate } from "@evenhand/measurement/estimate";
import { between } from "../draws/index.ts";
import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { CompressionInput } from "./index.ts";
import type { compressionRecord } from "./record.ts";

const psi = (...values: number[]) =>
  values.map((value, index) => ({ cylinder: index + 1, pressure: estimate(value, 1.5) }));

export const examples: Examples<typeof compressionRecord, CompressionInput> = {
  even: { cylinders: psi(150, 155, 148, 152) },
  uneven: { cylinders: psi(150, 95, 148, 152) },
  "neighbors-low": {
    cylinders: psi(150, 95, 96, 152),
    neighbors: [
      [1, 2],
      [2, 3],
      [3, 4],
    ],
  },
  "under-least": { cylinders: psi(90, 92, 91), makers: { lowestShare: 0.7, least: 100 } },
  "low-level": { cylinders: psi(60, 61, 60, 59), levelCounts: true },
  "range-covers": { cylinders: psi(150, 112, 148, 152) },
  "too-few": { cylinders: psi(150) },
};

export const trueClaims: TrueClaims<CompressionInput> = {
  "eight even cylinders": (read) => ({
    cylinders: Array.from({ length: 8 }, (_, cylinder) => ({ cylinder, pressure: read(150, 6) })),
  }),
  "eight cylinders at exactly the least level": (read) => ({
    cylinders: Array.from({ length: 8 }, (_, cylinder) => ({ cylinder, pressure: read(85, 3) })),
    levelCounts: true,
  }),
  "one cylinder of eight at exactly 75 %": (read) => ({
    cylinders: Array.from({ length: 8 }, (_, cylinder) => ({
      cylinder,
      pressure: read(cylinder === 3 ? 112.5 : 150, 4),
    })),
  }),
};

export const growth: Growth<CompressionInput> = {
  numbers: (n, u) => ({
    cylinders: n.map((_, index) => ({ cylinder: index, pressure: between(n, index, 90, 180, u) })),
    makers: { least: 100 },
  }),
};
