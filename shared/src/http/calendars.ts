import { z } from "zod";
import { CarDealing, DeclaredInterest, InterestKind, Place, Skill, WeeklyHours } from "../booking.ts";
import { Currency } from "../currency.ts";
import { Instant, LocalDate, LocalDateTime, ObjectId } from "../identifier.ts";
import { nameOf } from "../names.ts";
import { Created, CreatedDraft, Named, pageOf, PageQuery, Revision, type Contract } from "./paging.ts";

const ShortName = nameOf(200);
const Minor = z.int().min(0).max(100_000_000);

/** A stretch of time, the end not in it. */
export const Stretch = z.strictObject({ start: Instant, end: Instant });
export type Stretch = z.infer<typeof Stretch>;

/** What an inspector charges, in minor units of one currency; travel by the mile of road, out and back. */
export const InspectorFees = z.strictObject({
  currency: Currency,
  perVisit: Minor,
  perExtraCar: Minor,
  perMile: z.int().min(0).max(100_000),
});
export type InspectorFees = z.infer<typeof InspectorFees>;

/** What an inspector says of their time. `hours.open` are the weekly hours, `hours.away` the exceptions. */
export const InspectorTime = z.strictObject({
  hours: WeeklyHours,
  base: Place,
  /** Great circle, meters. */
  radius: z.int().min(1_000).max(5_000_000),
  /** Usual speed of travel, meters per second. */
  speed: z.number().min(1).max(60),
  /** Minutes between booking and start. */
  notice: z
    .int()
    .min(0)
    .max(60 * 24 * 60),
  fees: InspectorFees,
  skills: z.array(Skill).max(20),
});
export type InspectorTime = z.infer<typeof InspectorTime>;

export const CalendarRequest = InspectorTime.extend({
  /** The inspection firm. */
  organization: ObjectId,
  name: ShortName,
  /** The inspector's own account, a member of the firm. */
  account: ObjectId.optional(),
});
export type CalendarRequest = z.infer<typeof CalendarRequest>;
/** `accepting: false`: no hour is offered, what is booked stays. */
export const CalendarChange = CalendarRequest.omit({ organization: true })
  .partial()
  .extend({ account: ObjectId.nullable().optional(), accepting: z.boolean().optional() });
export type CalendarChange = z.infer<typeof CalendarChange>;

export const AdmissionState = z.enum(["applied", "admitted", "refused", "suspended"]);
export type AdmissionState = z.infer<typeof AdmissionState>;

export const InterestSeen = DeclaredInterest.extend({ id: ObjectId, dealerName: z.string() });
export type InterestSeen = z.infer<typeof InterestSeen>;
export const DealingSeen = z.strictObject({
  id: ObjectId,
  vehicle: ObjectId,
  dealing: CarDealing,
  note: z.string(),
});
export type DealingSeen = z.infer<typeof DealingSeen>;

/** One inspector: a person of an inspection firm, with their hours and what they have declared. */
export const CalendarSeen = InspectorTime.extend({
  id: ObjectId,
  revision: Revision,
  firm: Named,
  name: z.string(),
  account: ObjectId.nullable(),
  accepting: z.boolean(),
  admission: AdmissionState,
  interests: z.array(InterestSeen),
  dealings: z.array(DealingSeen),
});
export type CalendarSeen = z.infer<typeof CalendarSeen>;

/** A new interest, or with `ended` the end of one. */
export const InterestRequest = z.strictObject({
  kind: InterestKind,
  dealer: ObjectId,
  holder: z.enum(["inspector", "firm"]),
  since: Instant,
  endedAt: Instant.nullable().default(null),
  note: z.string().trim().max(2000).default(""),
});
export type InterestRequest = z.infer<typeof InterestRequest>;
export const InterestEnd = z.strictObject({ endedAt: Instant });
export type InterestEnd = z.infer<typeof InterestEnd>;
export const DealingRequest = z.strictObject({
  vehicle: ObjectId,
  dealing: CarDealing,
  note: z.string().trim().max(2000).default(""),
});
export type DealingRequest = z.infer<typeof DealingRequest>;

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

/** A time the dealer gives no access: wall-clock times of the site. */
export const Closure = z
  .strictObject({ from: LocalDateTime, until: LocalDateTime, note: z.string().trim().max(200).default("") })
  .refine(({ from, until }) => from < until, { path: ["until"], message: "after `from`" });
export type Closure = z.infer<typeof Closure>;

export const SiteFees = z.strictObject({ currency: Currency, perVisit: Minor, perLiftSpell: Minor });
export type SiteFees = z.infer<typeof SiteFees>;

const siteShape = {
  name: ShortName,
  address: nameOf(500),
  place: Place,
  /** Opening hours; the zone is the site's. */
  hours: WeeklyHours,
  closures: z.array(Closure).max(200),
  fees: SiteFees,
};
export const SiteRequest = z.strictObject({
  organization: ObjectId,
  ...siteShape,
  closures: siteShape.closures.default([]),
  /** Names of the lifts. */
  bays: z.array(ShortName).max(50).default([]),
});
export type SiteRequest = z.infer<typeof SiteRequest>;
/** `bays` replaces the list: `id: null` is a new lift, one left out is taken out of use. */
export const SiteChange = z
  .strictObject({
    ...siteShape,
    bays: z.array(z.strictObject({ id: ObjectId.nullable(), name: ShortName })).max(50),
  })
  .partial();
export type SiteChange = z.infer<typeof SiteChange>;

export const SiteSeen = z.strictObject({
  id: ObjectId,
  revision: Revision,
  dealer: Named,
  ...siteShape,
  bays: z.array(z.strictObject({ id: ObjectId, name: z.string() })),
});
export type SiteSeen = z.infer<typeof SiteSeen>;

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

/** Where a car stands to be seen. */
export const CarPlaceRequest = z.strictObject({ site: ObjectId });
export type CarPlaceRequest = z.infer<typeof CarPlaceRequest>;
/** `null`: the dealer has not said, and has not exactly one site. */
export const CarPlace = z.strictObject({ site: SiteSeen.omit({ closures: true }).nullable() });
export type CarPlace = z.infer<typeof CarPlace>;

/** Asks whether hours can be laid out, and gives the stretches: for the editor, before anything is saved. */
export const HoursTrial = z.strictObject({
  hours: WeeklyHours,
  from: LocalDate,
  until: LocalDate,
});
export type HoursTrial = z.infer<typeof HoursTrial>;
export const HoursLaidOut = z.strictObject({ open: z.array(Stretch), away: z.array(Stretch) });
export type HoursLaidOut = z.infer<typeof HoursLaidOut>;

/** A firm or an inspector, and whether the operator lets them work. `id` is the firm's or the calendar's. */
export const AdmissionSeen = z.strictObject({
  id: ObjectId,
  revision: z.int().nonnegative(),
  kind: z.enum(["firm", "inspector"]),
  name: z.string(),
  firm: Named,
  state: AdmissionState,
  reason: z.string().nullable(),
  appliedAt: Instant,
  decidedAt: Instant.nullable(),
});
export type AdmissionSeen = z.infer<typeof AdmissionSeen>;
export const AdmissionQuery = PageQuery.extend({ state: AdmissionState.optional() });
export type AdmissionQuery = z.infer<typeof AdmissionQuery>;
export const AdmissionDecision = z.strictObject({
  decision: z.enum(["admit", "refuse", "suspend"]),
  reason: z.string().trim().min(1).max(2000),
});
export type AdmissionDecision = z.infer<typeof AdmissionDecision>;

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

/** Every rule and date that hours may have, and two hundred closures. */
const hoursBytes = 192 * 1024;

export const calendarContracts = {
  "calendars.create": {
    body: CalendarRequest,
    bodyBytes: hoursBytes,
    costly: true,
    status: 201,
    answer: CreatedDraft,
  },
  "calendars.list": { query: PageQuery, status: 200, answer: pageOf(CalendarSeen) },
  "calendars.get": { status: 200, answer: CalendarSeen },
  "calendars.change": {
    body: CalendarChange,
    bodyBytes: hoursBytes,
    costly: true,
    status: 200,
    answer: CreatedDraft,
  },
  "calendars.days": { query: DaysQuery, costly: true, status: 200, answer: InspectorDays },
  "calendars.layOut": {
    body: HoursTrial,
    bodyBytes: hoursBytes,
    costly: true,
    status: 200,
    answer: HoursLaidOut,
  },
  "interests.declare": { body: InterestRequest, status: 201, answer: Created },
  "interests.end": { body: InterestEnd, status: 200, answer: Created },
  "dealings.declare": { body: DealingRequest, status: 201, answer: Created },
  "sites.create": {
    body: SiteRequest,
    bodyBytes: hoursBytes,
    costly: true,
    status: 201,
    answer: CreatedDraft,
  },
  "sites.list": { query: PageQuery, status: 200, answer: pageOf(SiteSeen) },
  "sites.get": { status: 200, answer: SiteSeen },
  "sites.change": {
    body: SiteChange,
    bodyBytes: hoursBytes,
    costly: true,
    status: 200,
    answer: CreatedDraft,
  },
  "sites.days": { query: DaysQuery, costly: true, status: 200, answer: SiteDays },
  "carPlace.get": { status: 200, answer: CarPlace },
  "carPlace.put": { body: CarPlaceRequest, status: 200, answer: CarPlace },
  "admissions.list": { query: AdmissionQuery, status: 200, answer: pageOf(AdmissionSeen) },
  "admissions.decide": { body: AdmissionDecision, status: 201, answer: CreatedDraft },
  "calendarFeeds.create": { body: FeedRequest, status: 201, answer: FeedCreated },
  "calendarFeeds.list": { query: PageQuery, status: 200, answer: pageOf(FeedSeen) },
  "calendarFeeds.revoke": { status: 204, answer: null },
  "calendarFeeds.read": { status: 200, answer: FeedText },
} as const satisfies Record<string, Contract>;
