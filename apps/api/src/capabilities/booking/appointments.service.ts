import { Injectable } from "@nestjs/common";
import { type Role, rolesIn } from "@evenhand/booking/parties";
import type { AppointmentQuery, AppointmentSeen } from "@evenhand/shared/http/booking";
import { z } from "zod";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database } from "../../platform/database/database.ts";
import { readCursor, readPage } from "../../platform/database/page.ts";
import { findRow } from "../../platform/database/rows.ts";
import type { JsonText } from "../../platform/http/json-text.ts";
import { found } from "../../platform/problems/problem-error.ts";
import { Detail, seenBy } from "./appointment-view.ts";
import { appointmentCounts, appointmentDetail, appointmentList } from "./appointments.queries.ts";
import { membershipOf } from "./roles.ts";
import { readVisits, shareOf } from "./world.ts";

const DetailRow = z.object({ body: Detail });

@Injectable()
export class AppointmentsService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  async list(actor: Actor, query: AppointmentQuery): Promise<JsonText> {
    const { limit, state, vehicle, from, until } = query;
    return readPage(this.database, {
      name: "appointment-list",
      text: appointmentList,
      values: [
        actor.organizations(),
        actor.isOperator,
        readCursor(query),
        limit,
        state ?? null,
        vehicle ?? null,
        from ?? null,
        until ?? null,
      ],
    });
  }

  async counts(): Promise<JsonText> {
    return readPage(this.database, { name: "appointment-counts", text: appointmentCounts });
  }

  async get(actor: Actor, id: string): Promise<AppointmentSeen> {
    const row = await findRow(this.database, DetailRow, {
      name: "appointment",
      text: appointmentDetail,
      values: [actor.organizations(), actor.isOperator, id],
    });
    const detail = found(row, "appointment").body;
    const now = this.clock.now().getTime();
    const visits = await readVisits(this.database, [detail.inspector.id], now);
    const share = shareOf(detail.dealer.id, visits.get(detail.inspector.id) ?? [], now);
    return seenBy(detail, roleOf(actor, detail), now, share);
  }
}

const at = (text: string | null): number | null => (text === null ? null : Date.parse(text));

function roleOf(actor: Actor, { parties, requestedAt, declaredAt }: Detail): Role {
  const [role] = rolesIn(membershipOf(actor), {
    ...parties,
    declaredAt: at(declaredAt),
    requestedAt: at(requestedAt),
  });
  return found(role, "appointment");
}
