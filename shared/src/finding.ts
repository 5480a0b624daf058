import { z } from "zod";
import { Answer } from "./answer.ts";
import { Instant, ItemId, LocalId, PositionId, Sha256 } from "./identifier.ts";
import { FIRMNESSES } from "./terms.ts";

/** How firmly it is said. */
export const Firmness = z.enum(FIRMNESSES);
export type Firmness = z.infer<typeof Firmness>;

/** What it rests on. */
export const Basis = z.enum(["measured", "seen", "felt", "documented", "told"]);
export type Basis = z.infer<typeof Basis>;

/** What was noted of the circumstances of one finding, as the item asks: `warm`, `charger-off`, `height`. */
export const Conditions = z.record(LocalId, z.union([z.boolean(), z.number(), z.string().max(200)]));

/** What was answered before a place was looked at again; blind as it was then. */
export const FirstLook = z.strictObject({
  answer: Answer,
  blind: z.boolean().optional(),
  time: Instant.optional(),
});
export type FirstLook = z.infer<typeof FirstLook>;

/** One finding answers one item at one position; a second for the same place is refused. */
export const Finding = z.strictObject({
  item: ItemId,
  position: PositionId.default(""),
  answer: Answer,
  firmness: Firmness.default("asserted"),
  basis: Basis.default("seen"),
  instrument: LocalId.optional(),
  person: LocalId.optional(),
  time: Instant.optional(),
  conditions: Conditions.optional(),
  /** Answered before any statement on it was shown to the person who answered. */
  blind: z.boolean().optional(),
  /** The answer is of a second look, for which the place was named before the report was sealed. */
  look: z.literal("second").optional(),
  /** The answer of the first look; kept by the service, and there where `look` is. */
  first: FirstLook.optional(),
  note: z.string().max(4000).optional(),
  evidence: z.array(Sha256).max(50).optional(),
});
export type Finding = z.infer<typeof Finding>;
/** A finding as a person or file may write it: defaults left out. */
export type FindingInput = z.input<typeof Finding>;
