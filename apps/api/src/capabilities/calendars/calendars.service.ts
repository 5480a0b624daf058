import { Injectable } from "@nestjs/common";
import { type Interval, subtract } from "@evenhand/booking/interval";
import { localDay } from "@evenhand/booking/local-time";
import type {
  CalendarChange,
  CalendarRequest,
  HoursLaidOut,
  HoursTrial,
} from "@evenhand/shared/http/calendars";
import type { CreatedDraft, PageQuery } from "@evenhand/shared/http/paging";
import { z } from "zod";
import { checkRevision } from "../../platform/access/parameters.ts";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { readCursor, readPage } from "../../platform/database/page.ts";
import { findRow, RevisedBodyRow, sql } from "../../platform/database/rows.ts";
import { JsonText } from "../../platform/http/json-text.ts";
import { found, notFound, ProblemError } from "../../platform/problems/problem-error.ts";
import { calendarDetail, calendarList } from "./calendars.queries.ts";
import { checkDates, checkHours, layOutInTurns } from "./hours.ts";

const LockedCalendar = z.object({ organizationId: z.string(), revision: z.number() });

/** The columns of what an inspector says of their time. */
const columnsOf = ({ hours, base, radius, speed, notice, fees, skills, name, account }: CalendarChange) => ({
  ...(hours === undefined ? {} : { hours }),
  ...(base === undefined ? {} : base),
  ...(fees === undefined ? {} : fees),
  radius,
  speed,
  notice,
  skills,
  name,
  ...(account === undefined ? {} : { accountId: account }),
});

export const toStretch = ({ start, end }: Interval): { start: string; end: string } => ({
  start: new Date(start).toISOString(),
  end: new Date(end).toISOString(),
});

/** Inspectors: the people of a firm, with their hours, base and fees. */
@Injectable()
export class CalendarsService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
  ) {}

  async list(actor: Actor, query: PageQuery): Promise<JsonText> {
    return readPage(this.database, {
      name: "calendar-list",
      text: calendarList,
      values: [actor.organizations("inspector"), actor.isOperator, readCursor(query), query.limit],
    });
  }

  async get(actor: Actor, id: string): Promise<JsonText> {
    const row = await findRow(this.database, RevisedBodyRow, {
      name: "calendar",
      text: calendarDetail,
      values: [actor.organizations("inspector"), actor.isOperator, id],
    });
    const { body, revision } = found(row, "calendar");
    return new JsonText(body, String(revision));
  }

  /** A firm names an inspector; the operator admits them before their hours are offered. */
  async create(
    tx: Transaction,
    actor: Actor,
    { organization, ...request }: CalendarRequest,
  ): Promise<CreatedDraft> {
    if (!actor.organizations("inspector").includes(organization)) throw notFound("organization");
    if (!actor.isAdmin(organization))
      throw new ProblemError("not-permitted", "An administrator of the firm names its inspectors.");
    await checkHours(request.hours, this.clock.now().getTime());
    await checkAccount(tx, organization, request.account);
    const id = this.ids.next();
    const { hours, base, fees, account, ...rest } = request;
    await tx.inspectorCalendar.create({
      data: {
        ...rest,
        ...base,
        ...fees,
        id,
        hours,
        organizationId: organization,
        accountId: account ?? null,
        accepting: true,
        revision: 1,
        admission: "applied",
        admissionRevision: 1,
        createdAt: this.clock.now(),
      },
    });
    return { id, revision: 1 };
  }

  async change(actor: Actor, id: string, meant: number, change: CalendarChange): Promise<CreatedDraft> {
    if (change.hours !== undefined) await checkHours(change.hours, this.clock.now().getTime());
    return this.database.transaction(async (tx) => {
      const calendar = await this.lockOwn(tx, actor, id);
      checkRevision(calendar.revision, meant);
      await checkAccount(tx, calendar.organizationId, change.account ?? undefined);
      const { revision } = await tx.inspectorCalendar.update({
        where: { id },
        data: { ...columnsOf(change), accepting: change.accepting, revision: { increment: 1 } },
      });
      return { id, revision };
    });
  }

  /** Somebody leaves the firm: their hours are offered no longer. What is booked stays with the firm. */
  async stopFor(tx: Transaction, organization: string, account: string): Promise<void> {
    await tx.inspectorCalendar.updateMany({
      where: { organizationId: organization, accountId: account },
      data: { accepting: false, accountId: null, revision: { increment: 1 } },
    });
  }

  /** An inspector of the person's own firm, held until the transaction ends. */
  async lockOwn(
    tx: Transaction,
    actor: Actor,
    id: string,
  ): Promise<{ organizationId: string; revision: number }> {
    const calendar = await findRow(
      tx,
      LockedCalendar,
      sql`
      SELECT organization_id AS "organizationId", revision FROM inspector_calendar
      WHERE id = ${id}::uuid AND organization_id = ANY(${actor.organizations("inspector")}::uuid[]) FOR UPDATE`,
    );
    return found(calendar, "calendar");
  }

  /** The stretches hours would give: for an editor, before anything is saved. */
  async layOut({ hours, from, until }: HoursTrial): Promise<HoursLaidOut> {
    const now = this.clock.now().getTime();
    checkDates(from, until, now);
    await checkHours(hours, now);
    const horizon = { start: localDay(from, hours.zone).start, end: localDay(until, hours.zone).end };
    const open = await layOutInTurns(hours.open, hours.zone, horizon);
    const away = await layOutInTurns(hours.away, hours.zone, horizon);
    return { open: subtract(open, away).map(toStretch), away: away.map(toStretch) };
  }
}

/** @throws ProblemError `invalid-fields` where the account is nobody of the firm */
async function checkAccount(
  tx: Transaction,
  organization: string,
  account: string | undefined,
): Promise<void> {
  if (account === undefined) return;
  const member = await tx.membership.findFirst({
    where: { accountId: account, organizationId: organization },
    select: { accountId: true },
  });
  if (member === null)
    throw new ProblemError("invalid-fields", "The inspector's account must be a member of the firm.", {
      problems: [{ at: "/account", reason: "the id of a member of the firm" }],
    });
}
