import { z } from "zod";
import { Instant, ItemId, LocalDateTime, Money, ObjectId, PositionId } from "./identifier.ts";
import { Need } from "./sheet.ts";
import { Zone } from "./zone.ts";
import { APPOINTMENT_STATES, CAR_DEALINGS, INTEREST_KINDS, SKILLS } from "./terms.ts";

/** A point on the Earth in decimal degrees; north and east are positive. */
export const Place = z.strictObject({
  latitude: z.number().min(-90).max(90),
  longitude: z.number().min(-180).max(180),
});
export type Place = z.infer<typeof Place>;

/** An RRULE value of RFC 5545 §3.3.10 no finer than days: hours open and close once a day. */
export const HoursRecurrence = z
  .string()
  .max(250)
  .regex(/^FREQ=(YEARLY|MONTHLY|WEEKLY|DAILY)(;[A-Z]+=[A-Z0-9,+-]+)*$/, "such as FREQ=WEEKLY;BYDAY=MO,TU")
  .refine(
    (rule) => !/;UNTIL=/.test(rule) || /;UNTIL=(18|19|20|21)\d{6}(T\d{6}Z?)?(;|$)/.test(rule),
    "UNTIL as in UNTIL=20270501T000000Z, of a year from 1800 to 2199",
  )
  .refine(
    (rule) => !/;BY(HOUR|MINUTE|SECOND)=/.test(rule),
    "hours open once a day: no BYHOUR, BYMINUTE or BYSECOND",
  )
  .refine((rule) => !/;BYWEEKNO=/.test(rule), "no BYWEEKNO: programs disagree on weeks that span two years")
  .refine(
    (rule) => !(/FREQ=YEARLY/.test(rule) && /;BYMONTHDAY=/.test(rule) && !/;BYMONTH=/.test(rule)),
    "a day of the month in a yearly rule needs BYMONTH: programs disagree on which months are meant",
  )
  .refine((rule) => !(/;COUNT=/.test(rule) && /;UNTIL=/.test(rule)), "COUNT or UNTIL, not both");

/**
 * Hours that come again: the first opening, the wall-clock time of closing (at or before the opening time means the
 * next day), and the RFC 5545 recurrence of the opening.
 */
export const HoursRule = z.strictObject({
  opens: LocalDateTime.regex(
    /^2\d{3}-/,
    "a first opening in 2000 or later: what began before is open all the same",
  ),
  closes: z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$|^24:00$/, "HH:MM, at most 24:00"),
  rrule: HoursRecurrence.nullable(),
  rdates: z.array(LocalDateTime).max(100).default([]),
  exdates: z.array(LocalDateTime).max(100).default([]),
});
export type HoursRule = z.infer<typeof HoursRule>;

/** As many rules that come again, and as many single dates, as laying hours out for one search may cost. */
export const mostRules = 30;
export const mostDates = 400;

const rulesIn = ({ open, away }: { open: HoursRule[]; away: HoursRule[] }): HoursRule[] => [...open, ...away];

/** An inspector's or a site's hours: open by any of `open` and by none of `away`. */
export const WeeklyHours = z
  .strictObject({
    zone: Zone,
    open: z.array(HoursRule).max(50),
    away: z.array(HoursRule).max(200).default([]),
  })
  .refine((hours) => rulesIn(hours).filter(({ rrule }) => rrule !== null).length <= mostRules, {
    path: ["open"],
    message: `at most ${mostRules} rules that come again, open and away together: join days of the same hours, as in BYDAY=MO,TU`,
  })
  .refine(
    (hours) =>
      rulesIn(hours).reduce((dates, { rdates, exdates }) => dates + rdates.length + exdates.length, 0) <=
      mostDates,
    {
      path: ["away"],
      message: `at most ${mostDates} single dates, over all rules: take out those that are past`,
    },
  );
export type WeeklyHours = z.infer<typeof WeeklyHours>;

export const Skill = z.enum(SKILLS);
export type Skill = z.infer<typeof Skill>;

export const InterestKind = z.enum(INTEREST_KINDS);
export type InterestKind = z.infer<typeof InterestKind>;

export const CarDealing = z.enum(CAR_DEALINGS);
export type CarDealing = z.infer<typeof CarDealing>;

export const DeclaredInterest = z.strictObject({
  kind: InterestKind,
  dealer: ObjectId,
  holder: z.enum(["inspector", "firm"]),
  since: Instant,
  endedAt: Instant.nullable(),
  note: z.string().max(2000).default(""),
});
export type DeclaredInterest = z.infer<typeof DeclaredInterest>;

export const VisitStage = z.enum(["before-start", "cold-start", "first-lift", "road", "hot", "second-lift"]);
export type VisitStage = z.infer<typeof VisitStage>;

export const AppointmentState = z.enum(APPOINTMENT_STATES);
export type AppointmentState = z.infer<typeof AppointmentState>;

export const AppointmentMove = z.enum([
  "request",
  "accept",
  "decline",
  "confirm",
  "reschedule",
  "cancel",
  "expire",
  "start",
  "take-to-road",
  "miss",
  "report",
]);
export type AppointmentMove = z.infer<typeof AppointmentMove>;

export const AppointmentActor = z.enum(["buyer", "inspector", "dealer", "operator", "clock"]);
export type AppointmentActor = z.infer<typeof AppointmentActor>;

export const CancellationCause = z.enum([
  "buyer-withdrew",
  "inspector-unavailable",
  "inspector-missed",
  "dealer-unavailable",
  "car-sold",
  "car-absent",
  "car-warm",
  "car-not-on-lift",
  "weather",
  "stopped-for-safety",
]);
export type CancellationCause = z.infer<typeof CancellationCause>;

/** Why an hour is not offered or a booking is refused. The figures that go with each are in `@evenhand/booking/refused-hour`. */
export const RefusedHourCode = z.enum([
  "notice",
  "off-the-step",
  "site-closed",
  "dealer-closed",
  "no-bay",
  "no-daylight",
  "car-taken",
  "car-not-cold",
  "outside-hours",
  "inspector-taken",
  "travel",
  "outside-radius",
  "lacks-skill",
  "not-independent",
  "other-currency",
  "price-changed",
]);
export type RefusedHourCode = z.infer<typeof RefusedHourCode>;

/** One hour that inspector, bay, site and daylight share, as the interface gives it. */
export const OfferBody = z.strictObject({
  id: z.string(),
  inspector: ObjectId,
  start: Instant,
  end: Instant,
  bays: z.array(z.strictObject({ car: ObjectId, bay: ObjectId, start: Instant, end: Instant })),
  travel: z.strictObject({ outMeters: z.number(), outMinutes: z.int(), backMinutes: z.int() }),
  cost: z.strictObject({ visit: Money, travel: Money, site: Money, total: Money }),
});
export type OfferBody = z.infer<typeof OfferBody>;

/** An item of a brief, with what the sheet says it takes. */
export const BriefItem = z.strictObject({
  item: ItemId,
  /** Asked by the depth of the visit, not chosen beside it. */
  core: z.boolean(),
  minutes: z.number().positive(),
  needs: z.array(Need),
  /** These positions alone, where the depth of the visit takes no more of the item. */
  positions: z.array(PositionId).min(1).optional(),
});
export type BriefItem = z.infer<typeof BriefItem>;
