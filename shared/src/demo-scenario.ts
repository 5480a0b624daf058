import { z } from "zod";
import { CancellationCause } from "./booking.ts";
import { CostTable } from "./cost-table.ts";
import { PictureMarks } from "./evidence.ts";
import { Instant, ItemId, LocalDate, LocalId, Money, PositionId } from "./identifier.ts";
import { BookingAcceptance } from "./http/booking.ts";
import { InspectorTime } from "./http/calendars.ts";
import { CarrierPaper, HandOverReportBody, HandOverTerms } from "./http/hand-overs.ts";
import { SiteRequest } from "./http/sites.ts";
import { ReportKind, Vehicle } from "./report.ts";
import { Evidence, SettlementMove } from "./settlement.ts";
import { Depth } from "./sheet.ts";

/** Names inside the scenario; the loader gives each its object id. */
const Key = LocalId;

export const DemoOrganization = z.strictObject({
  key: Key,
  name: z.string().min(1).max(200),
  kind: z.enum(["dealer", "inspector", "operator", "buyer"]),
  /** Town and region, as shown. */
  place: z.string().max(200),
  /** IANA zone. */
  zone: z.string().min(1).max(60),
});
export type DemoOrganization = z.infer<typeof DemoOrganization>;

export const DemoAccount = z.strictObject({
  key: Key,
  name: z.string().min(1).max(200),
  email: z.email(),
  /** Printed in demo mode, used nowhere else. */
  password: z.string().min(12).max(200),
  memberships: z.array(z.strictObject({ organization: Key, role: z.enum(["admin", "member"]) })).min(1),
});
export type DemoAccount = z.infer<typeof DemoAccount>;

export const DemoVehicle = z.strictObject({
  key: Key,
  /** Organization of kind `dealer`, and the account that entered the car. */
  dealer: Key,
  by: Key,
  vehicle: Vehicle,
  listed: z.boolean(),
  asking: Money,
  /** What stands under the car in the list, in the dealer's words. */
  words: z.string().max(400),
});
export type DemoVehicle = z.infer<typeof DemoVehicle>;

/** A report in `file`, beside the scenario: sealed, or still a draft. An inspection belongs to an order, or to a visit that names it. */
export const DemoReport = z.strictObject({
  key: Key,
  vehicle: Key,
  kind: ReportKind,
  organization: Key,
  by: Key,
  file: z.string().regex(/^reports\/[a-z0-9-]+\.json$/, "a path such as reports/statement.json"),
  state: z.enum(["draft", "sealed"]),
  sealedAt: Instant.optional(),
  order: Key.optional(),
});
export type DemoReport = z.infer<typeof DemoReport>;

const Degrees = z.number().min(-180).max(180);

/**
 * A photograph of a report, drawn and kept beside the scenario, with what its camera would have written: taken so many `minutes` after
 * the visit began, and `changed` so many after that.
 */
export const DemoPicture = z.strictObject({
  report: Key,
  file: z.string().regex(/^pictures\/[a-z0-9-]+\.jpg$/, "a path such as pictures/sill.jpg"),
  filename: z.string().regex(/^[A-Z0-9_]+\.jpg$/),
  item: ItemId.or(z.literal("")),
  position: PositionId,
  caption: z.string().min(1).max(200),
  minutes: z.int(),
  changed: z.int().positive().optional(),
  camera: z.tuple([z.string(), z.string()]),
  place: z.strictObject({ latitude: Degrees, longitude: Degrees }),
  marks: PictureMarks,
});
export type DemoPicture = z.infer<typeof DemoPicture>;

/** A buyer's order for an inspection; it freezes the sealed statement it names. */
export const DemoOrder = z.strictObject({
  key: Key,
  vehicle: Key,
  /** Account of the buyer; organization of the inspector. */
  buyer: Key,
  inspector: Key,
  statement: Key,
  orderedAt: Instant,
  /** Present from `accepted` on. */
  acceptance: z
    .strictObject({
      by: Key,
      at: Instant,
      independent: z.literal(true),
      interests: z.array(z.string().min(1).max(200)),
    })
    .optional(),
  state: z.enum(["ordered", "accepted", "reported"]),
});
export type DemoOrder = z.infer<typeof DemoOrder>;

/** A dealer's yard; it is entered before anything else happens. */
export const DemoSite = z.strictObject({
  key: Key,
  dealer: Key,
  by: Key,
  site: SiteRequest.omit({ organization: true }),
});
export type DemoSite = z.infer<typeof DemoSite>;

/** An inspector's hours. Without `admitted` the operator has still to decide. */
export const DemoCalendar = z.strictObject({
  key: Key,
  firm: Key,
  by: Key,
  account: Key,
  name: z.string().min(1).max(200),
  time: InspectorTime,
  admitted: z.strictObject({ by: Key, reason: z.string().min(1).max(2000) }).optional(),
});
export type DemoCalendar = z.infer<typeof DemoCalendar>;

const HoursAgo = z.number().positive();
const VisitMove = z.discriminatedUnion("move", [
  z.strictObject({
    move: z.literal("accept"),
    by: Key,
    hoursAgo: HoursAgo,
    interests: BookingAcceptance.shape.interests,
  }),
  z.strictObject({ move: z.literal("confirm"), by: Key, hoursAgo: HoursAgo }),
  z.strictObject({
    move: z.literal("cancel"),
    by: Key,
    hoursAgo: HoursAgo,
    cause: CancellationCause,
    note: z.string().min(1).max(1000),
  }),
]);
export type DemoVisitMove = z.infer<typeof VisitMove>;

/**
 * A visit booked by the hour, dated from the day the demo is loaded: on the first of these days that has a free hour. `begun` by this
 * account at that hour; the draft that belongs to it is written then.
 */
export const DemoVisit = z.strictObject({
  key: Key,
  vehicle: Key,
  buyer: Key,
  calendar: Key,
  depth: Depth,
  /** Days from today, tried one after the other. */
  days: z.array(z.int().min(-30).max(60)).min(1),
  bookedHoursAgo: HoursAgo,
  moves: z.array(VisitMove),
  begun: z.strictObject({ by: Key, report: Key }).optional(),
});
export type DemoVisit = z.infer<typeof DemoVisit>;

/** A question that waits for its answer. */
export const DemoQuestion = z.strictObject({
  vehicle: Key,
  by: Key,
  hoursAgo: HoursAgo,
  item: ItemId,
  position: PositionId.default(""),
  text: z.string().min(1).max(2000),
});
export type DemoQuestion = z.infer<typeof DemoQuestion>;

/** A complaint about a car that nobody has read yet. */
export const DemoComplaint = z.strictObject({
  vehicle: Key,
  by: Key,
  hoursAgo: HoursAgo,
  text: z.string().min(1).max(2000),
});
export type DemoComplaint = z.infer<typeof DemoComplaint>;

/** Sealing the order's inspection makes it. */
export const DemoComparison = z.strictObject({ key: Key, order: Key, a: Key, b: Key });
export type DemoComparison = z.infer<typeof DemoComparison>;

/** An entry is named by what it is about, never by its index: every entry of this item and position, or only the fault named. */
export const DemoEntry = z.strictObject({
  item: ItemId,
  position: PositionId.default(""),
  fault: LocalId.optional(),
});
export type DemoEntry = z.infer<typeof DemoEntry>;

/** When something happens: told with the story, or so many hours before the demo is loaded. */
export const DemoWhen = z.union([Instant, z.strictObject({ hoursAgo: HoursAgo })]);
export type DemoWhen = z.infer<typeof DemoWhen>;

const Words = z.string().min(1).max(2000);
const DemoSettling = z.strictObject({
  by: Key,
  at: DemoWhen,
  move: SettlementMove.exclude(["uphold", "clear", "lapse"]),
  words: Words.optional(),
  evidence: z.array(Evidence).optional(),
  price: Money.optional(),
  remedy: z.enum(["repair", "part", "document"]).optional(),
});
export type DemoSettling = z.infer<typeof DemoSettling>;

/** One release is one item laid before the dealer, and what was done about it since, the first first. */
export const DemoRelease = z.strictObject({
  key: Key,
  comparison: Key,
  by: Key,
  entry: DemoEntry,
  releasedAt: DemoWhen,
  moves: z.array(DemoSettling),
});
export type DemoRelease = z.infer<typeof DemoRelease>;

/**
 * The buyer's summary of a comparison and what the buyer decided. `acknowledgement` is the sentence in which the buyer
 * answers for each open matter; the loader repeats it for every one of them, with the matter's name in place of `{matter}`.
 */
export const DemoSummary = z.strictObject({
  key: Key,
  comparison: Key,
  by: Key,
  createdAt: Instant,
  decision: z
    .strictObject({
      decision: z.enum(["approve", "counter", "decline"]),
      at: Instant,
      acknowledgement: z.string().min(1).max(400).optional(),
      price: Money.optional(),
      conditions: z.string().max(2000).optional(),
    })
    .optional(),
});
export type DemoSummary = z.infer<typeof DemoSummary>;

/** A bought car on its way: the carrier the buyer invited, and the two reports signed by its link, in their order. */
export const DemoHandOver = z.strictObject({
  key: Key,
  vehicle: Key,
  by: Key,
  arrangedAt: Instant,
  carrier: z.string().min(1).max(200),
  terms: HandOverTerms,
  reports: z
    .array(
      z.strictObject({
        report: HandOverReportBody,
        /** What the driver photographed first; an empty item is the whole car. */
        pictures: z.array(DemoPicture.pick({ file: true, item: true, position: true })),
        paper: CarrierPaper,
        driver: z.string().min(1).max(200),
        other: z.string().min(1).max(200),
      }),
    )
    .max(2),
  claim: z.strictObject({ at: Instant, note: Words }).optional(),
});
export type DemoHandOver = z.infer<typeof DemoHandOver>;

/**
 * An invented world. What happened is told up to the end of `told`, and moved by whole weeks so that this day is within a week of the
 * day the demo is loaded; visits, questions and complaints count from that day itself.
 */
export const DemoScenario = z.strictObject({
  format: z.literal("evenhand-demo-scenario"),
  version: z.literal(1),
  /** Raised when the loaded data would change, so that an older demo database is seen to be older. */
  revision: z.int().positive(),
  notice: z.string().min(1),
  told: LocalDate,
  organizations: z.array(DemoOrganization).min(1),
  accounts: z.array(DemoAccount).min(1),
  vehicles: z.array(DemoVehicle).min(1),
  reports: z.array(DemoReport),
  pictures: z.array(DemoPicture),
  orders: z.array(DemoOrder),
  comparisons: z.array(DemoComparison),
  releases: z.array(DemoRelease),
  summaries: z.array(DemoSummary),
  handOvers: z.array(DemoHandOver),
  sites: z.array(DemoSite),
  calendars: z.array(DemoCalendar),
  visits: z.array(DemoVisit),
  questions: z.array(DemoQuestion),
  complaints: z.array(DemoComplaint),
  /** Costs of the buyer's summaries. */
  costTable: CostTable,
  /** The comparison the demo prints, read as this account. */
  mainCase: z.strictObject({ comparison: Key, viewer: Key }),
});
export type DemoScenario = z.infer<typeof DemoScenario>;
