import { z } from "zod";
import { Atom } from "./comparison.ts";
import { ItemId, LocalId, ObjectId, PositionId, Sha256 } from "./identifier.ts";
import { nameOf } from "./names.ts";
import { Outcome } from "./outcome.ts";
import { Report } from "./report.ts";
import { Severity } from "./severity.ts";
import { NOT_SEEN_REASONS } from "./terms.ts";

/**
 * What a line of two hand-over reports is called. Whose doing it was no comparison can say.
 * new: at delivery, and not on the collection report though the place was looked at · larger: noted at collection, and more of it at
 * delivery · worse: works, holds or leaks worse · missing: went along, or as many keys, and did not arrive · moved: the odometer
 * stands farther on than loading explains · perhaps: one of these, and the two reports do not settle it · cannot-say: found at delivery
 * where collection did not look · gone: noted at collection and not at delivery · better: otherwise at delivery, and not worse.
 */
export const HAND_OVER_KINDS = [
  "new",
  "larger",
  "worse",
  "missing",
  "moved",
  "perhaps",
  "cannot-say",
  "gone",
  "better",
] as const;
export const HandOverKind = z.enum(HAND_OVER_KINDS);
export type HandOverKind = z.infer<typeof HandOverKind>;

/** Why nobody can speak for a place: as the report says, or nothing stands in it, or it was not known. */
export const UNSEEN_REASONS = [...NOT_SEEN_REASONS, "not-known", "not-reported"] as const;
export const UnseenReason = z.enum(UNSEEN_REASONS);
export type UnseenReason = z.infer<typeof UnseenReason>;

export const HandOverLine = z.strictObject({
  kind: HandOverKind,
  item: ItemId,
  position: PositionId,
  atom: Atom,
  outcome: Outcome,
  reason: LocalId,
  severity: Severity.nullable(),
  /** Smaller than what two careful people tell apart: it may have been missed at collection. */
  small: z.boolean(),
  /** Why collection did not see the place, where it did not. */
  unseenAtCollection: UnseenReason.nullable(),
});
export type HandOverLine = z.infer<typeof HandOverLine>;

/** Places one report does not speak for, all for one reason. */
export const UnseenPlaces = z.strictObject({
  at: z.enum(["collection", "delivery"]),
  reason: UnseenReason,
  places: z.array(z.strictObject({ item: ItemId, position: PositionId })).min(1),
});
export type UnseenPlaces = z.infer<typeof UnseenPlaces>;

/** Miles, or keys, as both reports have them; `null` where one did not read it. */
export const HandOverFigure = z.strictObject({
  collection: z.number().nullable(),
  delivery: z.number().nullable(),
  unit: z.string(),
  /** By the engine's interval rule: the difference is what loading explains, perhaps more, or more; or a reading is missing. */
  verdict: z.enum(["within", "perhaps", "beyond", "not-read"]),
});
export type HandOverFigure = z.infer<typeof HandOverFigure>;

/** Two reports of one car on its way, compared: what is stored when the second is signed. */
export const HandOverComparison = z.strictObject({
  format: z.literal("evenhand-hand-over"),
  version: z.literal(1),
  engine: z.string(),
  sheet: z.strictObject({ id: LocalId, version: z.int() }),
  collection: Sha256.nullable(),
  delivery: Sha256.nullable(),
  /** The gravest kinds and severities first. */
  lines: z.array(HandOverLine),
  unseen: z.array(UnseenPlaces),
  odometer: HandOverFigure,
  /** Miles that loading and unloading may take. */
  milesAllowed: z.number(),
  keys: HandOverFigure,
  /** Places both reports speak for. */
  lookedAtTwice: z.int().nonnegative(),
  places: z.int().positive(),
});
export type HandOverComparison = z.infer<typeof HandOverComparison>;

/** What stands as a difference, and not merely in doubt. */
const DISCREPANCIES: ReadonlySet<HandOverKind> = new Set(["new", "larger", "worse", "missing", "moved"]);

/**
 * Does the line say that the car did not arrive as it left, as far as both reports can tell?
 *
 * @example isHandOverDiscrepancy({ kind: "cannot-say" }) // false
 */
export const isHandOverDiscrepancy = ({ kind }: Pick<HandOverLine, "kind">): boolean =>
  DISCREPANCIES.has(kind);

/** A photograph as what is signed names it: where it belongs, and the SHA-256 of the bytes that were sent. */
const SignedPicture = z.strictObject({
  item: ItemId.or(z.literal("")),
  position: PositionId,
  sha256: Sha256,
});

/** What is signed at collection and at delivery, word for word: written canonically and hashed. */
export const HandOverDocument = z.strictObject({
  format: z.literal("evenhand-hand-over-report"),
  version: z.literal(1),
  handOver: ObjectId,
  place: nameOf(300),
  report: Report,
  /** In the order they came; absent where there are none. */
  pictures: z.array(SignedPicture).min(1).optional(),
});
export type HandOverDocument = z.infer<typeof HandOverDocument>;
