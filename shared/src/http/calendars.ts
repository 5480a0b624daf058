import { z } from "zod";
import { CarDealing, DeclaredInterest, InterestKind, Place, Skill, WeeklyHours } from "../booking.ts";
import { Currency } from "../currency.ts";
import { Instant, LocalDate, ObjectId } from "../identifier.ts";
import { nameOf } from "../names.ts";
import { Created, CreatedDraft, Named, pageOf, PageQuery, Revision, type Contract } from "./paging.ts";

export const ShortName = nameOf(200);
export const Minor = z.int().min(0).max(100_000_000);

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

/** Asks whether hours can be laid out, and gives the stretches: for the editor, before anything is saved. */
export const HoursTrial = z.strictObject({
  hours: WeeklyHours,
  from: LocalDate,
  until: LocalDate,
});
export type HoursTrial = z.infer<typeof HoursTrial>;
export const HoursLaidOut = z.strictObject({ open: z.array(Stretch), away: z.array(Stretch) });
export type HoursLaidOut = z.infer<typeof HoursLaidOut>;

/** Every rule and date that hours may have, and two hundred closures. */
export const hoursBytes = 192 * 1024;

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
} as const satisfies Record<string, Contract>;
