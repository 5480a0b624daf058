import { Injectable } from "@nestjs/common";
import type { DealingRequest, InterestEnd, InterestRequest } from "@evenhand/shared/http/calendars";
import type { Created } from "@evenhand/shared/http/paging";
import { z } from "zod";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { findRow, sql } from "../../platform/database/rows.ts";
import { found, ProblemError } from "../../platform/problems/problem-error.ts";
import { CalendarsService } from "./calendars.service.ts";

const SinceRow = z.object({ since: z.date() });

/** What ties inspectors and their firms to dealers and to cars, as they declare it. Nothing declared is ever taken back. */
@Injectable()
export class InterestsService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
    private readonly calendars: CalendarsService,
  ) {}

  async declare(tx: Transaction, actor: Actor, calendar: string, request: InterestRequest): Promise<Created> {
    await this.calendars.lockOwn(tx, actor, calendar);
    return this.store(tx, actor, calendar, request);
  }

  async end(actor: Actor, id: string, { endedAt }: InterestEnd): Promise<Created> {
    return this.database.transaction(async (tx) => {
      const row = await findRow(
        tx,
        SinceRow,
        sql`
        SELECT i.since FROM inspector_interest i JOIN inspector_calendar c ON c.id = i.calendar_id
        WHERE i.id = ${id}::uuid AND c.organization_id = ANY(${actor.organizations("inspector")}::uuid[]) FOR UPDATE OF i`,
      );
      if (new Date(endedAt) < found(row, "interest").since)
        throw new ProblemError("invalid-fields", "An interest does not end before it began.", {
          problems: [{ at: "/endedAt", reason: "not before it began" }],
        });
      await tx.inspectorInterest.update({ where: { id }, data: { endedAt: new Date(endedAt) } });
      return { id };
    });
  }

  async declareDealing(
    tx: Transaction,
    actor: Actor,
    calendar: string,
    request: DealingRequest,
  ): Promise<Created> {
    await this.calendars.lockOwn(tx, actor, calendar);
    return this.storeDealing(tx, actor, calendar, request);
  }

  async store(tx: Transaction, actor: Actor, calendar: string, request: InterestRequest): Promise<Created> {
    const dealer = await tx.organization.findFirst({
      where: { id: request.dealer, kind: "dealer" },
      select: { id: true },
    });
    if (dealer === null)
      throw new ProblemError("invalid-fields", "An interest is declared in a dealer that is here.", {
        problems: [{ at: "/dealer", reason: "the id of a dealer" }],
      });
    const { kind, holder, since, endedAt, note } = request;
    const id = this.ids.next();
    await tx.inspectorInterest.create({
      data: {
        id,
        calendarId: calendar,
        dealerId: dealer.id,
        kind,
        holder,
        since: new Date(since),
        endedAt: endedAt === null ? null : new Date(endedAt),
        note,
        createdBy: actor.account,
        createdAt: this.clock.now(),
      },
    });
    return { id };
  }

  async storeDealing(
    tx: Transaction,
    actor: Actor,
    calendar: string,
    { vehicle, dealing, note }: DealingRequest,
  ): Promise<Created> {
    const known = await tx.vehicle.findUnique({ where: { id: vehicle }, select: { id: true } });
    if (known === null)
      throw new ProblemError("invalid-fields", "A dealing is declared about a car that is here.", {
        problems: [{ at: "/vehicle", reason: "the id of a car" }],
      });
    const id = this.ids.next();
    await tx.inspectorDealing.create({
      data: {
        id,
        calendarId: calendar,
        vehicleId: vehicle,
        dealing,
        note,
        createdBy: actor.account,
        createdAt: this.clock.now(),
      },
    });
    return { id };
  }
}
