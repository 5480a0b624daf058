import { EvidenceState } from "@evenhand/shared/evidence";
import { HandOverComparison } from "@evenhand/shared/hand-over";
import {
  CarrierPaper,
  HandOverMove,
  HandOverSignature,
  HandOverStage,
  HandOverState,
  HandOverTerms,
} from "@evenhand/shared/http/hand-overs";
import { Vehicle } from "@evenhand/shared/report";
import { z } from "zod";
import { StoredRefusal } from "../evidence/index.ts";

const StoredReport = z.object({
  stage: HandOverStage,
  seal: z.string(),
  paper: CarrierPaper,
  document: z.string(),
  signatures: z.array(HandOverSignature),
  signedAt: z.string(),
});
export type StoredReport = z.infer<typeof StoredReport>;

const StoredPicture = z.object({
  id: z.string(),
  stage: HandOverStage,
  item: z.string(),
  position: z.string(),
  sha256: z.string(),
  bytes: z.number(),
  state: EvidenceState,
  refused: StoredRefusal.nullable(),
  receivedAt: z.string(),
  /** The kept file. */
  file: z.string(),
});
export type StoredPicture = z.infer<typeof StoredPicture>;

/** A hand-over with all that is stored of it. */
export const StoredHandOver = z.object({
  id: z.string(),
  revision: z.number(),
  caseId: z.string(),
  vehicleId: z.string(),
  buyerId: z.string(),
  dealerId: z.string(),
  carrier: z.string(),
  state: HandOverState,
  terms: HandOverTerms,
  comparison: HandOverComparison.nullable(),
  arrangedAt: z.string(),
  linkExpires: z.string(),
  vehicle: Vehicle,
  dealer: z.string(),
  reports: z.array(StoredReport),
  moves: z.array(z.object({ move: HandOverMove, at: z.string(), note: z.string().nullable() })),
  /** Of both reports, in the order they came. */
  pictures: z.array(StoredPicture),
  /** The person is its buyer. */
  buys: z.boolean(),
});
export type StoredHandOver = z.infer<typeof StoredHandOver>;
