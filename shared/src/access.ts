import { accountAccess } from "./access/accounts.ts";
import { admissionAccess } from "./access/admissions.ts";
import { bookingAccess } from "./access/booking.ts";
import { calendarAccess } from "./access/calendars.ts";
import { caseAccess } from "./access/cases.ts";
import { chainAccess } from "./access/chain.ts";
import { comparisonAccess } from "./access/comparisons.ts";
import { complaintAccess } from "./access/complaints.ts";
import { evidenceAccess } from "./access/evidence.ts";
import type { Access, OrganizationKind } from "./access/grants.ts";
import { handOverAccess } from "./access/hand-overs.ts";
import { handbookAccess } from "./access/handbook.ts";
import { historyAccess } from "./access/history.ts";
import { instrumentAccess } from "./access/instruments.ts";
import { moneyAccess } from "./access/money.ts";
import { noticeAccess } from "./access/notices.ts";
import { orderAccess } from "./access/orders.ts";
import { organizationAccess } from "./access/organizations.ts";
import { publishingAccess } from "./access/publishing.ts";
import { questionAccess } from "./access/questions.ts";
import { recordAccess } from "./access/records.ts";
import { releaseAccess } from "./access/releases.ts";
import { reportAccess } from "./access/reports.ts";
import { siteAccess } from "./access/sites.ts";
import { summaryAccess } from "./access/summaries.ts";
import { vehicleAccess } from "./access/vehicles.ts";

export { scopes } from "./access/grants.ts";
export type { Access, OrganizationKind, Scope } from "./access/grants.ts";

/**
 * Who may do what: one table, read by the service's guard, by the tests and by the web application.
 * A route that is not in it refuses everybody.
 *
 * `who` names what a person must be. The first part decides before anything is looked up (403 `not-permitted`); the relation to
 * the object is part of the query that reads it, so that another's object and an absent one look alike (404 `not-found`).
 */
export const access = {
  ...accountAccess,
  ...organizationAccess,
  ...handbookAccess,
  ...historyAccess,
  ...instrumentAccess,
  ...recordAccess,
  ...vehicleAccess,
  ...caseAccess,
  ...orderAccess,
  ...reportAccess,
  ...evidenceAccess,
  ...comparisonAccess,
  ...releaseAccess,
  ...summaryAccess,
  ...moneyAccess,
  ...noticeAccess,
  ...publishingAccess,
  ...questionAccess,
  ...calendarAccess,
  ...siteAccess,
  ...admissionAccess,
  ...bookingAccess,
  ...complaintAccess,
  ...handOverAccess,
  ...chainAccess,
} as const satisfies Readonly<Record<string, Access>>;

export type RouteId = keyof typeof access;

/** The table with its general type, for code that walks over it. */
export const accessTable: Readonly<Record<RouteId, Access>> = access;
export const isRouteId = (id: string): id is RouteId => Object.hasOwn(access, id);
export const routeIds: readonly RouteId[] = Object.keys(access).filter(isRouteId);

/**
 * May somebody who belongs to organizations of these kinds belong to one of another kind too? Whoever runs the service decides who
 * works in it and opens complaints, and so belongs to nobody who works in it.
 *
 * @example mayBelong(["operator"], "dealer") // false
 * @example mayBelong(["dealer"], "buyer") // true
 */
export const mayBelong = (kinds: readonly OrganizationKind[], joining: OrganizationKind): boolean =>
  kinds.every((kind) => (kind === "operator") === (joining === "operator"));

/**
 * May somebody with memberships of these kinds ever use the route? The relation to the object is decided where it is read.
 *
 * @example mayUse("vehicles.create", ["buyer"]) // false
 */
export const mayUse = (route: RouteId, kinds: readonly OrganizationKind[]): boolean => {
  const entry = accessTable[route];
  if (entry.public) return true;
  return entry.who.some((each) => each.kind === "anyone" || kinds.includes(each.kind));
};
