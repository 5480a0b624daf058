import { z } from "zod";
import {
  AppointmentActor,
  AppointmentMove,
  AppointmentState,
  BriefItem,
  CancellationCause,
  CarDealing,
  InterestKind,
  OfferBody,
  Place,
  Skill,
  VisitStage,
} from "../booking.ts";
import { Currency } from "../currency.ts";
import { Instant, ItemId, LocalDate, Money, ObjectId } from "../identifier.ts";
import { nameOf } from "../names.ts";
import { Depth } from "../sheet.ts";
import { InterestSeen, Stretch } from "./calendars.ts";
import { CreatedDraft, Named, pageOf, PageQuery, Revision, type Contract } from "./paging.ts";
import { DAMAGE_BEARERS } from "../terms.ts";

/* ---- what is to be looked at ---- */

/** Half a day is what most buyers pay for. */
const BriefDepth = Depth.default("half-day");
/** How deep it is looked, and items chosen beside what that depth asks. */
export const BriefRequest = z.strictObject({ depth: BriefDepth, items: z.array(ItemId).max(400) });
export type BriefRequest = z.infer<typeof BriefRequest>;

/** Minutes in all and by need; raising the car on the lift is not in them. */
export const BriefTotals = z.strictObject({
  minutes: z.number(),
  coreMinutes: z.number(),
  chosenMinutes: z.number(),
  byNeed: z.record(z.string(), z.number()),
});
export type BriefTotals = z.infer<typeof BriefTotals>;

const PlanProblem = z.looseObject({ code: z.string(), car: ObjectId.nullable() });
export const VisitSegment = z.strictObject({
  car: ObjectId,
  stage: VisitStage,
  /** Minutes from the start of the visit. */
  from: z.number(),
  to: z.number(),
  lift: z.boolean(),
  daylight: z.boolean(),
  items: z.array(ItemId),
});
export type VisitSegment = z.infer<typeof VisitSegment>;
export const VisitPlan = z.strictObject({
  minutes: z.number(),
  segments: z.array(VisitSegment),
  /** Stays on the lift, minutes from the start. */
  lifts: z.array(
    z.strictObject({
      car: ObjectId,
      spell: z.union([z.literal(1), z.literal(2)]),
      from: z.number(),
      to: z.number(),
    }),
  ),
  /** Items the dealer must allow first. */
  toAllow: z.array(z.strictObject({ car: ObjectId, item: ItemId })),
});
export type VisitPlan = z.infer<typeof VisitPlan>;

/** `revision: 0` before the buyer has chosen anything: half a day, with nothing added. The first `PUT` matches `"0"`. */
export const BriefSeen = z.strictObject({
  revision: z.int().nonnegative(),
  vehicle: ObjectId,
  depth: Depth,
  items: z.array(BriefItem),
  totals: BriefTotals,
  /** The order of the visit, or what keeps it from being planned. */
  plan: VisitPlan.nullable(),
  problems: z.array(PlanProblem),
  /** Items of the sheet that apply to this car and are not in the brief. */
  further: z.array(BriefItem),
});
export type BriefSeen = z.infer<typeof BriefSeen>;

/* ---- hours ---- */

const Minutes = z.number();
/** A conflict of interest, as an hour or an acceptance is refused for it. */
export const ConflictBody = z.discriminatedUnion("code", [
  z.strictObject({
    code: z.literal("interest-in-dealer"),
    kind: InterestKind,
    holder: z.enum(["inspector", "firm"]),
  }),
  z.strictObject({ code: z.literal("dealt-with-car"), dealing: CarDealing, car: ObjectId }),
]);
/** Why an hour is not offered, with what would work. Instants are UTC, lengths are minutes, distances meters. */
export const RefusedHourBody = z.discriminatedUnion("code", [
  z.strictObject({ code: z.literal("notice"), earliest: Instant }),
  z.strictObject({ code: z.literal("off-the-step"), earlier: Instant, later: Instant }),
  z.strictObject({ code: z.literal("site-closed"), nearest: Stretch.nullable() }),
  z.strictObject({ code: z.literal("dealer-closed"), closure: Stretch }),
  z.strictObject({
    code: z.literal("no-bay"),
    car: ObjectId,
    spell: z.union([z.literal(1), z.literal(2)]),
    needed: Stretch,
    bays: z.int(),
  }),
  z.strictObject({
    code: z.literal("no-daylight"),
    car: ObjectId,
    stage: VisitStage,
    needed: Stretch,
    nearest: Stretch.nullable(),
  }),
  z.strictObject({ code: z.literal("car-taken"), car: ObjectId, taken: Stretch }),
  z.strictObject({ code: z.literal("car-not-cold"), car: ObjectId, taken: Stretch, soak: Minutes }),
  z.strictObject({ code: z.literal("outside-hours"), away: Stretch, nearest: Stretch.nullable() }),
  z.strictObject({ code: z.literal("inspector-taken"), taken: Stretch }),
  z.strictObject({
    code: z.literal("travel"),
    direction: z.enum(["before", "after"]),
    needed: Minutes,
    available: Minutes,
  }),
  z.strictObject({ code: z.literal("outside-radius"), distance: z.number(), radius: z.number() }),
  z.strictObject({ code: z.literal("lacks-skill"), skills: z.array(Skill) }),
  z.strictObject({ code: z.literal("not-independent"), conflicts: z.array(ConflictBody) }),
  z.strictObject({ code: z.literal("other-currency"), currency: z.string(), wanted: z.string() }),
  z.strictObject({ code: z.literal("price-changed"), offered: z.int(), total: z.int() }),
]);
export type RefusedHourBody = z.infer<typeof RefusedHourBody>;

/** How much of the inspector's visits of the last year were at this dealer; `share: null` where there was no visit at all. */
export const ShareOfWork = z.strictObject({
  atDealer: z.int(),
  all: z.int(),
  share: z.number().nullable(),
});
export type ShareOfWork = z.infer<typeof ShareOfWork>;

/** An inspector as a buyer chooses among them. */
export const OfferingInspector = z.strictObject({
  id: ObjectId,
  name: z.string(),
  firm: Named,
  skills: z.array(Skill),
  shareOfWork: ShareOfWork,
  /** Interests in this dealer that ended more than a year ago. */
  past: z.array(InterestSeen),
});
export type OfferingInspector = z.infer<typeof OfferingInspector>;

/** Comma-separated ids. */
const Ids = z
  .string()
  .max(1000)
  .transform((text) => text.split(",").filter((id) => id !== ""))
  .pipe(z.array(ObjectId).max(5));
export const OfferQuery = z.strictObject({
  /** First and last date at the site, both in it; at most 62 days. Without them the next 30 days. */
  from: LocalDate.optional(),
  until: LocalDate.optional(),
  /** Further cars at the same site, for one visit. */
  with: Ids.optional(),
  inspector: ObjectId.optional(),
  /** Comma-separated skills the inspector must have. */
  skills: z
    .string()
    .max(200)
    .transform((text) => text.split(",").filter((one) => one !== ""))
    .pipe(z.array(Skill))
    .optional(),
  /** Without it the site's own. */
  currency: Currency.optional(),
  /** For moving this appointment: its own time counts as free, and only its inspector is asked. */
  moving: ObjectId.optional(),
  after: z.string().min(1).max(300).optional(),
  limit: z.coerce.number().int().min(1).max(100).default(25),
});
export type OfferQuery = z.infer<typeof OfferQuery>;

/** The terms under which a visit is booked: shares in basis points, notice in minutes. */
const NoticeBand = z.strictObject({ atLeast: z.int().min(0), share: z.int().min(0).max(10_000) });
export const BookingTerms = z.strictObject({
  version: z.string().min(1).max(60),
  buyerWithdraws: z.array(NoticeBand).min(1).max(10),
  dealerFails: z.array(NoticeBand).min(1).max(10),
  weatherTravel: z.int().min(0).max(10_000),
  safetyLeast: z.int().min(0).max(10_000),
  missedSite: z.int().min(0).max(10_000),
});
export type BookingTerms = z.infer<typeof BookingTerms>;
export const BookingTermsSeen = z.strictObject({ revision: z.int().nonnegative(), terms: BookingTerms });
export type BookingTermsSeen = z.infer<typeof BookingTermsSeen>;

export const Offers = z.strictObject({
  zone: z.string(),
  site: z.strictObject({ id: ObjectId, name: z.string(), address: z.string(), place: Place }),
  dealer: Named,
  plan: VisitPlan,
  /** By total cost, then time. */
  offers: z.array(OfferBody),
  /** Everybody named in the offers. */
  inspectors: z.array(OfferingInspector),
  next: z.string().nullable(),
});
export type Offers = z.infer<typeof Offers>;

export const DayQuery = OfferQuery.pick({
  with: true,
  skills: true,
  currency: true,
  moving: true,
  inspector: true,
}).extend({
  date: LocalDate,
});
export type DayQuery = z.infer<typeof DayQuery>;
/** Every start of one day: who is offered, and for the others why not. */
export const DayExplained = z.strictObject({
  zone: z.string(),
  day: Stretch,
  hours: z.array(
    z.strictObject({
      start: Instant,
      offeredBy: z.array(ObjectId),
      site: z.array(RefusedHourBody),
      inspectors: z.array(z.strictObject({ inspector: ObjectId, reasons: z.array(RefusedHourBody) })),
    }),
  ),
  inspectors: z.array(z.strictObject({ id: ObjectId, name: z.string(), firm: Named })),
});
export type DayExplained = z.infer<typeof DayExplained>;

/* ---- appointments ---- */

/** What of an offer is booked. */
export const ChosenOffer = OfferBody.pick({ inspector: true, start: true }).extend({
  bays: z.array(z.strictObject({ bay: ObjectId })).max(20),
  /** The total as it was shown. */
  total: Money,
});
export type ChosenOffer = z.infer<typeof ChosenOffer>;

/** Holds the hour for ten minutes. The first car's brief and the others' are taken as they stand. */
export const HoldRequest = z.strictObject({
  vehicles: z.array(ObjectId).min(1).max(6),
  offer: ChosenOffer,
});
export type HoldRequest = z.infer<typeof HoldRequest>;
/** `terms`: the version that was shown. Nothing of a card or account is ever sent here: paying happens at the provider. */
export const BookingRequest = z.strictObject({ terms: z.string().min(1).max(60) });
export type BookingRequest = z.infer<typeof BookingRequest>;

/** The inspector declares independence of the dealer and the cars, and anything there is to declare, before accepting. */
export const BookingAcceptance = z.strictObject({
  independent: z.literal(true),
  interests: z
    .array(
      z.strictObject({
        kind: InterestKind,
        holder: z.enum(["inspector", "firm"]),
        since: Instant,
        endedAt: Instant.nullable().default(null),
        note: z.string().trim().max(2000).default(""),
      }),
    )
    .max(20)
    .default([]),
  dealings: z
    .array(
      z.strictObject({
        vehicle: ObjectId,
        dealing: CarDealing,
        note: z.string().trim().max(2000).default(""),
      }),
    )
    .max(20)
    .default([]),
});
export type BookingAcceptance = z.infer<typeof BookingAcceptance>;

const Note = z.string().trim().min(1).max(1000);
/** By the inspector without a cause; a dealer declines an hour, and says why about the car or the site. */
export const BookingRefusal = z.strictObject({ cause: CancellationCause.optional(), note: Note.optional() });
export type BookingRefusal = z.infer<typeof BookingRefusal>;
/** The dealer gives access at this hour; every item that must be allowed is answered. */
export const BookingConfirmation = z.strictObject({
  access: z.literal(true),
  permissions: z
    .array(z.strictObject({ car: ObjectId, item: ItemId, allowed: z.boolean() }))
    .max(400)
    .default([]),
  /** Until when the car is kept from sale; without it, it may be sold at any time, and the page says so. */
  heldFromSaleUntil: Instant.optional(),
});
export type BookingConfirmation = z.infer<typeof BookingConfirmation>;
export const Rescheduling = z.strictObject({ offer: ChosenOffer });
export type Rescheduling = z.infer<typeof Rescheduling>;
export const BookingCancellation = z.strictObject({
  cause: CancellationCause,
  note: Note.optional(),
  /** Of the inspector: how far the visit had come. */
  work: z
    .strictObject({ setOut: z.boolean(), minutesDone: z.int().min(0).max(10_000).default(0) })
    .optional(),
});
export type BookingCancellation = z.infer<typeof BookingCancellation>;

const Paper = z.strictObject({
  reference: nameOf(200),
  validUntil: Instant.nullable(),
});
/** What must be there before the car is driven. It never says that the drive is lawful or the car roadworthy. */
export const RoadClearance = z.strictObject({
  /** Of several cars, the one to be driven; without it all of them. */
  vehicle: ObjectId.optional(),
  consent: z.strictObject({ by: nameOf(200), signedAt: Instant }).nullable(),
  insurance: Paper.nullable(),
  plates: Paper.nullable(),
  damageBorneBy: z.enum(DAMAGE_BEARERS).nullable(),
});
export type RoadClearance = z.infer<typeof RoadClearance>;
export const Nothing = z.strictObject({});

/** Without a depth it stays as deep as it is. */
export const BriefProposal = z.strictObject({
  vehicle: ObjectId,
  depth: Depth.optional(),
  items: z.array(ItemId).max(400),
});
export type BriefProposal = z.infer<typeof BriefProposal>;
/** `agree` and `refuse` by the inspector, `withdraw` by the buyer. */
export const BriefAnswer = z.strictObject({
  vehicle: ObjectId,
  answer: z.enum(["agree", "refuse", "withdraw"]),
});
export type BriefAnswer = z.infer<typeof BriefAnswer>;

export const SettlementBody = z.strictObject({
  currency: z.string(),
  buyerPays: z.int(),
  buyerRefunded: z.int(),
  dealerOwes: z.int(),
  inspectorOwes: z.int(),
  inspectorGets: z.int(),
  siteGets: z.int(),
});
export type SettlementBody = z.infer<typeof SettlementBody>;

export const PaymentKind = z.enum(["authorized", "captured", "released", "refunded", "paid-out", "claimed"]);
export type PaymentKind = z.infer<typeof PaymentKind>;
export const PaymentEntry = z.strictObject({
  id: ObjectId,
  kind: PaymentKind,
  party: z.enum(["buyer", "dealer", "inspector", "site"]),
  amount: Money,
  at: Instant,
});
export type PaymentEntry = z.infer<typeof PaymentEntry>;

/** What withdrawing would cost now, worked out by the terms of this appointment. */
export const CancellingNow = z.strictObject({ cause: CancellationCause, settlement: SettlementBody });

export const AppointmentRow = z.strictObject({
  id: ObjectId,
  revision: Revision,
  state: AppointmentState,
  start: Instant,
  end: Instant,
  zone: z.string(),
  /** End of the hold, or when the next answer is due. */
  deadline: Instant.nullable(),
  site: z.strictObject({ id: ObjectId, name: z.string(), address: z.string(), place: Place }),
  dealer: Named,
  /** To the buyer always, to the inspector once accepted, to the dealer never. */
  buyer: Named.nullable(),
  inspector: z.strictObject({ id: ObjectId, name: z.string(), firm: Named }),
  cars: z.array(
    z.strictObject({
      id: ObjectId,
      make: z.string(),
      model: z.string(),
      modelYear: z.int(),
      identification: z.string(),
    }),
  ),
});
export type AppointmentRow = z.infer<typeof AppointmentRow>;

export const AppointmentSeen = AppointmentRow.extend({
  /** As whom the person sees it. */
  as: z.enum(["buyer", "inspector", "dealer", "operator"]),
  /** What this person can do now. */
  moves: z.array(AppointmentMove),
  /** Causes this person may name now on cancelling or declining, each with what it would settle. */
  cancelling: z.array(CancellingNow),
  /** One a car: its order and statement once requested, its brief (not to the dealer). */
  visits: z.array(
    z.strictObject({
      vehicle: ObjectId,
      order: ObjectId.nullable(),
      statement: z.strictObject({ id: ObjectId, version: z.int().positive() }).nullable(),
      brief: z
        .strictObject({
          version: z.int(),
          items: z.array(BriefItem),
          totals: BriefTotals,
          proposed: z.strictObject({ items: z.array(BriefItem), at: Instant }).nullable(),
          /** Until when it can be changed. */
          until: Instant,
        })
        .nullable(),
    }),
  ),
  plan: VisitPlan,
  bays: z.array(z.strictObject({ car: ObjectId, bay: Named, start: Instant, end: Instant })),
  travel: z.strictObject({ outMeters: z.number(), outMinutes: z.int(), backMinutes: z.int() }).nullable(),
  /** Not to the dealer. */
  cost: z.strictObject({ visit: Money, travel: Money, site: Money, total: Money }).nullable(),
  terms: BookingTerms,
  /** Said by the dealer on confirming; `null`: the car may be sold at any time. */
  heldFromSaleUntil: Instant.nullable(),
  permissions: z.array(z.strictObject({ car: ObjectId, item: ItemId, allowed: z.boolean() })),
  /** What the inspector is beholden to: to buyer and inspector. */
  independence: z
    .strictObject({
      declaredAt: Instant.nullable(),
      shareOfWork: ShareOfWork,
      interests: z.array(InterestSeen),
    })
    .nullable(),
  /** What each party paid or got: the buyer's to the buyer, and so on. */
  payments: z.array(PaymentEntry),
  settlement: SettlementBody.nullable(),
  road: RoadClearance.nullable(),
  history: z.array(
    z.strictObject({
      at: Instant,
      actor: AppointmentActor,
      move: z.union([AppointmentMove, z.literal("hold")]),
      to: AppointmentState,
      start: Instant,
      end: Instant,
      cause: CancellationCause.nullable(),
      note: z.string().nullable(),
    }),
  ),
});
export type AppointmentSeen = z.infer<typeof AppointmentSeen>;

export const AppointmentQuery = PageQuery.extend({
  state: AppointmentState.optional(),
  vehicle: ObjectId.optional(),
  /** That end after, and start before. */
  from: Instant.optional(),
  until: Instant.optional(),
});
export type AppointmentQuery = z.infer<typeof AppointmentQuery>;

/** For the operator: how many stand where. */
export const AppointmentCounts = z.strictObject({
  counts: z.array(z.strictObject({ state: AppointmentState, count: z.int() })),
});
export type AppointmentCounts = z.infer<typeof AppointmentCounts>;

/** Interests declared one by one, or what is permitted for every item. */
const listBytes = 128 * 1024;

export const bookingContracts = {
  "brief.get": { status: 200, answer: BriefSeen },
  "brief.put": { body: BriefRequest, status: 200, answer: BriefSeen },
  "offers.list": { query: OfferQuery, costly: true, status: 200, answer: Offers },
  "offers.explain": { query: DayQuery, costly: true, status: 200, answer: DayExplained },
  "bookingTerms.get": { status: 200, answer: BookingTermsSeen },
  "bookingTerms.put": { body: BookingTerms, status: 200, answer: BookingTermsSeen },
  "appointments.hold": { body: HoldRequest, costly: true, status: 201, answer: CreatedDraft },
  "appointments.list": { query: AppointmentQuery, status: 200, answer: pageOf(AppointmentRow) },
  "appointments.counts": { status: 200, answer: AppointmentCounts },
  "appointments.get": { status: 200, answer: AppointmentSeen },
  "appointments.request": { body: BookingRequest, status: 201, answer: CreatedDraft },
  "appointments.accept": { body: BookingAcceptance, bodyBytes: listBytes, status: 201, answer: CreatedDraft },
  "appointments.decline": { body: BookingRefusal, status: 201, answer: CreatedDraft },
  "appointments.confirm": {
    body: BookingConfirmation,
    bodyBytes: listBytes,
    status: 201,
    answer: CreatedDraft,
  },
  "appointments.reschedule": { body: Rescheduling, status: 201, answer: CreatedDraft },
  "appointments.cancel": { body: BookingCancellation, status: 201, answer: CreatedDraft },
  "appointments.start": { body: Nothing, status: 201, answer: CreatedDraft },
  "appointments.takeToRoad": { body: RoadClearance, status: 201, answer: CreatedDraft },
  "appointments.miss": { body: Nothing, status: 201, answer: CreatedDraft },
  "appointments.report": { body: Nothing, status: 201, answer: CreatedDraft },
  "appointments.proposeBrief": { body: BriefProposal, status: 201, answer: CreatedDraft },
  "appointments.answerBrief": { body: BriefAnswer, status: 201, answer: CreatedDraft },
} as const satisfies Record<string, Contract>;
