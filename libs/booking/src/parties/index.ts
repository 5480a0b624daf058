import { defineMessages } from "@evenhand/message/define-messages";
import type { AppointmentActor, AppointmentMove, AppointmentState } from "@evenhand/shared/booking";
import { TRANSITIONS } from "../appointment/index.ts";

/** As whom a person has to do with an appointment. */
export type Role = Exclude<AppointmentActor, "clock">;

/** The organizations of one person, by what they are. */
export type Membership = {
  readonly buyer: readonly string[];
  readonly inspector: readonly string[];
  readonly dealer: readonly string[];
  readonly operator: boolean;
};

/** The organizations of an appointment, and how far it has come. Epoch milliseconds; `null`: not yet. */
export type Parties = {
  readonly buyer: string;
  /** The inspection firm. */
  readonly firm: string;
  readonly dealer: string;
  readonly requestedAt: number | null;
  readonly declaredAt: number | null;
};

/**
 * As whom somebody has to do with an appointment: the inspector once asked, the dealer once the inspector has accepted. Nobody else
 * learns that it is there.
 *
 * @example rolesIn({ buyer: [], inspector: ["f"], dealer: [], operator: false }, { ...parties, firm: "f", requestedAt: null }) // []
 */
export function rolesIn(of: Membership, { buyer, firm, dealer, requestedAt, declaredAt }: Parties): Role[] {
  const roles: Role[] = [];
  if (of.buyer.includes(buyer)) roles.push("buyer");
  if (requestedAt !== null && of.inspector.includes(firm)) roles.push("inspector");
  if (declaredAt !== null && of.dealer.includes(dealer)) roles.push("dealer");
  if (of.operator) roles.push("operator");
  return roles;
}

/**
 * As which of their roles somebody makes a move: one in which it can be made now, else the first, so that the refusal speaks to them.
 *
 * @returns `undefined` where they have no role in it
 * @example roleFor(["inspector", "dealer"], "decline", "accepted") // "dealer"
 */
export const roleFor = (
  roles: readonly Role[],
  move: AppointmentMove,
  state: AppointmentState,
): Role | undefined =>
  roles.find((role) =>
    TRANSITIONS.some((row) => row.move === move && row.actors.includes(role) && row.from.includes(state)),
  ) ?? roles[0];

/** Which items are looked at, the price, travel and independence: between who pays for the visit and who makes it. */
export const isBetween = (role: Role): boolean => role === "buyer" || role === "inspector";

/** Whose payments each sees: their own; the operator, who settles, everybody's. */
export const PAYMENTS_SEEN: Readonly<Record<Role, readonly string[]>> = {
  buyer: ["buyer"],
  inspector: ["inspector"],
  dealer: ["dealer", "site"],
  operator: ["buyer", "inspector", "dealer", "site"],
};

type PlanParts = {
  readonly segments: readonly { readonly items: readonly string[] }[];
  readonly toAllow: readonly unknown[];
};

/**
 * The order of the visit as one of its parties sees it. Which items are looked at is between buyer and inspector, except what the
 * dealer must allow.
 *
 * @example planFor({ segments: [{ items: ["a"] }], toAllow: ["b"] }, "dealer") // { segments: [{ items: [] }], toAllow: ["b"] }
 */
export function planFor<Plan extends PlanParts>(plan: Plan, role: Role): Plan {
  if (isBetween(role)) return plan;
  return {
    ...plan,
    segments: plan.segments.map((segment) => ({ ...segment, items: [] })),
    toAllow: role === "dealer" ? plan.toAllow : [],
  };
}

/** Moves that the others hear of. A start, a drive and a report have their own sign. */
export const TOLD_MOVES = [
  "request",
  "accept",
  "decline",
  "confirm",
  "reschedule",
  "cancel",
  "miss",
  "expire",
] as const satisfies readonly AppointmentMove[];
export type ToldMove = (typeof TOLD_MOVES)[number];

/** Do the others hear of it at all? */
export const isTold = (move: AppointmentMove): move is ToldMove => TOLD_MOVES.some((told) => told === move);

export type MoveMade = {
  readonly move: ToldMove;
  readonly actor: AppointmentActor;
  /** The state in which it was made. */
  readonly from: AppointmentState;
  readonly declaredAt: number | null;
};

/**
 * Who hears of a move: everybody whom it concerns except whoever made it. What became of a hold concerns nobody but its buyer, and a
 * dealer hears of a visit from its acceptance on.
 *
 * @example toldOf({ move: "request", actor: "buyer", from: "held", declaredAt: null }) // ["inspector"]
 */
export function toldOf({ move, actor, from, declaredAt }: MoveMade): Exclude<Role, "operator">[] {
  if (from === "held" && move !== "request") return [];
  const concerned: Exclude<Role, "operator">[] = ["buyer", "inspector"];
  if (declaredAt !== null || move === "accept") concerned.push("dealer");
  return concerned.filter((role) => role !== actor);
}

export type OrderEnd = { readonly state: "declined" | "cancelled"; readonly reason: string };

const whoMessages = defineMessages("visit.who", {
  buyer: "The buyer",
  inspector: "The inspector",
  dealer: "The dealer",
  operator: "The operator",
  clock: "The service",
});

const endMessages = defineMessages("visit.end", {
  declined: "{who} declined the visit.",
  "hour-declined": "{who} declined the hour of the visit.",
  cancelled: "{who} cancelled the visit.",
  expired: "The visit was not answered in time.",
  "nobody-began": "Nobody began the visit at its hour, so it counts as missed.",
  "did-not-come": "The inspector did not come to the visit.",
});

/**
 * How the orders of a visit end with it, and the reason that whoever reads the order is given.
 *
 * @returns `null` where they go on: the visit has only been moved, or goes its way
 * @example orderEndAfter("decline", "inspector") // { state: "declined", reason: "The inspector declined the visit." }
 */
export function orderEndAfter(move: AppointmentMove, actor: AppointmentActor): OrderEnd | null {
  const who = whoMessages.say(actor);
  switch (move) {
    case "decline":
      return actor === "inspector"
        ? { state: "declined", reason: endMessages.say("declined", { who }) }
        : { state: "cancelled", reason: endMessages.say("hour-declined", { who }) };
    case "cancel":
      return { state: "cancelled", reason: endMessages.say("cancelled", { who }) };
    case "miss":
      return { state: "cancelled", reason: missed(actor) };
    case "expire":
      return { state: "cancelled", reason: endMessages.say("expired") };
    default:
      return null;
  }
}

/** Somebody says that the inspector did not come; the clock knows only that nobody began. */
const missed = (actor: AppointmentActor): string =>
  endMessages.say(actor === "clock" ? "nobody-began" : "did-not-come");
