import { z } from "zod";
import {
  Capture,
  EvidenceState,
  FileKind,
  FileRefusal,
  PictureAdvice,
  PictureCopy,
  PictureMarks,
  PictureQuality,
  PictureQuestionKind,
} from "../evidence.ts";
import { Instant, ItemId, ObjectId, PositionId, Sha256 } from "../identifier.ts";
import { nameOf } from "../names.ts";
import type { Contract } from "./paging.ts";

/** A name as a list shows it; no way through folders. */
const FileName = nameOf(200).refine(
  (name) => !/[/\\]/.test(name) && !/^\.+$/.test(name),
  "the file's own name, without folders",
);

/**
 * What is said of a file before it is sent: the keys of tus's `Upload-Metadata`, each value in base64, and its `Upload-Length`. An empty
 * item is the car as a whole.
 */
export const UploadAnnounced = z.strictObject({
  filename: FileName,
  /** Of the whole file; what arrives is held against it. */
  sha256: Sha256,
  item: ItemId.or(z.literal("")).default(""),
  position: PositionId.default(""),
  caption: nameOf(300).optional(),
  /** What the sending program believes; never asked. */
  filetype: z.string().optional(),
  length: z.int().positive(),
});
export type UploadAnnounced = z.infer<typeof UploadAnnounced>;

/** How far a file has come. */
export const UploadProgress = z.strictObject({
  id: ObjectId,
  bytes: z.int().positive(),
  received: z.int().nonnegative(),
  state: EvidenceState,
  refused: z.strictObject({ reason: FileRefusal, words: z.string() }).nullable(),
});
export type UploadProgress = z.infer<typeof UploadProgress>;

/**
 * What a photograph leads to ask, with what speaks for it, in words. `beside` is the other picture where two are alike and the person
 * may see it.
 */
export const PictureQuestion = z.strictObject({
  kind: PictureQuestionKind,
  words: z.string(),
  beside: ObjectId.nullable(),
});
export type PictureQuestion = z.infer<typeof PictureQuestion>;

/** A file at its place, as whoever may see the report sees it. `width` and `height` are the picture's, upright. */
export const EvidenceSeen = z.strictObject({
  id: ObjectId,
  item: ItemId.or(z.literal("")),
  position: PositionId,
  caption: z.string().nullable(),
  kind: FileKind,
  sha256: Sha256,
  bytes: z.int().positive(),
  width: z.int().positive().nullable(),
  height: z.int().positive().nullable(),
  placeholder: z.string().nullable(),
  copies: z.array(PictureCopy),
  marks: PictureMarks,
  questions: z.array(PictureQuestion),
});
export type EvidenceSeen = z.infer<typeof EvidenceSeen>;

/** The same as its owner sees it, from its first byte on; what the camera wrote is here and nowhere else. */
export const EvidenceOwned = EvidenceSeen.extend({
  kind: FileKind.nullable(),
  name: z.string(),
  received: z.int().nonnegative(),
  state: EvidenceState,
  refused: UploadProgress.shape.refused,
  capture: Capture.nullable(),
  /** Of a photograph that is ready, with what speaks for taking it again. */
  quality: PictureQuality.extend({
    advice: z.array(z.strictObject({ advice: PictureAdvice, words: z.string() })),
  }).nullable(),
  /** The first sealed version it stands in; from then on it cannot be taken away. */
  sealedIn: z.int().positive().nullable(),
  removedAt: Instant.nullable(),
});
export type EvidenceOwned = z.infer<typeof EvidenceOwned>;

/** The same among the files of both sides; `version` is the sealed one it is seen in, none where its item was laid before the dealer. */
export const EvidenceBeside = EvidenceSeen.extend({
  side: z.enum(["statement", "inspection"]),
  version: ObjectId.nullable(),
  report: ObjectId,
});
export type EvidenceBeside = z.infer<typeof EvidenceBeside>;

/** A picture the sheet asks for by name that is not there yet. */
export const MissingPicture = z.strictObject({
  item: ItemId,
  position: PositionId,
  as: z.enum(["photograph", "film"]),
  words: z.string(),
});
export type MissingPicture = z.infer<typeof MissingPicture>;

/** All that is drawn over a picture, in the stead of what was; an empty list takes it away. */
export const MarksDrawn = z.strictObject({ marks: PictureMarks });
export type MarksDrawn = z.infer<typeof MarksDrawn>;

const isWebp = (bytes: unknown): boolean =>
  bytes instanceof Uint8Array &&
  String.fromCharCode(...bytes.subarray(0, 4), ...bytes.subarray(8, 12)) === "RIFFWEBP";

/** `image/webp` (RFC 9649), without metadata. */
export const Webp = z.unknown().refine(isWebp, "a WebP picture").meta({ type: "string", format: "binary" });
/** The very bytes that were sent. */
export const Original = z
  .unknown()
  .refine((bytes) => bytes instanceof Uint8Array, "bytes")
  .meta({ type: "string", format: "binary" });

export const EvidenceOfBoth = z.strictObject({ items: z.array(EvidenceBeside) });
export type EvidenceOfBoth = z.infer<typeof EvidenceOfBoth>;

const listOf = <T extends z.ZodType>(item: T) => z.strictObject({ items: z.array(item) });

export const evidenceContracts = {
  "uploads.create": { status: 201, answer: null },
  "uploads.get": { status: 200, answer: UploadProgress },
  "uploads.append": { status: 204, answer: null },
  "evidence.ofReport": {
    status: 200,
    answer: listOf(EvidenceOwned).extend({ missing: z.array(MissingPicture) }),
  },
  "evidence.ofVersion": { status: 200, answer: listOf(EvidenceSeen) },
  "evidence.ofVehicle": { status: 200, answer: EvidenceOfBoth },
  "evidence.small": { status: 200, answer: Webp },
  "evidence.medium": { status: 200, answer: Webp },
  "evidence.large": { status: 200, answer: Webp },
  "evidence.original": { status: 200, answer: Original },
  "evidence.mark": { body: MarksDrawn, status: 204, answer: null },
  "evidence.remove": { status: 204, answer: null },
  "evidence.restore": { status: 204, answer: null },
} as const satisfies Record<string, Contract>;
