import { Injectable } from "@nestjs/common";
import { letter } from "@evenhand/wording/letter";
import { COMPLAINT_STATES } from "@evenhand/case/complaint-states";
import { decideMove } from "@evenhand/case/state-table";
import {
  type ComplaintOpening,
  type ComplaintQuery,
  type ComplaintReply,
  type ComplaintRequest,
  ComplaintState,
} from "@evenhand/shared/http/complaints";
import type { Created, CreatedDraft } from "@evenhand/shared/http/paging";
import { z } from "zod";
import { checkRevision } from "../../platform/access/parameters.ts";
import type { Actor } from "../../platform/auth/actor.ts";
import { sha256Hex } from "../../platform/auth/secret.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { dayLimit, dayMs, keepOpenWithin, oneAtATime } from "../../platform/database/bounds.ts";
import { Ids } from "../../platform/database/ids.ts";
import { RecordChain } from "../../platform/record/record-chain.ts";
import { readCursor, readPage } from "../../platform/database/page.ts";
import { findRow, RevisedBodyRow, sql } from "../../platform/database/rows.ts";
import { JsonText } from "../../platform/http/json-text.ts";
import { SiteAddress } from "../../platform/http/site-address.ts";
import { Outbox } from "../../platform/mail/outbox.ts";
import { found, notFound, ProblemError } from "../../platform/problems/problem-error.ts";
import { complaintCounts, complaintDetail, complaintList } from "./complaints.queries.ts";

const LockedComplaint = z.object({
  state: ComplaintState,
  revision: z.number(),
  author: z.string(),
  organization: z.string(),
});

/** Complaints. The operator sees how many wait and for how long; what they say only by opening one, with a reason that is kept. */
@Injectable()
export class ComplaintsService {
  static readonly sentADay = 10;
  static readonly mostOpen = 20;

  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
    private readonly outbox: Outbox,
    private readonly site: SiteAddress,
    private readonly record: RecordChain,
  ) {}

  async create(
    tx: Transaction,
    actor: Actor,
    { organization, about, text }: ComplaintRequest,
  ): Promise<Created> {
    if (!actor.organizations().includes(organization)) throw notFound("organization");
    const id = this.ids.next();
    await this.keepWithinBounds(tx, actor.account, organization);
    await tx.complaint.create({
      data: {
        id,
        organizationId: organization,
        aboutKind: about.kind,
        aboutId: about.id,
        text,
        state: "received",
        revision: 1,
        createdBy: actor.account,
        receivedAt: this.clock.now(),
      },
    });
    this.record.append(tx, {
      kind: "complaint.made",
      organizations: [organization],
      subject: id,
      actor: actor.account,
      content: { about: about.kind, aboutId: about.id, words: sha256Hex(text) },
    });
    return { id };
  }

  /** Each is read by a person, who can read so many. */
  private async keepWithinBounds(tx: Transaction, account: string, organization: string): Promise<void> {
    await oneAtATime(tx, "complaints", organization);
    const since = { gt: new Date(this.clock.now().getTime() - dayMs) };
    const sent = await tx.complaint.count({ where: { createdBy: account, receivedAt: since } });
    if (sent >= ComplaintsService.sentADay)
      throw dayLimit(
        `You have sent ${sent} complaints within a day, as many as may be. Send the next tomorrow.`,
      );
    const where = { organizationId: organization, state: { not: "answered" } };
    keepOpenWithin(
      await tx.complaint.count({ where }),
      ComplaintsService.mostOpen,
      `${ComplaintsService.mostOpen} complaints of your organization wait for an answer, as many as may be at once.`,
    );
  }

  async list(actor: Actor, query: ComplaintQuery): Promise<JsonText> {
    const values = [...whoOf(actor), readCursor(query), query.limit, query.state ?? null];
    return readPage(this.database, { name: "complaint-list", text: complaintList, values });
  }

  async get(actor: Actor, id: string): Promise<JsonText> {
    const row = await findRow(this.database, RevisedBodyRow, {
      name: "complaint",
      text: complaintDetail,
      values: [...whoOf(actor), id],
    });
    const { body, revision } = found(row, "complaint");
    return new JsonText(body, String(revision));
  }

  async counts(): Promise<JsonText> {
    return readPage(this.database, { name: "complaint-counts", text: complaintCounts });
  }

  /** Lets this operator read it, and keeps that they did and why. */
  async open(tx: Transaction, actor: Actor, id: string, { reason }: ComplaintOpening): Promise<CreatedDraft> {
    const complaint = await lock(tx, id);
    const at = this.clock.now();
    await tx.complaintOpening.create({
      data: { id: this.ids.next(), complaintId: id, accountId: actor.account, reason, at },
    });
    const moved = decideMove(COMPLAINT_STATES, complaint.state, "open", "operator");
    if (moved.kind === "refused" || moved.to === complaint.state) return { id, revision: complaint.revision };
    const revision = complaint.revision + 1;
    await tx.complaint.update({ where: { id }, data: { state: moved.to, revision } });
    return { id, revision };
  }

  async answer(
    tx: Transaction,
    actor: Actor,
    id: string,
    meant: number,
    { text }: ComplaintReply,
  ): Promise<CreatedDraft> {
    const complaint = await lock(tx, id);
    checkRevision(complaint.revision, meant);
    const opened = await tx.complaintOpening.count({
      where: { complaintId: id, accountId: actor.account },
    });
    const moved = decideMove(COMPLAINT_STATES, complaint.state, "answer", "operator");
    if (moved.kind === "refused" || opened === 0)
      throw new ProblemError("complaint-state", "Open the complaint first; one that is answered stays so.", {
        members: { state: complaint.state },
      });
    const revision = meant + 1;
    const answered = { answeredBy: actor.account, answeredAt: this.clock.now() };
    await tx.complaint.update({
      where: { id },
      data: { state: moved.to, reply: text, revision, ...answered },
    });
    await this.tell(tx, id, complaint.author);
    this.record.append(tx, {
      kind: "complaint.answered",
      organizations: [complaint.organization],
      subject: id,
      actor: actor.account,
      content: { words: sha256Hex(text) },
    });
    return { id, revision };
  }

  private async tell(tx: Transaction, id: string, account: string): Promise<void> {
    const { email } = await tx.account.findUniqueOrThrow({ where: { id: account }, select: { email: true } });
    const link = this.site.base.concat("/complaints/", id);
    await this.outbox.enqueue(tx, { recipient: email, ...letter("complaint-answered", { link }) });
  }
}

const whoOf = (actor: Actor): unknown[] => [actor.organizations(), actor.account, actor.isOperator];

async function lock(
  tx: Transaction,
  id: string,
): Promise<{ state: ComplaintState; revision: number; author: string; organization: string }> {
  const row = await findRow(
    tx,
    LockedComplaint,
    sql`
    SELECT state, revision, created_by AS author, organization_id AS organization FROM complaint WHERE id = ${id}::uuid FOR UPDATE`,
  );
  return found(row, "complaint");
}
