import { z } from "zod";
import { AppointmentState } from "../booking.ts";
import { Instant, ObjectId } from "../identifier.ts";
import { MatterId } from "../matter.ts";
import { ReportKind } from "../report.ts";
import { SettlementState } from "../settlement.ts";
import { Severity } from "../severity.ts";
import { MATTER_STATES } from "../summary.ts";
import { ComplaintState } from "./complaints.ts";
import { EvidenceOfBoth } from "./evidence.ts";
import { Named, PageQuery, type Contract } from "./paging.ts";
import { QuestionState } from "./questions.ts";

/** The way of a case, from the first question to delivery. */
export const CaseStage = z.enum(["ask", "book", "look", "read", "settle", "decide", "collect"]);
export type CaseStage = z.infer<typeof CaseStage>;

export const CaseParty = z.enum(["buyer", "dealer", "inspector"]);
export type CaseParty = z.infer<typeof CaseParty>;

/** Who can be waited for. A carrier has no account: a link signs for them. */
export const CaseAwaited = z.enum([...CaseParty.options, "carrier"]);
export type CaseAwaited = z.infer<typeof CaseAwaited>;

/** A visit to a car. Without an hour yet it is `asked-for`, or `taken-on` once an inspector has accepted it. */
export const CaseVisitState = z.enum(["asked-for", "taken-on", ...AppointmentState.options]);
export type CaseVisitState = z.infer<typeof CaseVisitState>;

/** What was decided last, and what the dealer said to a counter-offer. */
export const CaseDecision = z.enum([
  "approved",
  "declined",
  "countered",
  "countered-back",
  "counter-accepted",
  "counter-refused",
  "counter-withdrawn",
  "counter-lapsed",
]);
export type CaseDecision = z.infer<typeof CaseDecision>;

/** What can wait for somebody; where nothing has a deadline, a later one goes before. What `subject` names is said with each. */
export const CaseStep = z.enum([
  /** Nobody is booked yet, and nothing is chosen to be looked at: the car. */
  "choose-brief",
  /** Nobody is booked yet: the car. */
  "book",
  /** A question in draft: the question. */
  "send-question",
  /** A question asked: the question. */
  "answer-question",
  /** An answer in a draft of the statement: the report. */
  "publish-answer",
  /** An hour is held: the appointment. */
  "request-hour",
  /** The hour waits for the inspector: the appointment. */
  "accept-hour",
  /** A visit without an hour waits for the inspector: the order. */
  "accept-visit",
  /** The hour waits for the dealer's access: the appointment. */
  "give-access",
  /** Another brief is proposed: the appointment. */
  "answer-brief",
  /** The visit lies ahead: the appointment. */
  "inspect",
  /** The visit is under way, and its report is not in: the appointment. */
  "report-visit",
  /** A visit without an hour is taken on: the order. */
  "inspect-any-hour",
  /** Findings are being recorded: the report. */
  "seal",
  /** The comparison is there: the comparison. */
  "read",
  /** Items are laid before the dealer: the car. */
  "answer-items",
  /** The dealer contests what was laid: the car. */
  "answer-contest",
  /** The dealer offers a price, a remedy or another look: the car. */
  "answer-remedy",
  /** The dealer owes a remedy that was taken: the car. */
  "do-remedy",
  /** The dealer says that it is done: the car. */
  "check-remedy",
  /** The inspector is asked about what the dealer contests: the car. */
  "answer-dispute",
  /** The inspector revises the report: the car. */
  "revise-report",
  /** Another look is agreed: the car. */
  "book-look",
  /** Nothing waits for the dealer any more: the comparison. */
  "sum-up",
  /** A summary is not decided: the summary. */
  "decide",
  /** A counter-offer waits for the dealer: the decision. */
  "answer-counter",
  /** The dealer has countered back: the decision. */
  "answer-offer",
  /** A counter-offer was refused or withdrawn, or lapsed: the comparison. */
  "decide-again",
  /** The car is bought, and nobody is named who carries it: the case. */
  "name-carrier",
  /** Lines of the list before money moves have no answer: the case. */
  "before-money",
  /** What leaves is not signed yet: the hand-over. */
  "sign-collection",
  /** What arrives is not signed yet: the hand-over. */
  "sign-delivery",
  /** The car did not arrive as it left: the hand-over. */
  "answer-arrival",
  /** A claim is open: the hand-over. */
  "close-claim",
]);
export type CaseStep = z.infer<typeof CaseStep>;

/** Steps that have a deadline: when it is over, silence has its result. Of other steps `until` is the hour of the visit, or nothing. */
export const DeadlineStep = CaseStep.extract([
  "request-hour",
  "accept-hour",
  "give-access",
  "answer-items",
  "answer-contest",
  "answer-remedy",
  "answer-dispute",
  "revise-report",
  "book-look",
  "do-remedy",
  "check-remedy",
  "answer-counter",
  "answer-offer",
]);
export type DeadlineStep = z.infer<typeof DeadlineStep>;

/** What comes of it where a deadline passes in silence. */
export const Silence = z.enum([
  "hour-released",
  "finding-stands",
  "statement-stands",
  "settled",
  "left-open",
  "offer-lapsed",
]);
export type Silence = z.infer<typeof Silence>;

export const CaseWait = z.strictObject({
  step: CaseStep,
  of: CaseAwaited,
  /** When the answer is due, the visit's hour, or the end of the carrier's link; `null` where there is no deadline. */
  until: Instant.nullable(),
  count: z.int().positive(),
  /** Where it is done; of several the oldest. */
  subject: ObjectId,
});
export type CaseWait = z.infer<typeof CaseWait>;

/** Where a case stands, as one of its parties may know it. */
export const CaseStanding = z.strictObject({
  stage: CaseStage,
  /** The decision that stands; `null` while there is none, or since something new was found. */
  decision: CaseDecision.nullable(),
  /** Everything that waits for somebody, the person's own first, the earliest deadline first. */
  waits: z.array(CaseWait),
  /** What comes next: the first of them; `null` where nothing is open. */
  next: CaseWait.nullable(),
});
export type CaseStanding = z.infer<typeof CaseStanding>;

export const CaseCar = z.strictObject({
  id: ObjectId,
  make: z.string(),
  model: z.string(),
  modelYear: z.int(),
  identification: z.string(),
});

export const CaseRow = z.strictObject({
  id: ObjectId,
  /** As whom the person sees it. */
  as: CaseParty,
  car: CaseCar,
  /** The photograph that stands for the car, as `evidence.small` gives it; to an inspector never, who may have to be blind. */
  cover: ObjectId.nullable(),
  dealer: Named,
  /** To the buyer always, to the inspector once accepted, to the dealer never. */
  buyer: Named.nullable(),
  openedAt: Instant,
  standing: CaseStanding,
});
export type CaseRow = z.infer<typeof CaseRow>;

/** What waits for the operator. Never contents: those are read by opening, with a reason. */
export const OperatorTask = z.strictObject({
  kind: z.enum(["answer-complaint", "decide-admission"]),
  id: ObjectId,
  /** Since when it waits. */
  since: Instant,
  /** A complaint's state; the name of the firm or inspector who asks to be admitted. */
  state: ComplaintState.nullable(),
  name: z.string().nullable(),
});
export type OperatorTask = z.infer<typeof OperatorTask>;

export const OperatorDesk = z.strictObject({
  tasks: z.array(OperatorTask),
  /** How many there are in all; only the first hundred stand in `tasks`. */
  waiting: z.int(),
  /** Visits that wait for a party, each with the earliest answer due. */
  owed: z.array(
    z.strictObject({ state: AppointmentState, of: CaseParty, count: z.int(), until: Instant.nullable() }),
  ),
  /** Visits of the last thirty days that wait for nobody. */
  rest: z.array(z.strictObject({ state: AppointmentState, count: z.int() })),
});
export type OperatorDesk = z.infer<typeof OperatorDesk>;

/** A report a dealer has begun and not sealed: nobody else reads it, so it belongs to no case. */
export const UnsealedDraft = z.strictObject({
  /** The report. */
  id: ObjectId,
  kind: ReportKind,
  car: CaseCar,
  /** The newest version that is sealed and stands meanwhile; `null` where none ever was. */
  version: z.int().positive().nullable(),
  changedAt: Instant,
});
export type UnsealedDraft = z.infer<typeof UnsealedDraft>;

/** The first page: every open case, and the newest of the rest. With `after`: more of the rest. */
export const CaseHome = z.strictObject({
  /** Open cases whose next step is the person's own, by deadline. */
  yours: z.array(CaseRow),
  /** Open cases where another's step is awaited, by deadline. */
  others: z.array(CaseRow),
  /** Cases in which nothing is open, the newest first. */
  rest: z.array(CaseRow),
  /** Open cases in all. Of those of one kind of people the two hundred oldest are shown: where it is more than stand here, the rest of them are not. */
  open: z.int(),
  next: z.string().nullable(),
  /** To a dealer on the first page: reports of theirs that are not sealed, the one worked on last first, at most fifty; never one a case of `yours` leads to. */
  drafts: z.array(UnsealedDraft),
  /** How many of those there are in all. */
  drafting: z.int().nonnegative(),
  /** To an operator. */
  desk: OperatorDesk.nullable(),
});
export type CaseHome = z.infer<typeof CaseHome>;

/** What became of a matter; `answered-for` where the buyer said in approving what is to be done about it. */
export const CaseMatterState = z.enum([...MATTER_STATES, "answered-for"]);
export type CaseMatterState = z.infer<typeof CaseMatterState>;

/**
 * A matter of the case. To the buyer and the inspector one of the answer; to the dealer what the buyer laid before them comes to,
 * joined and worded from that alone.
 */
export const CaseMatter = z.strictObject({
  id: MatterId,
  comparison: ObjectId,
  /** Its place among the matters of the answer, what nobody knows after what is wrong; `null` to the dealer. */
  place: z.int().nonnegative().nullable(),
  severity: Severity,
  headline: z.string(),
  /** Nobody knows, and it could be grave. */
  unknown: z.boolean(),
  /** What to do about it, in words; `null` to the dealer, whose step is to answer. */
  next: z.string().nullable(),
  /** Lines that speak of it; to the dealer, those laid before them. */
  lines: z.int().positive(),
  /** How many of them lie before the dealer. */
  laid: z.int().nonnegative(),
  /** Of what was laid, where anything was; `null` to the inspector. */
  state: CaseMatterState.nullable(),
  /** Whose step it waits for, of what was laid, and until when; `null` where it waits for nobody. */
  owed: z.strictObject({ of: CaseParty, state: SettlementState, until: Instant.nullable() }).nullable(),
});
export type CaseMatter = z.infer<typeof CaseMatter>;

/** The parts of a case. Each leads to a page of its own. */
export const CaseParts = z.strictObject({
  questions: z.array(
    z.strictObject({
      id: ObjectId,
      item: z.string(),
      position: z.string(),
      text: z.string(),
      state: QuestionState,
      at: Instant,
    }),
  ),
  visits: z.array(
    z.strictObject({
      appointment: ObjectId.nullable(),
      order: ObjectId.nullable(),
      state: CaseVisitState,
      /** With the site's zone; `null` while there is no hour. */
      hour: z.strictObject({ start: Instant, end: Instant, zone: z.string() }).nullable(),
      until: Instant.nullable(),
      /** The inspector where one is named, else the firm. */
      inspector: z.string(),
      askedAt: Instant,
      /** The report begun or sealed, to those who may see it. */
      report: ObjectId.nullable(),
    }),
  ),
  /** Sealed inspections and, to whoever may read it, what came of comparing each. */
  inspections: z.array(
    z.strictObject({
      id: ObjectId,
      version: z.int().positive(),
      sealedAt: Instant,
      comparison: ObjectId.nullable(),
    }),
  ),
  /** Items laid before the dealer. */
  released: z.strictObject({
    /** Whose next step is the dealer's, the buyer's, the inspector's. */
    waiting: z.int(),
    withBuyer: z.int(),
    withInspector: z.int(),
    accepted: z.int(),
    findingStands: z.int(),
    statementStands: z.int(),
    settled: z.int(),
    leftOpen: z.int(),
  }),
  summaries: z.array(z.strictObject({ id: ObjectId, createdAt: Instant, decision: CaseDecision.nullable() })),
  decisions: z.array(z.strictObject({ id: ObjectId, state: CaseDecision, at: Instant })),
});
export type CaseParts = z.infer<typeof CaseParts>;

/** With its matters, worst first, of the newest inspection that may be read. */
export const CaseSeen = CaseRow.extend({
  parts: CaseParts,
  matters: z.array(CaseMatter),
  /** IANA zone of the site where the car stands, by which deadlines run; `null` where it stands at none. */
  zone: z.string().nullable(),
  /** The buyer lets what is found worse go before the dealer as soon as it is sealed; `null` to the others. */
  dealerFirst: z.boolean().nullable(),
});
export type CaseSeen = z.infer<typeof CaseSeen>;

/** Cases a part belongs to: a visit to several cars belongs to one for each. The first begun comes first. */
export const CasesOfPart = z.strictObject({
  items: z.array(CaseRow.pick({ id: true, as: true, car: true, openedAt: true })),
});
export type CasesOfPart = z.infer<typeof CasesOfPart>;

export const DealerFirst = z.strictObject({ allowed: z.boolean() });
export type DealerFirst = z.infer<typeof DealerFirst>;

export const caseContracts = {
  "cases.list": { query: PageQuery, status: 200, answer: CaseHome },
  "cases.get": { status: 200, answer: CaseSeen },
  "cases.evidence": { status: 200, answer: EvidenceOfBoth },
  "cases.ofPart": { status: 200, answer: CasesOfPart },
  "cases.letDealerFirst": { body: DealerFirst, status: 200, answer: DealerFirst },
} as const satisfies Record<string, Contract>;
