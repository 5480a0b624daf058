import { z } from "zod";
import { LocalId } from "./identifier.ts";
import { UnitSymbol } from "./unit.ts";
import { NOT_SEEN_REASONS, PRESENCE, WORKING } from "./terms.ts";

const finite = z.number();

/** One value with the spot it was taken at. Spots tell readings of one place from readings spread over a panel. */
export const ReadingValue = z.strictObject({ value: finite, spot: LocalId.optional() });
export type ReadingValue = z.infer<typeof ReadingValue>;

export const ReadingAnswer = z.strictObject({
  kind: z.literal("reading"),
  unit: UnitSymbol,
  values: z.array(ReadingValue).min(1).max(60),
});

export const ColorValue = z.strictObject({
  L: finite.min(0).max(100),
  a: finite,
  b: finite,
  spot: LocalId.optional(),
});
export const ColorAnswer = z.strictObject({
  kind: z.literal("color"),
  geometry: z.enum(["45/0", "d/8", "multi-angle"]),
  metallic: z.boolean().default(false),
  values: z.array(ColorValue).min(1).max(20),
});

/** `scale` is `house`, `percent`, or a scale the report itself describes. A percentage carries its step. */
export const GradeAnswer = z.strictObject({
  kind: z.literal("grade"),
  scale: LocalId,
  value: z.union([LocalId, finite]),
});

export const WorkingAnswer = z.strictObject({
  kind: z.literal("working"),
  value: z.enum(WORKING),
});
export const PresenceAnswer = z.strictObject({
  kind: z.literal("presence"),
  value: z.enum(PRESENCE),
});
/** `also`: further options that are true at the same time, where the item takes several. */
export const ChoiceAnswer = z.strictObject({
  kind: z.literal("choice"),
  option: LocalId,
  also: z.array(LocalId).max(20).optional(),
});
export const CodeAnswer = z.strictObject({
  kind: z.literal("code"),
  text: z.string().trim().min(1).max(200),
});

export const Extent = z.strictObject({ value: finite.nonnegative(), unit: UnitSymbol });
export const Fault = z.strictObject({ kind: LocalId, extent: Extent.optional(), spot: LocalId.optional() });
export type Fault = z.infer<typeof Fault>;
/** `denied` names kinds said not to be there; `"all"` is "none at all". */
export const FaultsAnswer = z.strictObject({
  kind: z.literal("faults"),
  found: z.array(Fault).max(100),
  denied: z.union([z.literal("all"), z.array(LocalId).max(40)]).default([]),
});

export const NotSeenReason = z.enum(NOT_SEEN_REASONS);
export type NotSeenReason = z.infer<typeof NotSeenReason>;
export const NotSeenAnswer = z.strictObject({ kind: z.literal("not-seen"), reason: NotSeenReason });

/** The car has none: an answer of every equipment item. */
export const NotFittedAnswer = z.strictObject({ kind: z.literal("not-fitted") });

export const Answer = z.discriminatedUnion("kind", [
  ReadingAnswer,
  ColorAnswer,
  GradeAnswer,
  WorkingAnswer,
  PresenceAnswer,
  ChoiceAnswer,
  CodeAnswer,
  FaultsAnswer,
  NotFittedAnswer,
  NotSeenAnswer,
]);
export type Answer = z.infer<typeof Answer>;
export type AnswerKind = Answer["kind"];
export type AnswerOf<K extends AnswerKind> = Extract<Answer, { kind: K }>;

/** The kinds an item may ask for; anything may be answered "not seen". */
export const ItemAnswerKind = z.enum([
  "reading",
  "color",
  "grade",
  "working",
  "presence",
  "choice",
  "code",
  "faults",
]);
export type ItemAnswerKind = z.infer<typeof ItemAnswerKind>;
