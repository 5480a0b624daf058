import type { Figures, LimitFigures } from "@evenhand/shared/comparison";
import type { Reason } from "../reason/index.ts";
import type { Direction, Outcome, Standing } from "@evenhand/shared/outcome";

/** What a comparison of two answers of one kind says; the place, the findings and the atom are added outside. */
export type Judgment = {
  readonly outcome: Outcome;
  /** Stable code of why. */
  readonly reason: Reason;
  readonly direction: Direction;
  readonly standing: Standing;
  readonly figures?: Figures | undefined;
  readonly limits?: LimitFigures[] | undefined;
};
