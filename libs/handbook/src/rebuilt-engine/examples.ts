import { estimate } from "@evenhand/measurement/estimate";
import { between } from "../draws/index.ts";
import { exactly } from "../interval/index.ts";
import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { RebuiltEngineInput } from "./index.ts";
import type { rebuiltEngineRecord } from "./record.ts";

const psi = (...values: number[]) =>
  values.map((value, index) => ({ cylinder: index + 1, pressure: estimate(value, 1.5) }));

export const examples: Examples<typeof rebuiltEngineRecord, RebuiltEngineInput> = {
  "no-contradiction": { pressures: psi(150, 148, 155, 152) },
  "failed-cylinder": { pressures: psi(150, 140, 155, 90) },
  tired: { pressures: psi(60, 61, 60, 59) },
  uneven: { pressures: psi(150, 122, 155, 152) },
  leaks: { pressures: psi(150, 148, 155, 152), leaks: [{ cylinder: 3, leak: estimate(34, 0.7) }] },
  smokes: { pressures: psi(150, 148, 155, 152), smokes: true },
  "low-oil": {
    pressures: psi(150, 148, 155, 152),
    oil: [{ pressure: estimate(9, 0.5), engineSpeed: exactly(2000), oilTemperature: 95 }],
  },
  "blows-by": { pressures: psi(150, 148, 155, 152), blowsBy: true },
  "range-covers": { pressures: psi(150, 128, 151, 152) },
  "too-few": {},
};

export const trueClaims: TrueClaims<RebuiltEngineInput> = {
  "a rebuilt engine with one cylinder at exactly 85 %": (read) => ({
    pressures: Array.from({ length: 8 }, (_, index) => ({
      cylinder: index + 1,
      pressure: read(index === 3 ? 127.5 : 150, 4),
    })),
  }),
  "a rebuilt engine at exactly 100 psi": (read) => ({
    pressures: Array.from({ length: 8 }, (_, index) => ({ cylinder: index + 1, pressure: read(100, 3) })),
  }),
};

export const growth: Growth<RebuiltEngineInput> = {
  numbers: (n, u) => ({
    pressures: n.map((_, index) => ({ cylinder: index + 1, pressure: between(n, index, 95, 150, u) })),
  }),
};
