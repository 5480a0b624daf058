import { type Appointment, openMoves } from "@evenhand/booking/appointment";
import { LAST_CHANGE_MS } from "@evenhand/booking/brief";
import { cancellings } from "@evenhand/booking/cancellings";
import { isBetween, PAYMENTS_SEEN, planFor, type Role } from "@evenhand/booking/parties";
import { BriefItem } from "@evenhand/shared/booking";
import {
  AppointmentRow,
  AppointmentSeen,
  RoadClearance,
  type ShareOfWork,
} from "@evenhand/shared/http/booking";
import { InterestSeen } from "@evenhand/shared/http/calendars";
import { z } from "zod";
import { costBody, instant, termsBody } from "./bodies.ts";
import { planBody, totalsBody } from "./brief-items.ts";
import { Proposed, StoredCost, StoredPlan, StoredTerms } from "./stored.ts";

/** The row as the database gives it: everything, whoever asks. */
export const Detail = AppointmentRow.extend({
  visits: z.array(
    z.object({
      vehicle: z.string(),
      order: z.string().nullable(),
      statement: z.object({ id: z.string(), version: z.number() }).nullable(),
      version: z.number(),
      items: z.array(BriefItem),
      proposed: Proposed.nullable(),
    }),
  ),
  ...AppointmentSeen.pick({ bays: true, history: true, payments: true, permissions: true, settlement: true })
    .shape,
  interests: z.array(InterestSeen),
  plan: StoredPlan,
  travel: AppointmentSeen.shape.travel.unwrap(),
  cost: StoredCost,
  terms: StoredTerms,
  road: RoadClearance.nullable(),
  heldFromSaleUntil: z.string().nullable(),
  declaredAt: z.string().nullable(),
  requestedAt: z.string().nullable(),
  paid: z.boolean(),
  carriedShare: z.number(),
  sequence: z.number().nullable(),
  parties: z.object({ buyer: z.string(), firm: z.string(), dealer: z.string() }),
});
export type Detail = z.infer<typeof Detail>;

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

function visitsOf(detail: Detail, role: Role): AppointmentSeen["visits"] {
  return detail.visits.map(({ vehicle, order, statement, version, items, proposed }) => ({
    vehicle,
    order: isBetween(role) ? order : null,
    statement,
    brief: isBetween(role)
      ? {
          version,
          items,
          totals: totalsBody(items),
          proposed: proposed === null ? null : { items: proposed.items, at: instant(proposed.at) },
          until: instant(Date.parse(detail.start) - LAST_CHANGE_MS),
        }
      : null,
  }));
}

const cars = (detail: Detail, role: Role): AppointmentRow["cars"] =>
  role === "operator" ? detail.cars.map((car) => ({ ...car, identification: "" })) : detail.cars;

/** An appointment as one of its parties sees it. */
export function seenBy(detail: Detail, role: Role, now: number, share: ShareOfWork): AppointmentSeen {
  const appointment = toAppointment(detail);
  const between = isBetween(role);
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
    moves: openMoves(appointment, role, now),
    cancelling: cancellings(appointment, role, now),
    visits: visitsOf(detail, role),
    plan: planBody(planFor(detail.plan, role)),
    bays: detail.bays,
    travel: between ? detail.travel : null,
    cost: between ? costBody(detail.cost) : null,
    terms: termsBody(detail.terms),
    heldFromSaleUntil: detail.heldFromSaleUntil,
    permissions: role === "operator" ? [] : detail.permissions,
    independence: between
      ? { declaredAt: detail.declaredAt, shareOfWork: share, interests: detail.interests }
      : null,
    payments: detail.payments.filter(({ party }) => PAYMENTS_SEEN[role].includes(party)),
    settlement: role === "operator" || between ? detail.settlement : null,
    road: role === "operator" ? null : detail.road,
    history: role === "operator" ? detail.history.map((each) => ({ ...each, note: null })) : detail.history,
  };
}
