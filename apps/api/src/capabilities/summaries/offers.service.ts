import { Injectable } from "@nestjs/common";
import {
  DECISION_STATES,
  type DecisionMove,
  type DecisionState,
  decisionStateOf,
  isOver,
  type StoredDecision,
} from "@evenhand/case/decision-states";
import { decideMove } from "@evenhand/case/state-table";
import type { CreatedDraft } from "@evenhand/shared/http/paging";
import { DecisionAnswer, DecisionRequest, OfferEnd, type OfferReply } from "@evenhand/shared/http/summaries";
import { z } from "zod";
import { checkRevision } from "../../platform/access/parameters.ts";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { findRow, IdRow, readRows } from "../../platform/database/rows.ts";
import { found, ProblemError } from "../../platform/problems/problem-error.ts";
import { RecordChain } from "../../platform/record/record-chain.ts";
import { NoticesService } from "../notices/index.ts";
import { checkCounter, checkUntil } from "./decision-checks.ts";

const Locked = z.object({
  id: z.string(),
  decision: DecisionRequest.shape.decision,
  answer: DecisionAnswer.shape.answer.nullable(),
  reply: z.enum(["accept", "refuse"]).nullable(),
  ended: OfferEnd.nullable(),
  until: z.string().nullable(),
  revision: z.number(),
  vehicleId: z.string(),
  buyerId: z.string(),
  dealerId: z.string(),
});
type Locked = z.infer<typeof Locked>;

const locked = (whose: string): string => `
  SELECT id, decision::text AS decision, answer::text AS answer, reply::text AS reply, ended, revision,
    instant(CASE WHEN answer = 'counter' THEN back_until ELSE stands_until END) AS until,
    vehicle_id AS "vehicleId", buyer_id AS "buyerId", dealer_id AS "dealerId"
  FROM decision WHERE id = $1::uuid AND ${whose} FOR UPDATE`;

const due = `SELECT id FROM decision WHERE decision = 'counter' AND ended IS NULL AND (
    (answer IS NULL AND stands_until <= $1::timestamptz)
    OR (answer = 'counter' AND reply IS NULL AND back_until <= $1::timestamptz)) ORDER BY id LIMIT 1000`;

type Party = "buyer" | "dealer";
const others = { buyer: "dealerId", dealer: "buyerId" } as const;

/** Offers: answered, taken, left, withdrawn, and ended with their time. Of two who move one at once, one comes second and is told. */
@Injectable()
export class OffersService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly notices: NoticesService,
    private readonly record: RecordChain,
  ) {}

  /** The dealer's answer to a counter-offer: taken, refused, or countered back. */
  async answer(
    tx: Transaction,
    actor: Actor,
    id: string,
    meant: number,
    request: DecisionAnswer,
  ): Promise<CreatedDraft> {
    const { answer, note, price, conditions, until } = request;
    const now = this.clock.now();
    if (answer === "counter") {
      checkCounter({ ...request, decision: "counter" });
      checkUntil(request, now);
    }
    const offer = await this.lock(tx, actor, id, "dealer");
    mustMove(offer, answer, "dealer", now);
    checkRevision(offer.revision, meant);
    const back = answer === "counter" ? { price, conditions, until } : {};
    await tx.decision.update({
      where: { id },
      data: {
        answer,
        answerNote: note ?? null,
        answeredBy: actor.account,
        answeredAt: now,
        backPriceMinor: back.price?.minor ?? null,
        backCurrency: back.price?.currency ?? null,
        backConditions: back.conditions ?? null,
        backUntil: back.until === undefined ? null : new Date(back.until),
      },
    });
    const content = { answer, priceMinor: back.price?.minor ?? null, until: back.until ?? null };
    return this.moved(tx, offer, { by: "dealer", account: actor.account, kind: "counter-answered", content });
  }

  /** The buyer takes or leaves the dealer's counter, or withdraws their own offer while nobody has answered it. */
  async reply(
    tx: Transaction,
    actor: Actor,
    id: string,
    meant: number,
    { reply }: OfferReply,
  ): Promise<CreatedDraft> {
    const now = this.clock.now();
    const offer = await this.lock(tx, actor, id, "buyer");
    mustMove(offer, reply, "buyer", now);
    checkRevision(offer.revision, meant);
    const withdraws = reply === "withdraw";
    const data = withdraws
      ? { ended: "withdrawn", endedAt: now }
      : { reply, repliedBy: actor.account, repliedAt: now };
    await tx.decision.update({ where: { id }, data });
    const kind = withdraws ? "offer-withdrawn" : "offer-answered";
    return this.moved(tx, offer, { by: "buyer", account: actor.account, kind, content: { reply } });
  }

  /**
   * Ends the offers whose time is over; each is looked at again once it is held, since an answer may have come first.
   *
   * @returns how many it ended
   */
  async lapse(): Promise<number> {
    const now = this.clock.now();
    const rows = await readRows(this.database, IdRow, { text: due, values: [now] });
    let ended = 0;
    for (const { id } of rows) if (await this.database.transaction((tx) => this.end(tx, id, now))) ended += 1;
    return ended;
  }

  private async end(tx: Transaction, id: string, now: Date): Promise<boolean> {
    const offer = found(await findRow(tx, Locked, { text: locked("true"), values: [id] }), "decision");
    const move = decideMove(DECISION_STATES, decisionStateOf(offer), "lapse", "clock");
    if (move.kind === "refused" || !isOver(offer.until, now)) return false;
    await tx.decision.update({ where: { id }, data: { ended: "lapsed", endedAt: now } });
    for (const by of ["buyer", "dealer"] as const) await this.tell(tx, offer, by, "offer-lapsed");
    await this.write(tx, offer, { account: null, content: { ended: "lapsed" } });
    return true;
  }

  private async lock(tx: Transaction, actor: Actor, id: string, by: Party): Promise<Locked> {
    const text = locked(`${by}_id = ANY($2::uuid[])`);
    return found(await findRow(tx, Locked, { text, values: [id, actor.organizations(by)] }), "decision");
  }

  private async moved(
    tx: Transaction,
    offer: Locked,
    {
      by,
      kind,
      ...what
    }: Written & { by: Party; kind: "counter-answered" | "offer-answered" | "offer-withdrawn" },
  ): Promise<CreatedDraft> {
    await this.tell(tx, offer, by, kind);
    return this.write(tx, offer, what);
  }

  /** Tells the other one. */
  private tell(tx: Transaction, offer: Locked, by: Party, kind: News): Promise<void> {
    return this.notices.tell(tx, {
      organization: offer[others[by]],
      kind,
      subject: offer.id,
      vehicle: offer.vehicleId,
    });
  }

  private async write(tx: Transaction, offer: Locked, { account, content }: Written): Promise<CreatedDraft> {
    const revision = offer.revision + 1;
    await tx.decision.update({ where: { id: offer.id }, data: { revision } });
    this.record.append(tx, {
      kind: "decision.answered",
      organizations: [offer.buyerId, offer.dealerId],
      subject: offer.id,
      actor: account,
      content: { ...content, revision },
    });
    return { id: offer.id, revision };
  }
}

type News = Parameters<NoticesService["tell"]>[1]["kind"];
type Written = {
  readonly account: string | null;
  readonly content: Readonly<Record<string, string | number | null>>;
};

const whatWorks: Partial<Record<DecisionState, string>> = {
  "countered-back": "the dealer has countered: take it or refuse it",
  "counter-withdrawn": "the buyer has withdrawn it",
  "counter-lapsed": "it has lapsed",
  "counter-accepted": "it is agreed",
  "counter-refused": "it is refused",
};
const standing = (offer: StoredDecision): string =>
  whatWorks[decisionStateOf(offer)] ?? "it waits for the other side";

/** @throws ProblemError `decision-state` saying how it stands */
function mustMove(offer: Locked, move: DecisionMove, by: Party, now: Date): void {
  const decision = decideMove(DECISION_STATES, decisionStateOf(offer), move, by);
  const members = { state: decisionStateOf(offer) };
  if (decision.kind === "refused")
    throw new ProblemError("decision-state", `This cannot be done with the offer now: ${standing(offer)}.`, {
      members,
    });
  if (isOver(offer.until, now))
    throw new ProblemError("decision-state", `The offer stood until ${offer.until}, and has lapsed.`, {
      members: { state: "counter-lapsed" },
    });
}
