import { z } from "zod";
import { LocalId } from "./identifier.ts";
import { Severity } from "./severity.ts";

/**
 * How sure it is: a figure or a rule says so · somebody saw it · it was said · it is in doubt · nobody knows. That of a matter is
 * its strongest line's.
 */
export const CERTAINTIES = ["measured", "seen", "told", "doubtful", "unknown"] as const;
export const Certainty = z.enum(CERTAINTIES);
export type Certainty = z.infer<typeof Certainty>;

/** What to do about a matter. To walk away is the buyer's own word and never stands here. */
export const NEXT_STEPS = ["see-paper", "ask", "look-again", "open-up", "bargain", "do-not-drive"] as const;
export const NextStep = z.enum(NEXT_STEPS);
export type NextStep = z.infer<typeof NextStep>;

/** One thing that is wrong, doubtful or unknown with this car, whatever number of lines speak of it. */
export const Matter = z.strictObject({
  /** Kind of matter, as `libs/matters` lists them. */
  kind: LocalId,
  /** Where on the car, for kinds that are joined by place. */
  zone: LocalId.nullable(),
  /** Its worst line's. */
  severity: Severity,
  certainty: Certainty,
  /** What is wrong, in a few words made from what was found. */
  headline: z.string(),
  /** The gravest lines, what was found and what was stated, and how many more there are. */
  found: z.string(),
  /** What would decide it. */
  decides: z.string(),
  next: z.strictObject({
    step: NextStep,
    words: z.string(),
    /** What looking again takes, where that is the step. */
    minutes: z.int().positive().optional(),
  }),
  /** The question to put to the dealer, word for word. */
  question: z.string(),
  /** Both say it is bad, and nothing worse was found: disclosed. */
  admitted: z.boolean(),
  /** Indexes of entries of the comparison, gravest first; every line is in one matter. */
  lines: z.array(z.int().nonnegative()).min(1),
  /** Indexes of cross-checks that break, or cannot tell and matter. */
  checks: z.array(z.int().nonnegative()),
  /** Rows of the cost table it asks for. */
  costRows: z.array(LocalId),
});
export type Matter = z.infer<typeof Matter>;

/** As `matterId` makes it. */
export const MatterId = z
  .string()
  .regex(/^[a-z0-9-]+(:[a-z0-9-]+)?$/, "an id such as brakes or structure:left")
  .max(130);
