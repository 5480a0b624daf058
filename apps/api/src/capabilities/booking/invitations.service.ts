import { Inject, Injectable } from "@nestjs/common";
import { letter } from "@evenhand/wording/letter";
import type { Consequence } from "@evenhand/booking/appointment";
import { z } from "zod";
import { CONFIG, type Config } from "../../platform/config/index.ts";
import { Clock } from "../../platform/clock/index.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { findRow, readRows, sql } from "../../platform/database/rows.ts";
import { SiteAddress } from "../../platform/http/site-address.ts";
import { Outbox } from "../../platform/mail/outbox.ts";
import { found } from "../../platform/problems/problem-error.ts";
import type { StoredAppointment } from "./appointment-store.ts";
import { invitation, type VisitEvent } from "./visit-calendar.ts";

type Invite = Extract<Consequence, { code: "invite" }>;
type Place = Pick<VisitEvent, "cars"> & { site: VisitEvent["site"] };

const PlaceRow = z.object({
  name: z.string(),
  address: z.string(),
  latitude: z.number(),
  longitude: z.number(),
  cars: z.array(z.string()),
});
const Recipient = z.object({ name: z.string(), email: z.string() });
type Recipient = z.infer<typeof Recipient>;

/** Sends what calendars of buyer, inspector and dealer need to know, to each for themselves. */
@Injectable()
export class VisitInvitations {
  constructor(
    private readonly clock: Clock,
    private readonly outbox: Outbox,
    private readonly site: SiteAddress,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  async send(tx: Transaction, appointment: StoredAppointment, invite: Invite): Promise<void> {
    const { method, sequence, hour, tentative } = invite;
    const status = method === "CANCEL" ? "cancelled" : tentative ? "tentative" : "confirmed";
    const place = await readPlace(tx, appointment.id);
    const event = { id: appointment.id, sequence, hour, status, stamp: this.clock.now(), ...place } as const;
    for (const to of await readRecipients(tx, appointment))
      await this.outbox.enqueue(tx, {
        recipient: to.email,
        ...letter(method === "CANCEL" ? "visit-off-calendar" : "visit-on-calendar", {
          link: this.site.base.concat("/appointments/", appointment.id),
        }),
        calendar: { method, text: invitation(event, method, to, addressIn(this.config.mail.from)) },
      });
  }
}

/** The bare address of `Name <address>`. */
const addressIn = (from: string): string => /<([^<>]+)>/.exec(from)?.[1] ?? from;

async function readPlace(tx: Transaction, id: string): Promise<Place> {
  const row = await findRow(
    tx,
    PlaceRow,
    sql`
    SELECT s.name, s.address, s.latitude, s.longitude, ARRAY(
      SELECT v.model_year || ' ' || v.make || ' ' || v.model FROM appointment_car c JOIN vehicle v ON v.id = c.vehicle_id
      WHERE c.appointment_id = a.id ORDER BY c.place) AS cars
    FROM appointment a JOIN site s ON s.id = a.site_id WHERE a.id = ${id}::uuid`,
  );
  const { cars, ...site } = found(row, "appointment");
  return { cars, site };
}

/** The inspector's own account where there is one, else the firm; the buyer's and the dealer's people. */
async function readRecipients(
  tx: Transaction,
  { inspector, firm, buyer, dealer }: StoredAppointment,
): Promise<Recipient[]> {
  return readRows(
    tx,
    Recipient,
    sql`
    SELECT DISTINCT a.name, a.email FROM account a WHERE a.id IN (
      SELECT m.account_id FROM membership m WHERE m.organization_id IN (${buyer}::uuid, ${dealer}::uuid)
      UNION SELECT c.account_id FROM inspector_calendar c WHERE c.id = ${inspector}::uuid
      UNION SELECT m.account_id FROM membership m JOIN inspector_calendar c ON c.id = ${inspector}::uuid
        WHERE m.organization_id = ${firm}::uuid AND c.account_id IS NULL)
    ORDER BY a.email`,
  );
}
