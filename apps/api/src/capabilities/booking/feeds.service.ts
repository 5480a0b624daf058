import { Injectable } from "@nestjs/common";
import type { FeedCreated, FeedRequest } from "@evenhand/shared/http/booking/calendar-views";
import type { PageQuery } from "@evenhand/shared/http/paging";
import { z } from "zod";
import type { Actor } from "../../platform/auth/actor.ts";
import { hashSecret, newSecret } from "../../platform/auth/secret.ts";
import { Clock } from "../../platform/clock/index.ts";
import { keepOpenWithin, oneAtATime } from "../../platform/database/bounds.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { pageStatement, readCursor, readPage } from "../../platform/database/page.ts";
import { findRow, readRows } from "../../platform/database/rows.ts";
import type { JsonText } from "../../platform/http/json-text.ts";
import { found, notFound } from "../../platform/problems/problem-error.ts";
import { feed, type VisitEvent } from "./visit-calendar.ts";

/** `$1` account, `$2` cursor, `$3` limit. */
const feedList = pageStatement(
  `SELECT f.* FROM calendar_feed f WHERE f.account_id = $1 AND f.revoked_at IS NULL AND f.id < $2
   ORDER BY f.id DESC LIMIT $3 + 1`,
  `json_build_object('id', page.id, 'name', page.name, 'calendar', page.calendar_id,
    'organization', (SELECT json_build_object('id', o.id, 'name', o.name) FROM organization o WHERE o.id = page.organization_id),
    'createdAt', instant(page.created_at), 'readAt', instant(page.read_at))`,
  "$3",
);

/** The feed at a secret, while its owner still belongs to the organization. */
const feedBySecret = `UPDATE calendar_feed f SET read_at = $2 FROM membership m
  WHERE f.token_hash = $1 AND f.revoked_at IS NULL AND m.account_id = f.account_id AND m.organization_id = f.organization_id
  RETURNING f.name, f.organization_id AS organization, f.calendar_id AS calendar`;

/** `$1` organization, `$2` one inspector or null, `$3` since when. As far back and as far on as each party sees it. */
const feedEvents = `SELECT a.id, coalesce(a.sequence, 0) AS sequence, a.state, a.starts_at, a.ends_at, s.name, s.address,
    s.latitude, s.longitude, ARRAY(SELECT v.model_year || ' ' || v.make || ' ' || v.model FROM appointment_car c
      JOIN vehicle v ON v.id = c.vehicle_id WHERE c.appointment_id = a.id ORDER BY c.place) AS cars
  FROM appointment a JOIN site s ON s.id = a.site_id
  WHERE a.ends_at > $3 AND ($2::uuid IS NULL OR a.inspector_id = $2)
    AND a.state IN ('requested', 'accepted', 'confirmed', 'under-way', 'reported')
    AND (a.buyer_id = $1 OR a.firm_id = $1 OR (a.dealer_id = $1 AND a.declared_at IS NOT NULL))
  ORDER BY a.starts_at LIMIT 1000`;

const Found = z.object({ name: z.string(), organization: z.string(), calendar: z.string().nullable() });
const Row = z.object({
  id: z.string(),
  sequence: z.number(),
  state: z.string(),
  starts_at: z.date(),
  ends_at: z.date(),
  name: z.string(),
  address: z.string(),
  latitude: z.number(),
  longitude: z.number(),
  cars: z.array(z.string()),
});
type Row = z.infer<typeof Row>;

const kept = 90 * 86_400_000;
const tentative = new Set(["requested", "accepted"]);

/** Feeds of one account at once. Common practice, no source. */
const mostFeeds = 50;

async function keepFeedsWithin(tx: Transaction, account: string): Promise<void> {
  await oneAtATime(tx, "feeds", account);
  keepOpenWithin(
    await tx.calendarFeed.count({ where: { accountId: account, revokedAt: null } }),
    mostFeeds,
    `${mostFeeds} calendar feeds of this account can be read, as many as may be at once. End those that no calendar uses.`,
  );
}

/** Addresses from which calendar programs read, known to whoever made them, and ended at will. */
@Injectable()
export class FeedsService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
  ) {}

  async create(actor: Actor, { organization, calendar, name }: FeedRequest): Promise<FeedCreated> {
    if (!actor.organizations().includes(organization)) throw notFound("organization");
    const [id, token] = [this.ids.next(), newSecret()];
    await this.database.transaction(async (tx) => {
      if (calendar !== undefined) {
        const where = { id: calendar, organizationId: organization };
        found(await tx.inspectorCalendar.findFirst({ where, select: { id: true } }), "calendar");
      }
      await keepFeedsWithin(tx, actor.account);
      await tx.calendarFeed.create({
        data: {
          id,
          accountId: actor.account,
          organizationId: organization,
          calendarId: calendar ?? null,
          name,
          tokenHash: hashSecret(token),
          createdAt: this.clock.now(),
        },
      });
    });
    return { id, token, path: `/api/v1/calendar-feeds/${token}/calendar.ics` };
  }

  async list(actor: Actor, query: PageQuery): Promise<JsonText> {
    const values = [actor.account, readCursor(query), query.limit];
    return readPage(this.database, { name: "feed-list", text: feedList, values });
  }

  async revoke(actor: Actor, id: string): Promise<void> {
    const { count } = await this.database.transaction((tx) =>
      tx.calendarFeed.updateMany({
        where: { id, accountId: actor.account, revokedAt: null },
        data: { revokedAt: this.clock.now() },
      }),
    );
    if (count === 0) throw notFound("feed");
  }

  async read(secret: string): Promise<string> {
    const now = this.clock.now();
    const known = await findRow(this.database, Found, {
      text: feedBySecret,
      values: [Buffer.from(hashSecret(secret)), now],
    });
    const { name, organization, calendar } = found(known, "feed");
    const rows = await readRows(this.database, Row, {
      text: feedEvents,
      values: [organization, calendar, new Date(now.getTime() - kept)],
    });
    return feed(
      name,
      rows.map((row) => toVisit(row, now)),
    );
  }
}

const toVisit = (row: Row, stamp: Date): VisitEvent => ({
  id: row.id,
  sequence: row.sequence,
  hour: { start: row.starts_at.getTime(), end: row.ends_at.getTime() },
  status: tentative.has(row.state) ? "tentative" : "confirmed",
  site: { name: row.name, address: row.address, latitude: row.latitude, longitude: row.longitude },
  cars: row.cars,
  stamp,
});
