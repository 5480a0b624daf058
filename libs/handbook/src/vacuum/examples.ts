import { estimate } from "@evenhand/measurement/estimate";
import { between } from "../draws/index.ts";
import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { VacuumInput } from "./index.ts";
import type { vacuumRecord } from "./record.ts";

const idle = {
  vacuum: estimate(19, 0.2),
  height: estimate(500, 50),
  needle: "steady",
  timing: "right",
  cam: "stock",
} as const;

export const examples: Examples<typeof vacuumRecord, VacuumInput> = {
  "in-band": idle,
  low: { ...idle, vacuum: estimate(14, 0.2) },
  "needle-drops": { ...idle, needle: "dropping" },
  "needle-drifts": { ...idle, needle: "drifting" },
  "needle-flutters": { ...idle, needle: "fluttering" },
  "range-covers": { ...idle, vacuum: estimate(16.5, 0.3) },
  "late-timing": { ...idle, vacuum: estimate(14, 0.2), timing: "late" },
  "timing-unknown": { ...idle, vacuum: estimate(14, 0.2), timing: "unknown" },
  "cam-unknown": { ...idle, vacuum: estimate(14, 0.2), cam: "unknown" },
  "cam-not-stock": { ...idle, cam: "other" },
  "height-unknown": { ...idle, height: undefined },
  high: { ...idle, vacuum: estimate(24, 0.2) },
};

export const trueClaims: TrueClaims<VacuumInput> = {
  "vacuum at the band's low end": (read) => ({
    vacuum: read(15, 0.4),
    height: read(2000, 100),
    needle: "steady",
    timing: "right",
    cam: "stock",
  }),
};

export const growth: Growth<VacuumInput> = {
  numbers: (n, u) => ({
    vacuum: between(n, 0, 10, 23, u),
    height: between(n, 1, 0, 4000, u),
    needle: "steady",
    timing: "right",
    cam: "stock",
  }),
};
