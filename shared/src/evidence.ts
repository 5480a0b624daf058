import { z } from "zod";
import { Sha256, ItemId, LocalDateTime, PositionId } from "./identifier.ts";
import { nameOf } from "./names.ts";

/** What a file is by its bytes, whatever it is called. */
export const FileKind = z.enum(["jpeg", "png", "webp", "avif", "pdf", "mp4", "quicktime"]);
export type FileKind = z.infer<typeof FileKind>;

/** arriving: some bytes are here · pending: all are, and wait · checked: it is what it should be, and kept · ready: it can be shown. */
export const EvidenceState = z.enum(["arriving", "pending", "checked", "ready", "refused"]);
export type EvidenceState = z.infer<typeof EvidenceState>;
export const EvidenceMove = z.enum(["arrive", "check", "prepare", "refuse"]);
export type EvidenceMove = z.infer<typeof EvidenceMove>;

/** Why a file is not taken. */
export const FileRefusal = z.enum([
  "altered",
  "empty",
  "unknown",
  "markup",
  "heic",
  "moving",
  "two-in-one",
  "cut-short",
  "metadata",
  "unreadable",
  "bytes",
  "pixels",
  "tiny",
  "deep",
  "print",
  "slow",
]);
export type FileRefusal = z.infer<typeof FileRefusal>;

/** What a camera wrote into its file. `place` is for the owner of the file alone. */
export const Capture = z.strictObject({
  /** By the camera's own clock, and how far that was from UTC where it says so. */
  taken: LocalDateTime.nullable(),
  offset: z.string().nullable(),
  /** When the file was last written, by the same clock. */
  changed: LocalDateTime.nullable().default(null),
  camera: z.string().nullable(),
  software: z.string().nullable(),
  /** Degrees, WGS 84. */
  place: z
    .strictObject({ latitude: z.number().min(-90).max(90), longitude: z.number().min(-180).max(180) })
    .nullable(),
});
export type Capture = z.infer<typeof Capture>;

/** Longest side at most so many pixels; a smaller original stays as it is. */
export const PICTURE_SIZES = { small: 400, medium: 1280, large: 2560 } as const;
export const PictureSize = z.enum(["small", "medium", "large"]);
export type PictureSize = z.infer<typeof PictureSize>;

/** A copy without any metadata, which others are shown. */
export const PictureCopy = z.strictObject({
  size: PictureSize,
  width: z.int().positive(),
  height: z.int().positive(),
  sha256: Sha256,
});
export type PictureCopy = z.infer<typeof PictureCopy>;

/**
 * How a photograph came out, measured on its gray picture made small: `sharpness` is the variance of its Laplacian, `light` the mean of
 * its gray from black 0 to white 1, `dark` and `bright` the shares of it that are all but black and white.
 */
export const PictureQuality = z.strictObject({
  sharpness: z.number().nonnegative(),
  light: z.number().min(0).max(1),
  dark: z.number().min(0).max(1),
  bright: z.number().min(0).max(1),
});
export type PictureQuality = z.infer<typeof PictureQuality>;

/** What speaks for taking a photograph again. */
export const PictureAdvice = z.enum(["blurred", "dark", "bright"]);
export type PictureAdvice = z.infer<typeof PictureAdvice>;

/** What a photograph leads somebody to ask; an accusation it is not. */
export const PictureQuestionKind = z.enum([
  "supplied-by-both",
  "seen-on-another-car",
  "older-than-visit",
  "taken-elsewhere",
  "edited",
]);
export type PictureQuestionKind = z.infer<typeof PictureQuestionKind>;

/** A place on a picture: from 0 to 1 across and down. */
const Share = z.number().min(0).max(1);

/**
 * What its author draws over a picture, kept beside it: the picture stays as it is. A circle's `radius` is a share of the picture's
 * width; an arrow's point is `toX`, `toY`; a text begins at its place.
 */
export const PictureMark = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("circle"), x: Share, y: Share, radius: Share.positive() }),
  z.strictObject({ kind: z.literal("arrow"), x: Share, y: Share, toX: Share, toY: Share }),
  z.strictObject({ kind: z.literal("text"), x: Share, y: Share, words: nameOf(80) }),
]);
export type PictureMark = z.infer<typeof PictureMark>;

/** As many still leave the picture to be seen. */
export const PictureMarks = z.array(PictureMark).max(30);

/** A file as a report seals it: where it belongs, the hash of what the author keeps, and of each copy that others are shown. */
export const SealedEvidence = z.strictObject({
  item: ItemId.or(z.literal("")),
  position: PositionId,
  kind: FileKind,
  sha256: Sha256,
  copies: z.array(PictureCopy.pick({ size: true, sha256: true })),
  /** Absent where nothing was drawn over it. */
  marks: PictureMarks.optional(),
});
export type SealedEvidence = z.infer<typeof SealedEvidence>;
