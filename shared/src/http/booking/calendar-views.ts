import { z } from "zod";
import { Place } from "../../booking.ts";
import { Instant, LocalDate, ObjectId } from "../../identifier.ts";
import { ShortName, Stretch } from "../calendars.ts";
import { Named, pageOf, PageQuery, type Contract } from "../paging.ts";

/** First and last date, both in it; at most 62 days. */
export const DaysQuery = z.strictObject({ from: LocalDate, until: LocalDate });
export type DaysQuery = z.infer<typeof DaysQuery>;

/** Something in an inspector's or a bay's day. `travelBefore`: minutes of driving from the job before, or from the base. */
export const EngagementSeen = z.strictObject({
  appointment: ObjectId,
  state: z.string(),
  start: Instant,
  end: Instant,
  site: z.strictObject({ id: ObjectId, name: z.string(), place: Place }),
  travelBefore: z.int().nullable(),
  travelAfter: z.int().nullable(),
});
export type EngagementSeen = z.infer<typeof EngagementSeen>;

/** One day on the calendar's own clock. */
export const InspectorDay = z.strictObject({
  date: LocalDate,
  /** The day from midnight to midnight: 23 or 25 hours where the offset changes. */
  day: Stretch,
  open: z.array(Stretch),
  /** Exceptions laid out. */
  away: z.array(Stretch),
  /** Sunrise to sunset at the base. */
  daylight: z.array(Stretch),
  engagements: z.array(EngagementSeen),
});
export type InspectorDay = z.infer<typeof InspectorDay>;
export const InspectorDays = z.strictObject({ zone: z.string(), days: z.array(InspectorDay) });
export type InspectorDays = z.infer<typeof InspectorDays>;

export const SiteDay = z.strictObject({
  date: LocalDate,
  day: Stretch,
  open: z.array(Stretch),
  closed: z.array(Stretch),
  daylight: z.array(Stretch),
  bays: z.array(z.strictObject({ id: ObjectId, name: z.string(), engagements: z.array(EngagementSeen) })),
});
export type SiteDay = z.infer<typeof SiteDay>;
export const SiteDays = z.strictObject({ zone: z.string(), days: z.array(SiteDay) });
export type SiteDays = z.infer<typeof SiteDays>;

/** An address from which a calendar program reads appointments. The secret is in the answer to making it, and nowhere else. */
export const FeedRequest = z.strictObject({
  /** Appointments of this organization that the person may see. */
  organization: ObjectId,
  /** Of one inspector only. */
  calendar: ObjectId.optional(),
  name: ShortName,
});
export type FeedRequest = z.infer<typeof FeedRequest>;
export const FeedCreated = z.strictObject({ id: ObjectId, token: z.string(), path: z.string() });
export type FeedCreated = z.infer<typeof FeedCreated>;
export const FeedSeen = z.strictObject({
  id: ObjectId,
  organization: Named,
  calendar: ObjectId.nullable(),
  name: z.string(),
  createdAt: Instant,
  readAt: Instant.nullable(),
});
export type FeedSeen = z.infer<typeof FeedSeen>;
/** `text/calendar` (RFC 5545). */
export const FeedText = z.string();

export const calendarViewContracts = {
  "calendars.days": { query: DaysQuery, costly: true, status: 200, answer: InspectorDays },
  "sites.days": { query: DaysQuery, costly: true, status: 200, answer: SiteDays },
  "calendarFeeds.create": { body: FeedRequest, status: 201, answer: FeedCreated },
  "calendarFeeds.list": { query: PageQuery, status: 200, answer: pageOf(FeedSeen) },
  "calendarFeeds.revoke": { status: 204, answer: null },
  "calendarFeeds.read": { status: 200, answer: FeedText },
} as const satisfies Record<string, Contract>;
