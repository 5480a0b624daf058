import { HAND_OVER_STATES } from "@evenhand/case/hand-over-states";
import { decideMove } from "@evenhand/case/state-table";
import { comparedInWords } from "@evenhand/comparison/hand-over-compared";
import { handOverReading } from "@evenhand/comparison/hand-over-reading";
import { isHandOverDiscrepancy } from "@evenhand/shared/hand-over";
import type { HandOverComparison } from "@evenhand/shared/hand-over";
import type {
  CarriedHandOver,
  HandOverCompared,
  HandOverPreview,
  HandOverReportBody,
  HandOverSignature,
  HandOverSigned,
  HandOverSigning,
} from "@evenhand/shared/http/hand-overs";
import { Injectable } from "@nestjs/common";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { toJson } from "../../platform/database/to-json.ts";
import { RecordChain } from "../../platform/record/record-chain.ts";
import { ProblemError } from "../../platform/problems/problem-error.ts";
import { NoticesService } from "../notices/index.ts";
import {
  compareWithCollection,
  makeSignable,
  type Signable,
  signedOf,
  transportSheet,
} from "./hand-over-document.ts";
import { comparedSeen, pictureSeen, reportSeen } from "./hand-over-view.ts";
import { checkStage, holdByLink, MOVES, openByLink, readHeld } from "./by-link.ts";
import { stateProblem } from "./state-problem.ts";
import type { StoredHandOver } from "./stored.ts";

const OTHERS = { collection: "seller", delivery: "receiver" } as const;
const NEWS = { collection: "car-collected", delivery: "car-delivered" } as const;

/** What the carrier's link does: shows the car, and takes the two reports, each once. Nobody who holds it is known by name. */
@Injectable()
export class CarriedHandOversService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
    private readonly notices: NoticesService,
    private readonly record: RecordChain,
  ) {}

  async get(secret: string): Promise<CarriedHandOver> {
    const handOver = await openByLink(this.database, secret, this.clock.now());
    const collection = signedOf(handOver, "collection");
    return {
      handOver: handOver.id,
      carrier: handOver.carrier,
      vehicle: handOver.vehicle,
      dealer: { name: handOver.dealer },
      stage: collection === null ? "collection" : "delivery",
      expires: handOver.linkExpires,
      collection: collection === null ? null : reportSeen(collection),
      pictures: handOver.pictures.map(pictureSeen),
    };
  }

  /** What would be signed: its hash, its words, and at delivery what is not on the collection report. Nothing is kept. */
  async preview(secret: string, body: HandOverReportBody): Promise<HandOverPreview> {
    return previewOf(await openByLink(this.database, secret, this.clock.now()), body);
  }

  /** The same, within a transaction. */
  async previewIn(tx: Transaction, secret: string, body: HandOverReportBody): Promise<HandOverPreview> {
    return previewOf(await holdByLink(tx, secret, this.clock.now()), body);
  }

  /**
   * Signs one of the two reports. Of two at once the second finds it signed: the same document is answered as the first was, another
   * is refused with the new state.
   */
  sign(secret: string, signing: HandOverSigning): Promise<HandOverSigned> {
    return this.database.transaction((tx) => this.signIn(tx, secret, signing));
  }

  /** The same, within a transaction. */
  async signIn(tx: Transaction, secret: string, signing: HandOverSigning): Promise<HandOverSigned> {
    const now = this.clock.now();
    const handOver = await holdByLink(tx, secret, now);
    const stored = signedOf(handOver, signing.report.stage);
    if (stored?.seal === signing.hash) return signedSeen(handOver, signing.report.stage);
    checkStage(handOver, signing.report);
    const signable = makeSignable(handOver, signing.report);
    checkHash(signable, signing);
    const comparison =
      signing.report.stage === "delivery" ? compareWithCollection(handOver, signable).comparison : null;
    checkPaper(signing, comparison);
    await this.store(tx, handOver, signing, signable, comparison, now);
    return signedSeen(await readHeld(tx, handOver.id), signing.report.stage);
  }

  private async store(
    tx: Transaction,
    handOver: StoredHandOver,
    { report: { stage }, carrier, other, paper }: HandOverSigning,
    { sealed }: Signable,
    comparison: HandOverComparison | null,
    at: Date,
  ): Promise<void> {
    const decided = decideMove(HAND_OVER_STATES, handOver.state, MOVES[stage], "carrier");
    if (decided.kind === "refused") throw stateProblem(handOver.state);
    const { id } = handOver;
    const each = { at: at.toISOString(), hash: sealed.seal };
    const signatures: HandOverSignature[] = [
      { as: "carrier", name: carrier, ...each },
      { as: OTHERS[stage], name: other, ...each },
    ];
    const document = new Uint8Array(Buffer.from(sealed.text, "utf8"));
    await tx.handOverReport.create({
      data: { handOverId: id, stage, document, seal: sealed.seal, paper, signatures, signedAt: at },
    });
    await tx.handOver.update({
      where: { id },
      data: {
        state: decided.to,
        revision: handOver.revision + 1,
        ...(comparison === null ? {} : { comparison: toJson(comparison) }),
      },
    });
    const move = { id: this.ids.next(), handOverId: id, move: MOVES[stage], actor: "carrier", at };
    await tx.handOverMove.create({ data: move });
    this.record.append(tx, {
      kind: "handover.moved",
      organizations: [handOver.buyerId, handOver.dealerId],
      subject: id,
      // The link has no account.
      actor: null,
      content: { move: MOVES[stage], state: decided.to, seal: sealed.seal },
    });
    await this.tell(tx, handOver, NEWS[stage]);
  }

  private async tell(
    tx: Transaction,
    { id, buyerId, dealerId, vehicleId }: StoredHandOver,
    kind: (typeof NEWS)[keyof typeof NEWS],
  ): Promise<void> {
    for (const organization of [buyerId, dealerId]) {
      await this.notices.tell(tx, { organization, kind, subject: id, vehicle: vehicleId });
    }
  }
}

function previewOf(handOver: StoredHandOver, body: HandOverReportBody): HandOverPreview {
  checkStage(handOver, body);
  const signable = makeSignable(handOver, body);
  const compared = body.stage === "delivery" ? compareWithCollection(handOver, signable) : null;
  return {
    hash: signable.sealed.seal,
    reading: handOverReading(signable.report, body.stage, transportSheet),
    compared:
      compared === null ? null : comparedInWords(compared.comparison, compared.reports, transportSheet.sheet),
  };
}

const signedSeen = (handOver: StoredHandOver, stage: HandOverReportBody["stage"]): HandOverSigned => {
  const stored = signedOf(handOver, stage);
  if (stored === null) throw new Error("What was signed is not there.");
  const compared: HandOverCompared | null = stage === "delivery" ? comparedSeen(handOver) : null;
  return { state: handOver.state, report: reportSeen(stored), compared };
};

function checkHash({ sealed }: Signable, { hash }: HandOverSigning): void {
  if (sealed.seal === hash) return;
  throw new ProblemError(
    "hand-over-hash",
    "The report is not the one that was shown before signing. Look at it again, then sign.",
    { members: { hash: sealed.seal } },
  );
}

/** Damage goes on the carrier's own paper before anybody signs; where there is some, "nothing to note" cannot stand. */
function checkPaper({ paper }: HandOverSigning, comparison: HandOverComparison | null): void {
  if (paper !== "nothing" || comparison === null || !comparison.lines.some(isHandOverDiscrepancy)) return;
  throw new ProblemError(
    "hand-over-paper",
    "Something is not on the collection report. Have it written on the carrier's paper before you sign, or say that the driver refused.",
    { problems: [{ at: "/paper", reason: "noted, or refused" }] },
  );
}
