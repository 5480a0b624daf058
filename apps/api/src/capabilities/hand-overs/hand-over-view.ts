import { comparedInWords } from "@evenhand/comparison/hand-over-compared";
import { handOverReading } from "@evenhand/comparison/hand-over-reading";
import type {
  HandOverCompared,
  HandOverPicture,
  HandOverReportSeen,
  HandOverSeen,
} from "@evenhand/shared/http/hand-overs";
import { sheetWords } from "@evenhand/wording/sheet-words";
import { wordedRefusal } from "../evidence/index.ts";
import { readSigned, signedOf, transportSheet } from "./hand-over-document.ts";
import type { StoredHandOver, StoredPicture, StoredReport } from "./stored.ts";

/** One signed report in words. */
export function reportSeen(stored: StoredReport): HandOverReportSeen {
  const { place, report } = readSigned(stored);
  const { stage, seal, signedAt, paper, signatures } = stored;
  const { started, ended = started, zone } = report.visit;
  return {
    stage,
    seal,
    signedAt,
    started,
    ended,
    zone,
    place,
    paper,
    signatures,
    reading: handOverReading(report, stage, transportSheet),
  };
}

/** Both reports compared, as it was stored when the second was signed. */
export function comparedSeen(handOver: StoredHandOver): HandOverCompared | null {
  const [collection, delivery] = [signedOf(handOver, "collection"), signedOf(handOver, "delivery")];
  if (handOver.comparison === null || collection === null || delivery === null) return null;
  const reports = { collection: readSigned(collection).report, delivery: readSigned(delivery).report };
  return comparedInWords(handOver.comparison, reports, transportSheet.sheet);
}

const words = sheetWords(transportSheet.sheet);

/** A photograph with its place in words. */
export const pictureSeen = (picture: StoredPicture): HandOverPicture => {
  const { id, stage, item, position, sha256, bytes, receivedAt, state, refused } = picture;
  const place = item === "" ? "" : words.place(item, position);
  return {
    id,
    stage,
    item,
    position,
    place,
    sha256,
    bytes,
    receivedAt,
    state,
    refused: wordedRefusal(refused),
  };
};

const seen = (stored: StoredReport | null): HandOverReportSeen | null =>
  stored === null ? null : reportSeen(stored);

/** What became of it after delivery: the buyer's. */
const AFTERWARDS: readonly string[] = ["signed-off", "claim-open", "claim-closed"];
const SELLERS_MOVES: readonly string[] = ["collect", "deliver", "call-off"];

const carOf = ({ vehicleId: id, vehicle }: StoredHandOver): HandOverSeen["car"] => {
  const { make, model, modelYear, identification } = vehicle;
  return { id, make, model, modelYear, identification };
};

/** To the dealer a claim is the buyer's business: also one that the car never arrived. */
const shownToDealer = (handOver: StoredHandOver): HandOverSeen["state"] => {
  if (!AFTERWARDS.includes(handOver.state)) return handOver.state;
  return signedOf(handOver, "delivery") === null ? "collected" : "delivered";
};

/**
 * A hand-over as its buyer or its dealer may know it. The dealer sees the car leave and hears that it arrived; where it went, what was
 * found there, and a claim are the buyer's.
 */
export function handOverSeen(handOver: StoredHandOver): HandOverSeen {
  const { id, revision, caseId, carrier, state, arrangedAt, terms, moves, buys } = handOver;
  const delivery = signedOf(handOver, "delivery");
  return {
    id,
    revision,
    case: caseId,
    as: buys ? "buyer" : "dealer",
    car: carOf(handOver),
    carrier,
    state: buys ? state : shownToDealer(handOver),
    arrangedAt,
    linkExpires: buys ? handOver.linkExpires : null,
    terms: buys ? terms : null,
    collection: seen(signedOf(handOver, "collection")),
    delivery: buys ? seen(delivery) : null,
    deliveredAt: delivery?.signedAt ?? null,
    compared: buys ? comparedSeen(handOver) : null,
    pictures: handOver.pictures.filter(({ stage }) => buys || stage === "collection").map(pictureSeen),
    moves: buys ? moves : moves.filter(({ move }) => SELLERS_MOVES.includes(move)),
  };
}
