import type { StateRow, StateTable } from "@evenhand/case/state-table";
import {
  AppointmentActor,
  AppointmentMove,
  AppointmentState,
  type CancellationCause,
} from "@evenhand/shared/booking";

/** What must hold before a move; each is judged in `conditions.ts`. */
export type ConditionCode =
  | "hold-running"
  | "deadline-passed"
  | "answer-in-time"
  | "before-start"
  | "near-start"
  | "before-end"
  | "past-grace"
  | "brief-complete"
  | "terms-acknowledged"
  | "payment-authorized"
  | "hour-free"
  | "new-hour"
  | "declared"
  | "independent"
  | "access-agreed"
  | "cause"
  | "road-cleared"
  | "report-sealed";

export type Transition = StateRow<AppointmentState, AppointmentMove, AppointmentActor> & {
  readonly conditions: readonly ConditionCode[];
};

/** States in which an appointment takes the inspector's, the bay's and the car's time. */
export const LIVE_STATES: readonly AppointmentState[] = [
  "held",
  "requested",
  "accepted",
  "confirmed",
  "under-way",
];

/** The table of states. At most one row for a state, a move and an actor. */
export const TRANSITIONS: readonly Transition[] = [
  {
    move: "request",
    from: ["held"],
    to: "requested",
    actors: ["buyer"],
    conditions: [
      "hold-running",
      "before-start",
      "brief-complete",
      "terms-acknowledged",
      "payment-authorized",
      "hour-free",
    ],
  },
  {
    move: "accept",
    from: ["requested"],
    to: "accepted",
    actors: ["inspector"],
    conditions: ["answer-in-time", "before-start", "declared", "independent", "hour-free"],
  },
  {
    move: "decline",
    from: ["requested"],
    to: "declined",
    actors: ["inspector"],
    conditions: ["before-start"],
  },
  // A dealer declines an hour, and says why; whom the buyer sends is not theirs to say.
  {
    move: "decline",
    from: ["accepted"],
    to: "declined",
    actors: ["dealer"],
    conditions: ["before-start", "cause"],
  },
  {
    move: "confirm",
    from: ["accepted"],
    to: "confirmed",
    actors: ["dealer"],
    conditions: ["answer-in-time", "before-start", "access-agreed", "hour-free"],
  },
  {
    move: "reschedule",
    from: ["requested", "accepted", "confirmed"],
    to: "requested",
    actors: ["buyer"],
    conditions: ["before-start", "new-hour", "hour-free"],
  },
  {
    move: "cancel",
    from: ["held", "requested", "accepted", "confirmed"],
    to: "cancelled",
    actors: ["buyer"],
    conditions: ["cause"],
  },
  {
    move: "cancel",
    from: ["accepted", "confirmed"],
    to: "cancelled",
    actors: ["dealer"],
    conditions: ["cause"],
  },
  {
    move: "cancel",
    from: ["accepted", "confirmed", "under-way"],
    to: "cancelled",
    actors: ["inspector"],
    conditions: ["cause"],
  },
  { move: "cancel", from: LIVE_STATES, to: "cancelled", actors: ["operator"], conditions: ["cause"] },
  {
    move: "expire",
    from: ["held", "requested", "accepted"],
    to: "expired",
    actors: ["clock"],
    conditions: ["deadline-passed"],
  },
  {
    move: "start",
    from: ["confirmed"],
    to: "under-way",
    actors: ["inspector"],
    conditions: ["near-start", "before-end"],
  },
  {
    move: "take-to-road",
    from: ["under-way"],
    to: "under-way",
    actors: ["inspector"],
    conditions: ["road-cleared"],
  },
  {
    move: "miss",
    from: ["confirmed"],
    to: "missed",
    actors: ["buyer", "dealer", "operator", "clock"],
    conditions: ["past-grace"],
  },
  {
    move: "report",
    from: ["under-way"],
    to: "reported",
    actors: ["inspector"],
    conditions: ["report-sealed"],
  },
];

export type CauseRule = {
  readonly cause: CancellationCause;
  readonly actors: readonly AppointmentActor[];
  readonly states: readonly AppointmentState[];
  /** Can only be known with the car in front of one: from shortly before the start. */
  readonly atTheVisit: boolean;
};

const FOUND_AT_THE_VISIT = {
  actors: ["inspector", "operator"],
  states: ["confirmed", "under-way"],
  atTheVisit: true,
} as const;

/** Who may cancel (a dealer also decline) for which cause, and when. */
export const CAUSES: readonly CauseRule[] = [
  {
    cause: "buyer-withdrew",
    actors: ["buyer", "operator"],
    states: ["held", "requested", "accepted", "confirmed"],
    atTheVisit: false,
  },
  {
    cause: "inspector-unavailable",
    actors: ["inspector", "operator"],
    states: ["accepted", "confirmed"],
    atTheVisit: false,
  },
  { cause: "inspector-missed", actors: ["operator"], states: ["confirmed", "under-way"], atTheVisit: true },
  {
    cause: "dealer-unavailable",
    actors: ["dealer", "operator"],
    states: ["accepted", "confirmed"],
    atTheVisit: false,
  },
  {
    cause: "car-sold",
    actors: ["dealer", "inspector", "operator"],
    states: ["accepted", "confirmed"],
    atTheVisit: false,
  },
  { cause: "car-absent", ...FOUND_AT_THE_VISIT },
  { cause: "car-warm", ...FOUND_AT_THE_VISIT },
  { cause: "car-not-on-lift", ...FOUND_AT_THE_VISIT },
  {
    cause: "weather",
    actors: ["inspector", "operator"],
    states: ["confirmed", "under-way"],
    atTheVisit: false,
  },
  { cause: "stopped-for-safety", actors: ["inspector", "operator"], states: ["under-way"], atTheVisit: true },
];

/** The table with what it is made of; a row's conditions are judged in `conditions.ts`. */
export const APPOINTMENT_STATES: StateTable<AppointmentState, AppointmentMove, AppointmentActor, Transition> =
  {
    states: AppointmentState.options,
    moves: AppointmentMove.options,
    actors: AppointmentActor.options,
    first: ["held"],
    rows: TRANSITIONS,
  };
