import { estimate } from "@evenhand/measurement/estimate";
import { between } from "../draws/index.ts";
import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { TireDiameterInput } from "./index.ts";
import type { tireDiameterRecord } from "./record.ts";

export const examples: Examples<typeof tireDiameterRecord, TireDiameterInput> = {
  "rollout-fits": { size: "P205/75R15", rollout: estimate(82.6, 0.1) },
  "rollout-differs": { size: "P205/75R15", rollout: estimate(90, 0.1) },
  "equal-in-diameter": { size: "P205/75R15", other: "215/70R15" },
  "other-diameter": { size: "P205/75R15", other: "P205/60R15" },
  "range-covers": { size: "G78-15", other: "P225/75R15" },
  "size-unreadable": { size: "round" },
  "nothing-to-set-against": { size: "P205/75R15" },
};

export const trueClaims: TrueClaims<TireDiameterInput> = {
  "rollout 3 % over": (read) => ({ size: "P205/75R15", rollout: read(1.03 * 0.97 * Math.PI * 27.1063, 0.3) }),
};

export const growth: Growth<TireDiameterInput> = {
  numbers: (n, u) => ({ size: "P205/75R15", rollout: between(n, 0, 70, 95, u) }),
};
