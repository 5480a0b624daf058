import { z } from "zod";
import { Finding } from "../finding.ts";
import { EvidenceState } from "../evidence.ts";
import { HandOverKind } from "../hand-over.ts";
import { Instant, ItemId, ObjectId, PositionId, Sha256 } from "../identifier.ts";
import { nameOf } from "../names.ts";
import { Vehicle } from "../report.ts";
import { Severity } from "../severity.ts";
import { Zone } from "../zone.ts";
import { CaseCar } from "./cases.ts";
import { Original, UploadProgress, Webp } from "./evidence.ts";
import { CreatedDraft, Named, type Contract } from "./paging.ts";

export const HandOverState = z.enum([
  "arranged",
  "collected",
  "delivered",
  /** Taken as it arrived. Damage that shows later can still be claimed. */
  "signed-off",
  "claim-open",
  "claim-closed",
  "called-off",
]);
export type HandOverState = z.infer<typeof HandOverState>;

/** Which of the two reports: what left, or what arrived. */
export const HandOverStage = z.enum(["collection", "delivery"]);
export type HandOverStage = z.infer<typeof HandOverStage>;

export const HandOverMove = z.enum([
  "collect",
  "deliver",
  "sign-off",
  "open-claim",
  "close-claim",
  "call-off",
]);
export type HandOverMove = z.infer<typeof HandOverMove>;

const ownWords = z.string().trim().min(1).max(1000);

/** What was agreed, in the words of the papers. Nothing of it is ever guessed. */
export const HandOverTerms = z.strictObject({
  /** Until when damage is to be notified to the carrier: the words, where they stand, and the hour where it is known. */
  claimDeadline: z
    .strictObject({ words: ownWords, source: nameOf(300), until: Instant.nullable() })
    .nullable(),
  /** When the risk passes to the buyer, as agreed. */
  riskPasses: ownWords.nullable(),
});
export type HandOverTerms = z.infer<typeof HandOverTerms>;

export const HandOverRequest = z.strictObject({
  /** The carrier as on its own paper. */
  carrier: nameOf(200),
  terms: HandOverTerms,
  /** Until when the carrier's link works: at most 120 days ahead. */
  expires: Instant,
});
export type HandOverRequest = z.infer<typeof HandOverRequest>;
export const HandOverLinkRequest = HandOverRequest.pick({ expires: true });
export type HandOverLinkRequest = z.infer<typeof HandOverLinkRequest>;
/** The token is in this answer and nowhere else. `path` is the carrier's page of the web application. */
export const HandOverLinkCreated = z.strictObject({ id: ObjectId, token: z.string(), path: z.string() });
export type HandOverLinkCreated = z.infer<typeof HandOverLinkCreated>;
export const HandOverNote = z.strictObject({ note: ownWords });
export type HandOverNote = z.infer<typeof HandOverNote>;

/** What the person with the link has written: findings on the transport sheet, when, and where. */
export const HandOverReportBody = z.strictObject({
  stage: HandOverStage,
  started: Instant,
  ended: Instant,
  zone: Zone,
  place: nameOf(300),
  findings: z.array(Finding).max(400),
});
export type HandOverReportBody = z.infer<typeof HandOverReportBody>;

/**
 * Whether what was found stands on the carrier's own paper: noted before signing · the driver would not have it written · nothing was
 * found to note.
 */
export const CarrierPaper = z.enum(["noted", "refused", "nothing"]);
export type CarrierPaper = z.infer<typeof CarrierPaper>;

/** Two names, typed by two people on the phone that holds the link; nobody's identity is checked. */
export const HandOverSigning = z.strictObject({
  report: HandOverReportBody,
  /** Of the document that was shown before signing; another one is refused. */
  hash: Sha256,
  paper: CarrierPaper,
  carrier: nameOf(200),
  /** Who handed the car over at collection, or took it at delivery. */
  other: nameOf(200),
});
export type HandOverSigning = z.infer<typeof HandOverSigning>;

export const HandOverSignature = z.strictObject({
  as: z.enum(["carrier", "seller", "receiver"]),
  name: z.string(),
  at: Instant,
  /** SHA-256 of what was signed. */
  hash: Sha256,
});
export type HandOverSignature = z.infer<typeof HandOverSignature>;

/** A place and what stands there, in words. */
export const PlaceWords = z.strictObject({
  place: z.string(),
  words: z.string(),
  note: z.string().nullable(),
});
export type PlaceWords = z.infer<typeof PlaceWords>;
/** Places a report does not speak for, and why, in words. */
export const UnseenWords = z.strictObject({
  at: HandOverStage,
  reason: z.string(),
  count: z.int().positive(),
  places: z.array(z.string()).min(1),
});
export type UnseenWords = z.infer<typeof UnseenWords>;

export const HandOverReading = z.strictObject({
  odometer: z.string(),
  fuel: z.string(),
  keys: z.string(),
  /** Light and surface. */
  seenIn: z.array(z.string()),
  /** Everything that is not as it should be, whatever it is. */
  noted: z.array(PlaceWords),
  unseen: z.array(UnseenWords),
});
export type HandOverReading = z.infer<typeof HandOverReading>;

export const HandOverReportSeen = z.strictObject({
  stage: HandOverStage,
  seal: Sha256,
  signedAt: Instant,
  started: Instant,
  ended: Instant,
  zone: Zone,
  place: z.string(),
  paper: CarrierPaper,
  signatures: z.array(HandOverSignature).length(2),
  reading: HandOverReading,
});
export type HandOverReportSeen = z.infer<typeof HandOverReportSeen>;

/** Where a photograph belongs: a place of the transport sheet, or the car as a whole where no item is named. */
export const CarriedPictureQuery = z.strictObject({
  stage: HandOverStage,
  item: ItemId.or(z.literal("")).default(""),
  position: PositionId.default(""),
});
export type CarriedPictureQuery = z.infer<typeof CarriedPictureQuery>;

/** A photograph at its place of one of the two reports. It can be looked at once it is `ready`. */
export const HandOverPicture = CarriedPictureQuery.extend({
  id: ObjectId,
  /** In words; of the car as a whole none. */
  place: z.string(),
  /** Of the bytes that were sent: what is signed names it. */
  sha256: Sha256,
  bytes: z.int().positive(),
  /** By the service's clock. */
  receivedAt: Instant,
  state: EvidenceState,
  refused: UploadProgress.shape.refused,
});
export type HandOverPicture = z.infer<typeof HandOverPicture>;

export const HandOverLineSeen = z.strictObject({
  kind: HandOverKind,
  item: ItemId,
  position: PositionId,
  severity: Severity.nullable(),
  /** A picture could show it: not a count, a reading or a level. */
  pictured: z.boolean(),
  place: z.string(),
  collection: z.string(),
  delivery: z.string(),
  sentence: z.string(),
});
export type HandOverLineSeen = z.infer<typeof HandOverLineSeen>;

/** The two reports compared, in words. */
export const HandOverCompared = z.strictObject({
  /** Not on the collection report, more of it, worse or missing: what both reports can tell. */
  discrepancies: z.array(HandOverLineSeen),
  /** What they do not settle, or collection could not see. */
  open: z.array(HandOverLineSeen),
  /** Otherwise at delivery, and no worse. */
  others: z.array(HandOverLineSeen),
  unseen: z.array(UnseenWords),
  lookedAtTwice: z.int().nonnegative(),
  places: z.int().positive(),
});
export type HandOverCompared = z.infer<typeof HandOverCompared>;

export const HandOverSeen = z.strictObject({
  id: ObjectId,
  revision: z.int().positive(),
  case: ObjectId,
  as: z.enum(["buyer", "dealer"]),
  car: CaseCar,
  carrier: z.string(),
  /** To the dealer a claim is the buyer's business, and the car is delivered. */
  state: HandOverState,
  arrangedAt: Instant,
  /** To the buyer alone. */
  linkExpires: Instant.nullable(),
  terms: HandOverTerms.nullable(),
  collection: HandOverReportSeen.nullable(),
  /** To the buyer alone, like what follows; the dealer hears that it was delivered, and when. */
  delivery: HandOverReportSeen.nullable(),
  deliveredAt: Instant.nullable(),
  compared: HandOverCompared.nullable(),
  /** In the order they came; to the dealer those of collection alone. */
  pictures: z.array(HandOverPicture),
  moves: z.array(z.strictObject({ move: HandOverMove, at: Instant, note: z.string().nullable() })),
});
export type HandOverSeen = z.infer<typeof HandOverSeen>;

export const HandOverRow = z.strictObject({
  id: ObjectId,
  carrier: z.string(),
  state: HandOverState,
  arrangedAt: Instant,
  collectedAt: Instant.nullable(),
  deliveredAt: Instant.nullable(),
});
export type HandOverRow = z.infer<typeof HandOverRow>;
export const HandOversOfCase = z.strictObject({
  /** Nobody carries it at the moment, and it is bought: the buyer may invite a carrier. */
  mayArrange: z.boolean(),
  /** The newest first. */
  items: z.array(HandOverRow),
});
export type HandOversOfCase = z.infer<typeof HandOversOfCase>;

/** What whoever holds the link gets: the car, what is to be written next, and what left. Nothing of buyer, price or inspection. */
export const CarriedHandOver = z.strictObject({
  /** Its id opens nothing; by it the device that holds the link keeps what is being written. */
  handOver: ObjectId,
  carrier: z.string(),
  vehicle: Vehicle,
  dealer: Named.omit({ id: true }),
  stage: HandOverStage,
  expires: Instant,
  collection: HandOverReportSeen.nullable(),
  /** Of both reports, in the order they came. */
  pictures: z.array(HandOverPicture),
});
export type CarriedHandOver = z.infer<typeof CarriedHandOver>;

/** What is about to be signed, and its hash. */
export const HandOverPreview = z.strictObject({
  hash: Sha256,
  reading: HandOverReading,
  /** At delivery. */
  compared: HandOverCompared.nullable(),
});
export type HandOverPreview = z.infer<typeof HandOverPreview>;

export const HandOverSigned = z.strictObject({
  state: HandOverState,
  report: HandOverReportSeen,
  compared: HandOverCompared.nullable(),
});
export type HandOverSigned = z.infer<typeof HandOverSigned>;

export const handOverContracts = {
  "handOvers.arrange": { body: HandOverRequest, status: 201, answer: HandOverLinkCreated },
  "handOvers.ofCase": { status: 200, answer: HandOversOfCase },
  "handOvers.get": { status: 200, answer: HandOverSeen },
  "handOvers.renewLink": { body: HandOverLinkRequest, status: 201, answer: HandOverLinkCreated },
  "handOvers.setTerms": { body: HandOverTerms, status: 200, answer: CreatedDraft },
  "handOvers.callOff": { body: HandOverNote, status: 201, answer: CreatedDraft },
  "handOvers.signOff": { body: HandOverNote, status: 201, answer: CreatedDraft },
  "handOvers.openClaim": { body: HandOverNote, status: 201, answer: CreatedDraft },
  "handOvers.closeClaim": { body: HandOverNote, status: 201, answer: CreatedDraft },
  "handOverPictures.small": { status: 200, answer: Webp },
  "handOverPictures.large": { status: 200, answer: Webp },
  "handOverPictures.original": { status: 200, answer: Original },
  "carriedHandOvers.get": { status: 200, answer: CarriedHandOver },
  "carriedHandOvers.preview": { body: HandOverReportBody, status: 200, answer: HandOverPreview },
  "carriedHandOvers.sign": { body: HandOverSigning, status: 201, answer: HandOverSigned },
  "carriedHandOvers.addPicture": { query: CarriedPictureQuery, status: 201, answer: HandOverPicture },
  "carriedHandOvers.picture": { status: 200, answer: Webp },
  "carriedHandOvers.removePicture": { status: 204, answer: null },
} as const satisfies Record<string, Contract>;
