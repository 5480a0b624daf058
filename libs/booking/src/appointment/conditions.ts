import type { AppointmentActor, CancellationCause } from "@evenhand/shared/booking";
import { type RoadFacts, type RoadShortfall, roadShortfalls } from "../before-the-road/index.ts";
import type { Conflict } from "../calendar/index.ts";
import type { WorkDone } from "../cancellation-terms/index.ts";
import type { IndependenceJudgment } from "../independence/index.ts";
import type { Interval } from "../interval/index.ts";
import type { RefusedHour } from "../refused-hour/index.ts";
import type { Appointment, AppointmentRules } from "./appointment.ts";
import { CAUSES, type ConditionCode } from "./table.ts";

/** What is known when a move is asked for. What is left out counts as not so. */
export type MoveFacts = {
  readonly briefComplete?: boolean;
  /** Version of the terms the buyer was shown and took note of. */
  readonly termsAcknowledged?: string;
  readonly paymentAuthorized?: boolean;
  /** What `canBook` says of the hour (on rescheduling: of the new one), this visit's own stretches left out. */
  readonly refusedHour?: readonly RefusedHour[];
  readonly newHour?: Interval;
  /** When the inspector declared interests for this visit. */
  readonly declaredAt?: number;
  readonly independence?: Pick<IndependenceJudgment, "mayAccept" | "conflicts">;
  /** The dealer gives access at this hour: car cold and there, lift free, what needs permission answered. */
  readonly accessAgreed?: boolean;
  /** Said by the dealer on confirming. */
  readonly heldFromSaleUntil?: number;
  readonly cause?: CancellationCause;
  readonly work?: WorkDone;
  readonly road?: RoadFacts;
  readonly reportSealed?: boolean;
};

/** A condition that does not hold, and the figure or list that says when it would. */
export type Shortfall =
  | {
      readonly code: "hold-running" | "answer-in-time" | "before-start" | "before-end";
      readonly until: number;
    }
  | { readonly code: "deadline-passed" | "near-start" | "past-grace"; readonly from: number }
  | {
      readonly code:
        "brief-complete" | "payment-authorized" | "new-hour" | "declared" | "access-agreed" | "report-sealed";
    }
  | { readonly code: "terms-acknowledged"; readonly version: string }
  | { readonly code: "hour-free"; readonly reasons: readonly RefusedHour[] }
  | { readonly code: "independent"; readonly conflicts: readonly Conflict[] }
  | { readonly code: "cause"; readonly allowed: readonly CancellationCause[] }
  | { readonly code: "road-cleared"; readonly shortfalls: readonly RoadShortfall[] };

export type Asked = {
  readonly appointment: Appointment;
  readonly actor: AppointmentActor;
  readonly now: number;
  readonly facts: MoveFacts;
  readonly rules: AppointmentRules;
};

type Condition = (asked: Asked) => Shortfall | null;

const EMPTY_ROAD: RoadFacts = {
  consent: null,
  insurance: null,
  plates: null,
  damageBorneBy: null,
  gate: [],
  doubts: [],
};

const before = (
  code: "hold-running" | "answer-in-time" | "before-start" | "before-end",
  until: (asked: Asked) => number,
): Condition => {
  return (asked) => (asked.now < until(asked) ? null : { code, until: until(asked) });
};

const from = (
  code: "deadline-passed" | "near-start" | "past-grace",
  since: (asked: Asked) => number,
): Condition => {
  return (asked) => (asked.now >= since(asked) ? null : { code, from: since(asked) });
};

type Plain =
  "brief-complete" | "payment-authorized" | "new-hour" | "declared" | "access-agreed" | "report-sealed";
const holds = (code: Plain, fact: (asked: Asked) => boolean): Condition => {
  return (asked) => (fact(asked) ? null : { code });
};

const nearStart = ({ appointment, rules }: Asked): number => appointment.hour.start - rules.earlyStart;

/** Causes this actor may name now. */
function allowedCauses(asked: Asked): CancellationCause[] {
  const atVisit = asked.now >= nearStart(asked);
  return CAUSES.filter(
    (rule) =>
      rule.actors.includes(asked.actor) &&
      rule.states.includes(asked.appointment.state) &&
      (atVisit || !rule.atTheVisit),
  ).map(({ cause }) => cause);
}

function judgeCause(asked: Asked): Shortfall | null {
  const allowed = allowedCauses(asked);
  const { cause } = asked.facts;
  return cause !== undefined && allowed.includes(cause) ? null : { code: "cause", allowed };
}

function judgeHour({ facts }: Asked): Shortfall | null {
  if (facts.refusedHour?.length === 0) return null;
  return { code: "hour-free", reasons: facts.refusedHour ?? [] };
}

function judgeRoad({ facts, now }: Asked): Shortfall | null {
  const shortfalls = roadShortfalls(facts.road ?? EMPTY_ROAD, now);
  return shortfalls.length === 0 ? null : { code: "road-cleared", shortfalls };
}

/** The declaration is for this visit: made at or after the request, not in the future. */
const isDeclared = ({ facts, appointment, now }: Asked): boolean =>
  facts.declaredAt !== undefined &&
  facts.declaredAt >= (appointment.requestedAt ?? 0) &&
  facts.declaredAt <= now;

function isNewHour({ facts, appointment, now }: Asked): boolean {
  const { newHour } = facts;
  return (
    newHour !== undefined &&
    newHour.start > now &&
    newHour.start < newHour.end &&
    newHour.start !== appointment.hour.start
  );
}

export const CONDITIONS: Readonly<Record<ConditionCode, Condition>> = {
  "hold-running": before("hold-running", ({ appointment }) => appointment.deadline ?? Infinity),
  "answer-in-time": before("answer-in-time", ({ appointment }) => appointment.deadline ?? Infinity),
  "before-start": before("before-start", ({ appointment }) => appointment.hour.start),
  "before-end": before("before-end", ({ appointment }) => appointment.hour.end),
  "deadline-passed": from(
    "deadline-passed",
    ({ appointment }) => appointment.deadline ?? appointment.hour.start,
  ),
  "near-start": from("near-start", nearStart),
  "past-grace": from("past-grace", ({ appointment, rules }) => appointment.hour.start + rules.grace),
  "brief-complete": holds("brief-complete", ({ facts }) => facts.briefComplete === true),
  "payment-authorized": holds("payment-authorized", ({ facts }) => facts.paymentAuthorized === true),
  "new-hour": holds("new-hour", isNewHour),
  declared: holds("declared", isDeclared),
  "access-agreed": holds("access-agreed", ({ facts }) => facts.accessAgreed === true),
  "report-sealed": holds("report-sealed", ({ facts }) => facts.reportSealed === true),
  "terms-acknowledged": ({ facts, appointment }) =>
    facts.termsAcknowledged === appointment.terms.version
      ? null
      : { code: "terms-acknowledged", version: appointment.terms.version },
  "hour-free": judgeHour,
  independent: ({ facts }) =>
    facts.independence?.mayAccept === true
      ? null
      : { code: "independent", conflicts: facts.independence?.conflicts ?? [] },
  cause: judgeCause,
  "road-cleared": judgeRoad,
};
