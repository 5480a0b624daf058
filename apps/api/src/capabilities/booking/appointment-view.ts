import {
  type Appointment,
  CAUSES,
  decide,
  DEFAULT_APPOINTMENT_RULES,
  TRANSITIONS,
} from "@evenhand/booking/appointment";
import { LAST_CHANGE } from "@evenhand/booking/brief";
import { type CancellationTerms, NO_WORK } from "@evenhand/booking/cancellation-terms";
import type { VisitCost } from "@evenhand/booking/visit-cost";
import type { VisitPlan } from "@evenhand/booking/visit-plan";
import type { AppointmentMove, BriefItem, CancellationCause } from "@evenhand/shared/booking";
import type {
  AppointmentRow,
  AppointmentSeen,
  RoadClearance,
  ShareOfWork,
} from "@evenhand/shared/http/booking";
import type { InterestSeen } from "@evenhand/shared/http/calendars";
import { costBody, instant, termsBody } from "./bodies.ts";
import { planBody, totalsBody } from "./brief-items.ts";
import type { Role } from "./roles.ts";

/** The row as the database gives it: everything, whoever asks. */
export type Detail = AppointmentRow & {
  visits: {
    vehicle: string;
    order: string | null;
    statement: { id: string; version: number } | null;
    version: number;
    items: BriefItem[];
    proposed: { items: BriefItem[]; at: number } | null;
  }[];
  bays: AppointmentSeen["bays"];
  history: AppointmentSeen["history"];
  payments: AppointmentSeen["payments"];
  interests: InterestSeen[];
  plan: VisitPlan;
  travel: NonNullable<AppointmentSeen["travel"]>;
  cost: VisitCost;
  terms: CancellationTerms;
  permissions: AppointmentSeen["permissions"];
  road: RoadClearance | null;
  settlement: AppointmentSeen["settlement"];
  heldFromSaleUntil: string | null;
  declaredAt: string | null;
  requestedAt: string | null;
  paid: boolean;
  carriedShare: number;
  sequence: number | null;
  parties: { buyer: string; firm: string; dealer: string };
};

const time = (at: string | null): number | null => (at === null ? null : Date.parse(at));

/** The appointment as the rules of booking know it. */
const toAppointment = (detail: Detail): Appointment => ({
  state: detail.state,
  hour: { start: Date.parse(detail.start), end: Date.parse(detail.end) },
  deadline: time(detail.deadline),
  requestedAt: time(detail.requestedAt),
  cost: detail.cost,
  terms: detail.terms,
  paid: detail.paid,
  carriedShare: detail.carriedShare,
  heldFromSaleUntil: time(detail.heldFromSaleUntil),
  sequence: detail.sequence,
  history: [],
});

/** Moves the table gives this actor now; conditions that only the move itself can find out are left open. */
function movesOf(appointment: Appointment, role: Role, now: number): AppointmentMove[] {
  const rows = TRANSITIONS.filter(
    ({ from, actors }) => from.includes(appointment.state) && actors.includes(role),
  );
  return rows.map(({ move }) => move).filter((move) => isTimely(appointment, move, now));
}

/** Neither too early nor too late for it. */
function isTimely({ hour, deadline }: Appointment, move: AppointmentMove, now: number): boolean {
  const { earlyStart, grace } = DEFAULT_APPOINTMENT_RULES;
  if (move === "start") return now >= hour.start - earlyStart && now < hour.end;
  if (move === "miss") return now >= hour.start + grace;
  if (move === "decline" || move === "reschedule") return now < hour.start;
  if (move === "request" || move === "accept" || move === "confirm")
    return now < hour.start && (deadline === null || now < deadline);
  return true;
}

/** Every cause this actor may name now, with what it would settle. */
function cancellingOf(appointment: Appointment, role: Role, now: number): AppointmentSeen["cancelling"] {
  const causes = new Set<CancellationCause>(CAUSES.map(({ cause }) => cause));
  return [...causes].flatMap((cause) => {
    const decision = decide(appointment, "cancel", role, now, { cause, work: NO_WORK });
    if (decision.kind === "refused") return [];
    const settled = decision.consequences.find((each) => each.code === "settle");
    return [
      { cause, settlement: settled === undefined ? nothingOf(appointment) : { ...settled.settlement } },
    ];
  });
}

const nothingOf = ({ cost: { currency, total } }: Appointment) => ({
  currency,
  buyerPays: 0,
  buyerRefunded: total,
  dealerOwes: 0,
  inspectorOwes: 0,
  inspectorGets: 0,
  siteGets: 0,
});

const paidBy: Readonly<Record<Role, readonly string[]>> = {
  buyer: ["buyer"],
  inspector: ["inspector"],
  dealer: ["dealer", "site"],
  operator: ["buyer", "inspector", "dealer", "site"],
};

function visitsOf(detail: Detail, role: Role): AppointmentSeen["visits"] {
  return detail.visits.map(({ vehicle, order, statement, version, items, proposed }) => ({
    vehicle,
    order: role === "buyer" || role === "inspector" ? order : null,
    statement,
    brief:
      role === "buyer" || role === "inspector"
        ? {
            version,
            items,
            totals: totalsBody(items),
            proposed: proposed === null ? null : { items: proposed.items, at: instant(proposed.at) },
            until: instant(Date.parse(detail.start) - LAST_CHANGE),
          }
        : null,
  }));
}

/** The order of the visit; which items are looked at is between buyer and inspector, except what the dealer must allow. */
function planOf({ plan }: Detail, role: Role): AppointmentSeen["plan"] {
  const body = planBody(plan);
  if (role === "buyer" || role === "inspector") return body;
  return {
    ...body,
    segments: body.segments.map((segment) => ({ ...segment, items: [] })),
    toAllow: role === "dealer" ? body.toAllow : [],
  };
}

const cars = (detail: Detail, role: Role): AppointmentRow["cars"] =>
  role === "operator" ? detail.cars.map((car) => ({ ...car, identification: "" })) : detail.cars;

/** An appointment as one of its parties sees it. */
export function seenBy(detail: Detail, role: Role, now: number, share: ShareOfWork): AppointmentSeen {
  const appointment = toAppointment(detail);
  const between = role === "buyer" || role === "inspector";
  const { id, revision, state, start, end, zone, deadline, site, dealer, buyer, inspector } = detail;
  return {
    id,
    revision,
    state,
    start,
    end,
    zone,
    deadline,
    site,
    dealer,
    inspector,
    buyer: between ? buyer : null,
    cars: cars(detail, role),
    as: role,
    moves: movesOf(appointment, role, now),
    cancelling: cancellingOf(appointment, role, now),
    visits: visitsOf(detail, role),
    plan: planOf(detail, role),
    bays: detail.bays,
    travel: between ? detail.travel : null,
    cost: between ? costBody(detail.cost) : null,
    terms: termsBody(detail.terms),
    heldFromSaleUntil: detail.heldFromSaleUntil,
    permissions: role === "operator" ? [] : detail.permissions,
    independence: between
      ? { declaredAt: detail.declaredAt, shareOfWork: share, interests: detail.interests }
      : null,
    payments: detail.payments.filter(({ party }) => paidBy[role].includes(party)),
    settlement: role === "operator" || between ? detail.settlement : null,
    road: role === "operator" ? null : detail.road,
    history: role === "operator" ? detail.history.map((each) => ({ ...each, note: null })) : detail.history,
  };
}
