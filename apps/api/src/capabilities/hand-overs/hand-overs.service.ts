import { HAND_OVER_STATES } from "@evenhand/case/hand-over-states";
import { decideMove, hasEnded } from "@evenhand/case/state-table";
import {
  type HandOverLinkCreated,
  type HandOverLinkRequest,
  type HandOverMove,
  type HandOverRequest,
  type HandOverSeen,
  HandOverState,
  type HandOverTerms,
} from "@evenhand/shared/http/hand-overs";
import type { CreatedDraft } from "@evenhand/shared/http/paging";
import { Injectable } from "@nestjs/common";
import { z } from "zod";
import { checkRevision } from "../../platform/access/parameters.ts";
import type { Actor } from "../../platform/auth/actor.ts";
import { hashSecret, newSecret } from "../../platform/auth/secret.ts";
import { Clock } from "../../platform/clock/index.ts";
import { dayMs } from "../../platform/database/bounds.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { BodyRow, findRow, sql } from "../../platform/database/rows.ts";
import { toJson } from "../../platform/database/to-json.ts";
import { JsonText } from "../../platform/http/json-text.ts";
import { RecordChain } from "../../platform/record/record-chain.ts";
import { found, ProblemError } from "../../platform/problems/problem-error.ts";
import { bought } from "../summaries/index.ts";
import { handOverSeen } from "./hand-over-view.ts";
import { handOverDetail, handOversOfCase } from "./hand-overs.queries.ts";
import { stateProblem, termsProblem } from "./state-problem.ts";
import { StoredHandOver } from "./stored.ts";
import { whoOf } from "./who-of.ts";

const mostDays = 120;

const CaseToCarry = z.object({
  vehicleId: z.string(),
  buyerId: z.string(),
  dealerId: z.string(),
  decision: z.string().nullable(),
});
const Held = z.object({
  id: z.string(),
  state: HandOverState,
  revision: z.number(),
  buyerId: z.string(),
  dealerId: z.string(),
});
const Live = z.object({ id: z.string() });

type Move = {
  readonly id: string;
  readonly revision: number;
  readonly move: HandOverMove;
  readonly note: string;
};

/** A bought car's way to its buyer, as buyer and dealer follow it. The buyer invites the carrier, and keeps the claim. */
@Injectable()
export class HandOversService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
    private readonly record: RecordChain,
  ) {}

  async ofCase(actor: Actor, caseId: string): Promise<JsonText> {
    const row = await findRow(this.database, BodyRow, {
      name: "hand-overs-of-case",
      text: handOversOfCase,
      values: [...whoOf(actor), caseId],
    });
    return new JsonText(found(row, "case").body);
  }

  async get(actor: Actor, id: string): Promise<HandOverSeen> {
    const row = await findRow(this.database, StoredHandOver, {
      name: "hand-over",
      text: handOverDetail,
      values: [...whoOf(actor), id],
    });
    return handOverSeen(found(row, "hand-over"));
  }

  /** Invites a carrier to a car that is bought and that nobody carries. The secret is in this answer alone. */
  arrange(actor: Actor, caseId: string, request: HandOverRequest): Promise<HandOverLinkCreated> {
    return this.database.transaction((tx) => this.arrangeIn(tx, actor, caseId, request));
  }

  /** The same, within a transaction. */
  async arrangeIn(
    tx: Transaction,
    actor: Actor,
    caseId: string,
    { carrier, terms, expires }: HandOverRequest,
  ): Promise<HandOverLinkCreated> {
    const [now, id, secret] = [this.clock.now(), this.ids.next(), newSecret()];
    const linkExpiresAt = expiryOf(expires, now);
    const { decision, vehicleId, buyerId, dealerId } = await holdCase(tx, actor, caseId);
    if (decision === null) throw notBought();
    await checkNobodyCarries(tx, caseId);
    await tx.handOver.create({
      data: {
        id,
        caseId,
        vehicleId,
        buyerId,
        dealerId,
        decisionId: decision,
        carrier,
        terms: toJson(terms),
        state: "arranged",
        revision: 1,
        tokenHash: hashSecret(secret),
        linkExpiresAt,
        createdBy: actor.account,
        createdAt: now,
      },
    });
    this.record.append(tx, {
      kind: "handover.moved",
      organizations: [buyerId, dealerId],
      subject: id,
      actor: actor.account,
      content: { move: "arrange", state: "arranged", decision },
    });
    return linkTo(id, secret);
  }

  /** A new link; the one before opens nothing from here on. */
  async renewLink(actor: Actor, id: string, { expires }: HandOverLinkRequest): Promise<HandOverLinkCreated> {
    const [now, secret] = [this.clock.now(), newSecret()];
    const linkExpiresAt = expiryOf(expires, now);
    await this.database.transaction(async (tx) => {
      const { state } = await hold(tx, actor, id);
      if (state !== "arranged" && state !== "collected") throw stateProblem(state);
      await tx.handOver.update({ where: { id }, data: { tokenHash: hashSecret(secret), linkExpiresAt } });
    });
    return linkTo(id, secret);
  }

  /** What was agreed with the carrier, entered or mended for as long as it may still matter. */
  async setTerms(actor: Actor, id: string, meant: number, terms: HandOverTerms): Promise<CreatedDraft> {
    return this.database.transaction(async (tx) => {
      const { state, revision: now, buyerId } = await hold(tx, actor, id);
      if (hasEnded(HAND_OVER_STATES, state)) throw termsProblem(state);
      checkRevision(now, meant);
      const revision = now + 1;
      await tx.handOver.update({ where: { id }, data: { terms: toJson(terms), revision } });
      this.record.append(tx, {
        kind: "handover.moved",
        // The dealer is shown no terms.
        organizations: [buyerId],
        subject: id,
        actor: actor.account,
        content: { move: "set-terms", state, revision },
      });
      return { id, revision };
    });
  }

  /** One of the buyer's own moves. */
  async move(
    tx: Transaction,
    actor: Actor,
    { id, revision: meant, move, note }: Move,
  ): Promise<CreatedDraft> {
    const held = await hold(tx, actor, id);
    const decided = decideMove(HAND_OVER_STATES, held.state, move, "buyer");
    if (decided.kind === "refused") throw stateProblem(held.state);
    checkRevision(held.revision, meant);
    const revision = held.revision + 1;
    await tx.handOver.update({ where: { id }, data: { state: decided.to, revision } });
    const made = { actor: "buyer", accountId: actor.account, at: this.clock.now() };
    await tx.handOverMove.create({ data: { id: this.ids.next(), handOverId: id, move, note, ...made } });
    this.record.append(tx, {
      kind: "handover.moved",
      // What is made of its arrival is between buyer and carrier.
      organizations: move === "call-off" ? [held.buyerId, held.dealerId] : [held.buyerId],
      subject: id,
      actor: actor.account,
      content: { move, state: decided.to },
    });
    return { id, revision };
  }
}

const linkTo = (id: string, token: string): HandOverLinkCreated => ({ id, token, path: `/carry/${token}` });

const notBought = (): ProblemError =>
  new ProblemError(
    "hand-over-not-bought",
    "A carrier is invited once the car is bought: approve a summary, or have a counter-offer accepted.",
  );

function expiryOf(expires: string, now: Date): Date {
  const until = new Date(expires);
  if (until > now && until.getTime() - now.getTime() <= mostDays * dayMs) return until;
  throw new ProblemError(
    "expiry-too-far",
    `A carrier's link ends within ${mostDays} days, and not in the past.`,
    {
      problems: [{ at: "/expires", reason: `after now, within ${mostDays} days` }],
    },
  );
}

async function holdCase(tx: Transaction, actor: Actor, id: string) {
  const row = await findRow(tx, CaseToCarry, {
    text: `SELECT c.vehicle_id AS "vehicleId", c.buyer_id AS "buyerId", c.dealer_id AS "dealerId", ${bought} AS decision
      FROM buyer_case c WHERE c.id = $1::uuid AND c.buyer_id = ANY($2::uuid[]) FOR UPDATE OF c`,
    values: [id, actor.organizations("buyer")],
  });
  return found(row, "case");
}

async function checkNobodyCarries(tx: Transaction, caseId: string): Promise<void> {
  const live = await findRow(
    tx,
    Live,
    sql`SELECT id FROM hand_over WHERE case_id = ${caseId}::uuid AND state IN ('arranged', 'collected')`,
  );
  if (live === null) return;
  throw new ProblemError(
    "hand-over-exists",
    "A carrier is invited already. Call that off, or make a new link for it.",
    { members: { handOver: live.id } },
  );
}

/** The buyer's own, held till the transaction ends. */
async function hold(tx: Transaction, actor: Actor, id: string): Promise<z.infer<typeof Held>> {
  const row = await findRow(
    tx,
    Held,
    sql`SELECT id, state, revision, buyer_id AS "buyerId", dealer_id AS "dealerId" FROM hand_over
      WHERE id = ${id}::uuid AND buyer_id = ANY(${actor.organizations("buyer")}::uuid[]) FOR UPDATE`,
  );
  return found(row, "hand-over");
}
