import { z } from "zod";
import { Instant, ObjectId } from "../identifier.ts";
import { Zone } from "../zone.ts";
import { DeadlineStep } from "./cases.ts";
import { pageOf, PageQuery, type Contract } from "./paging.ts";

/** What happened, as a stable code; the sentence is made from it. Never a secret, never a finding. */
export const NoticeKind = z.enum([
  "order-received",
  "order-accepted",
  "order-declined",
  "order-cancelled",
  "inspection-sealed",
  "items-released",
  "release-answered",
  "settlement-moved",
  "settlement-asked",
  "decision-made",
  "counter-answered",
  "offer-answered",
  "offer-withdrawn",
  "offer-lapsed",
  "appointment-requested",
  "appointment-accepted",
  "appointment-declined",
  "appointment-confirmed",
  "appointment-rescheduled",
  "appointment-cancelled",
  "appointment-missed",
  "appointment-expired",
  "brief-proposed",
  "brief-answered",
  "question-asked",
  "question-answered",
  "car-collected",
  "car-delivered",
  "deadline-near",
]);
export type NoticeKind = z.infer<typeof NoticeKind>;

/** What happened, as against what is due. */
export const NewsKind = NoticeKind.exclude(["deadline-near"]);
export type NewsKind = z.infer<typeof NewsKind>;

/** How somebody wants to hear of news by mail. */
export const NewsMail = z.enum(["at-once", "daily", "deadlines"]);
export type NewsMail = z.infer<typeof NewsMail>;

/** Without a zone that which was chosen stays; `null` chooses the clock of the organization joined first. */
export const NewsChoiceRequest = z.strictObject({ mail: NewsMail, zone: Zone.nullable().optional() });
export type NewsChoiceRequest = z.infer<typeof NewsChoiceRequest>;

/** How gathered news comes, and on whose clock in the morning. */
export const NewsChoice = z.strictObject({
  mail: NewsMail,
  /** `null` where it is `firmZone`. */
  zone: z.string().nullable(),
  /** Of the organization joined first; `null` for whoever is in none. */
  firmZone: z.string().nullable(),
});
export type NewsChoice = z.infer<typeof NewsChoice>;

export const Notice = z.strictObject({
  id: ObjectId,
  kind: NoticeKind,
  /**
   * The object it is about: an order, a comparison, a release, a decision, an appointment, a question or a hand-over, by kind. Of
   * `deadline-near`: what the page is about where it is done.
   */
  subject: ObjectId,
  vehicle: ObjectId,
  /** Which car that is, while the reader may see it. */
  car: z.strictObject({ make: z.string(), model: z.string(), modelYear: z.int() }).nullable(),
  createdAt: Instant,
  /** Of `deadline-near`: until when the answer is due. */
  due: Instant.nullable(),
  /** Of `deadline-near`: what is owed; `null` of the oldest, which did not keep it. */
  step: DeadlineStep.nullable(),
  readAt: Instant.nullable(),
});
export type Notice = z.infer<typeof Notice>;

/** Everything up to and with a notice is read, or one alone. */
export const NoticesRead = z.union([z.strictObject({ upTo: ObjectId }), z.strictObject({ only: ObjectId })]);
export type NoticesRead = z.infer<typeof NoticesRead>;

export const noticeContracts = {
  "notices.list": { query: PageQuery, status: 200, answer: pageOf(Notice) },
  "notices.choice": { status: 200, answer: NewsChoice },
  "notices.choose": { body: NewsChoiceRequest, status: 200, answer: NewsChoice },
  "notices.read": { body: NoticesRead, status: 204, answer: null },
} as const satisfies Record<string, Contract>;
