import { CancellationCause } from "@evenhand/shared/booking";
import { ConflictBody } from "@evenhand/shared/http/booking";
import { z } from "zod";

const When = z.union([z.string(), z.number()]).transform((at) => new Date(at).toISOString());

/** What is wanting, as the service names it; a code that is not here is said by the service's own sentence. */
const Shortfall = z.discriminatedUnion("code", [
  z.looseObject({
    code: z.enum(["hold-running", "answer-in-time", "before-start", "before-end"]),
    until: When,
  }),
  z.looseObject({ code: z.enum(["deadline-passed", "near-start", "past-grace"]), from: When }),
  z.looseObject({
    code: z.enum([
      "brief-complete",
      "payment-authorized",
      "new-hour",
      "declared",
      "access-agreed",
      "report-sealed",
      "hour-free",
    ]),
  }),
  z.looseObject({ code: z.literal("terms-acknowledged"), version: z.string() }),
  z.looseObject({ code: z.literal("independent"), conflicts: z.array(ConflictBody) }),
  z.looseObject({ code: z.literal("cause"), allowed: z.array(CancellationCause) }),
  z.looseObject({
    code: z.literal("road-cleared"),
    shortfalls: z.array(
      z.looseObject({
        code: z.enum([
          "consent-missing",
          "insurance-missing",
          "insurance-ended",
          "plates-missing",
          "plates-ended",
          "damage-unsettled",
          "gate-not-seen",
          "safety-item-open",
          "own-doubt",
        ]),
        /** Of a doubt: the inspector's own. */
        words: z.array(z.string()).default([]),
        items: z.array(z.string()).default([]),
        places: z.array(z.object({ item: z.string(), position: z.string() })).default([]),
      }),
    ),
  }),
]);
export type Shortfall = z.infer<typeof Shortfall>;
/** A refusal that says what is wanting. */
export const WithShortfalls = z.looseObject({ shortfalls: z.array(Shortfall).min(1) });

export type RoadShortfall = Extract<Shortfall, { readonly code: "road-cleared" }>["shortfalls"][number];
