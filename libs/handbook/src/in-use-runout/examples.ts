import { estimate } from "@evenhand/measurement/estimate";
import { between } from "../draws/index.ts";
import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { InUseRunoutInput } from "./index.ts";
import type { inUseRunoutRecord } from "./record.ts";

export const examples: Examples<typeof inUseRunoutRecord, InUseRunoutInput> = {
  meets: { runout: estimate(0.03, 0.005) },
  "over-limit": { runout: estimate(0.2, 0.005) },
  "range-covers": { runout: estimate(0.13, 0.005) },
};

export const trueClaims: TrueClaims<InUseRunoutInput> = {
  "runout at 1/8 in": (read) => ({ runout: read(0.125, 0.006) }),
};

export const growth: Growth<InUseRunoutInput> = {
  numbers: (n, u) => ({ runout: between(n, 0, 0, 0.25, u) }),
};
