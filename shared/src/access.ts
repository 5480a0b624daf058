/**
 * Who may do what: one table, read by the service's guard, by the tests and by the web application.
 * A route that is not in it refuses everybody.
 *
 * `who` names what a person must be. The first part decides before anything is looked up (403 `not-permitted`); the relation to
 * the object is part of the query that reads it, so that another's object and an absent one look alike (404 `not-found`).
 */

export type OrganizationKind = "dealer" | "inspector" | "operator" | "buyer";

/** The relation to the object the route is about. `any`: no object, or one that is open to everybody of that kind. */
export type Relation =
  | "any"
  /** The account, session or token is the person's own. */
  | "self"
  /** A member of the organization that the object belongs to. */
  | "own"
  /** An administrator of that organization. */
  | "admin"
  /** A party to the order: the buyer who ordered, or the inspector's firm that was asked. */
  | "party"
  /** The car is listed, or the organization has it, has ordered work on it or was asked to work on it. */
  | "may-see";

export type Grant = { readonly kind: OrganizationKind | "anyone"; readonly relation: Relation };

/** What a program's token may be given. Sign-in, tokens, invitations and decisions are for people only and have no scope. */
export const scopes = ["read", "vehicles", "orders", "reports", "releases"] as const;
export type Scope = (typeof scopes)[number];

export type Access = {
  readonly method: "GET" | "POST" | "PUT" | "PATCH" | "DELETE";
  /** Under `/api/v1`. */
  readonly path: `/${string}`;
  readonly public?: true;
  readonly who: readonly Grant[];
  /** Absent: never with a token. */
  readonly scope?: Scope;
  /**
   * How a repeat is kept from doing the thing twice: an `Idempotency-Key` header is asked for; `content` means that what is sent
   * carries its own identity; `secret` means the answer holds a secret and is never stored.
   */
  readonly once?: "key" | "content" | "secret";
  /** `If-Match` with the object's revision is asked for. */
  readonly ifMatch?: true;
};

const grant =
  (kind: Grant["kind"]) =>
  (relation: Relation): Grant => ({ kind, relation });
const anyone = grant("anyone");
const dealer = grant("dealer");
const buyer = grant("buyer");
const inspector = grant("inspector");
const operator = grant("operator");

export const access = {
  "sessions.create": { method: "POST", path: "/sessions", public: true, who: [], once: "secret" },
  "sessions.end": { method: "DELETE", path: "/sessions/current", who: [anyone("self")] },
  "sessions.list": { method: "GET", path: "/sessions", who: [anyone("self")] },
  "sessions.revoke": { method: "DELETE", path: "/sessions/:id", who: [anyone("self")] },
  "sessions.endAll": { method: "DELETE", path: "/sessions", who: [anyone("self")] },
  "account.get": { method: "GET", path: "/account", who: [anyone("self")], scope: "read" },
  "account.changePassword": {
    method: "PUT",
    path: "/account/password",
    who: [anyone("self")],
    once: "content",
  },
  "account.close": { method: "POST", path: "/account/closure", who: [anyone("self")], once: "content" },
  "passwordResets.request": {
    method: "POST",
    path: "/password-resets",
    public: true,
    who: [],
    once: "content",
  },
  "passwordResets.get": { method: "GET", path: "/password-resets/:token", public: true, who: [] },
  "passwordResets.use": {
    method: "POST",
    path: "/password-resets/:token/password",
    public: true,
    who: [],
    once: "content",
  },
  "invitations.create": {
    method: "POST",
    path: "/invitations",
    who: [dealer("admin"), inspector("admin"), buyer("admin"), operator("any")],
    once: "key",
  },
  "invitations.list": {
    method: "GET",
    path: "/organizations/:id/invitations",
    who: [dealer("admin"), inspector("admin"), buyer("admin"), operator("any")],
  },
  "invitations.revoke": {
    method: "DELETE",
    path: "/invitations/:id",
    who: [dealer("admin"), inspector("admin"), buyer("admin"), operator("any")],
  },
  "invitations.get": { method: "GET", path: "/invitations/:token", public: true, who: [] },
  "invitations.accept": {
    method: "POST",
    path: "/invitations/:token/acceptance",
    public: true,
    who: [],
    once: "content",
  },
  "tokens.create": { method: "POST", path: "/tokens", who: [anyone("self")], once: "secret" },
  "tokens.list": { method: "GET", path: "/tokens", who: [anyone("self")] },
  "tokens.revoke": { method: "DELETE", path: "/tokens/:id", who: [anyone("self")] },

  "organizations.list": { method: "GET", path: "/organizations", who: [anyone("own")], scope: "read" },
  "organizations.create": { method: "POST", path: "/organizations", who: [operator("any")], once: "key" },
  "organizations.members": {
    method: "GET",
    path: "/organizations/:id/members",
    who: [dealer("own"), inspector("own"), buyer("own"), operator("any")],
    scope: "read",
  },
  // An administrator changes others; anybody may leave. The last administrator stays.
  "members.change": {
    method: "PUT",
    path: "/organizations/:id/members/:account",
    who: [dealer("admin"), inspector("admin"), buyer("admin"), operator("admin")],
    once: "content",
  },
  "members.remove": {
    method: "DELETE",
    path: "/organizations/:id/members/:account",
    who: [dealer("own"), inspector("own"), buyer("own"), operator("own")],
  },
  "firmHandbook.get": {
    method: "GET",
    path: "/organizations/:id/handbook",
    who: [dealer("own"), inspector("own")],
    scope: "read",
  },
  "firmHandbook.put": {
    method: "PUT",
    path: "/organizations/:id/handbook",
    who: [dealer("admin"), inspector("admin")],
    once: "content",
    ifMatch: true,
  },
  "firmInstruments.get": {
    method: "GET",
    path: "/organizations/:id/instruments",
    who: [dealer("own"), inspector("own")],
    scope: "read",
  },
  "firmInstruments.put": {
    method: "PUT",
    path: "/organizations/:id/instruments",
    who: [dealer("admin"), inspector("admin")],
    once: "content",
    ifMatch: true,
  },
  "dealerRecords.get": {
    method: "GET",
    path: "/organizations/:id/record",
    // Not for inspectors: what others found of a dealer is not to sway what is found now.
    who: [dealer("any"), buyer("any"), operator("any")],
    scope: "read",
  },
  "inspectors.list": {
    method: "GET",
    path: "/inspectors",
    who: [buyer("any"), operator("any")],
    scope: "read",
  },

  "vehicles.list": { method: "GET", path: "/vehicles", who: [anyone("may-see")], scope: "read" },
  "vehicles.create": {
    method: "POST",
    path: "/vehicles",
    who: [dealer("own")],
    scope: "vehicles",
    once: "key",
  },
  "vehicles.get": { method: "GET", path: "/vehicles/:id", who: [anyone("may-see")], scope: "read" },
  "vehicles.change": {
    method: "PATCH",
    path: "/vehicles/:id",
    who: [dealer("own")],
    scope: "vehicles",
    ifMatch: true,
  },

  "cases.list": {
    method: "GET",
    path: "/cases",
    who: [buyer("own"), dealer("own"), inspector("party"), operator("any")],
    scope: "read",
  },
  // An operator has states and counts, and reads contents only by opening a complaint.
  "cases.get": {
    method: "GET",
    path: "/cases/:id",
    who: [buyer("own"), dealer("party"), inspector("party")],
    scope: "read",
  },

  "orders.create": {
    method: "POST",
    path: "/vehicles/:id/orders",
    who: [buyer("may-see")],
    scope: "orders",
    once: "key",
  },
  "orders.list": { method: "GET", path: "/orders", who: [buyer("party"), inspector("party")], scope: "read" },
  "orders.get": {
    method: "GET",
    path: "/orders/:id",
    who: [buyer("party"), inspector("party")],
    scope: "read",
  },
  "orders.accept": {
    method: "POST",
    path: "/orders/:id/acceptance",
    who: [inspector("party")],
    scope: "orders",
    once: "key",
    ifMatch: true,
  },
  "orders.decline": {
    method: "POST",
    path: "/orders/:id/refusal",
    who: [inspector("party")],
    scope: "orders",
    once: "key",
    ifMatch: true,
  },
  "orders.cancel": {
    method: "POST",
    path: "/orders/:id/cancellation",
    who: [buyer("party")],
    scope: "orders",
    once: "key",
    ifMatch: true,
  },

  "reports.state": {
    method: "POST",
    path: "/vehicles/:id/reports",
    who: [dealer("own")],
    scope: "reports",
    once: "key",
  },
  "reports.inspect": {
    method: "POST",
    path: "/orders/:id/reports",
    who: [inspector("party")],
    scope: "reports",
    once: "key",
  },
  "reports.get": {
    method: "GET",
    path: "/reports/:id",
    who: [dealer("own"), inspector("own")],
    scope: "read",
  },
  "reports.change": {
    method: "PATCH",
    path: "/reports/:id",
    who: [dealer("own"), inspector("own")],
    scope: "reports",
    ifMatch: true,
  },
  "reports.operate": {
    method: "POST",
    path: "/reports/:id/operations",
    who: [dealer("own"), inspector("own")],
    scope: "reports",
    once: "content",
  },
  "reports.seal": {
    method: "POST",
    path: "/reports/:id/seal",
    who: [dealer("own"), inspector("own")],
    scope: "reports",
    once: "key",
    ifMatch: true,
  },
  "reports.revise": {
    method: "POST",
    path: "/reports/:id/versions",
    who: [dealer("own"), inspector("own")],
    scope: "reports",
    once: "key",
  },
  "reportVersions.get": {
    method: "GET",
    path: "/report-versions/:id",
    who: [anyone("may-see")],
    scope: "read",
  },
  "reportVersions.document": {
    method: "GET",
    path: "/report-versions/:id/document",
    who: [anyone("may-see")],
    scope: "read",
  },

  "comparisons.create": {
    method: "POST",
    path: "/vehicles/:id/comparisons",
    who: [dealer("may-see"), buyer("may-see"), inspector("may-see")],
    scope: "reports",
    once: "key",
  },
  "comparisons.list": {
    method: "GET",
    path: "/comparisons",
    who: [dealer("may-see"), buyer("may-see"), inspector("may-see")],
    scope: "read",
  },
  "comparisons.get": {
    method: "GET",
    path: "/comparisons/:id",
    who: [dealer("may-see"), buyer("may-see"), inspector("may-see")],
    scope: "read",
  },
  "comparisons.document": {
    method: "GET",
    path: "/comparisons/:id/document",
    who: [dealer("may-see"), buyer("may-see"), inspector("may-see")],
    scope: "read",
  },
  "comparisons.answer": {
    method: "GET",
    path: "/comparisons/:id/answer",
    who: [dealer("may-see"), buyer("may-see"), inspector("may-see")],
    scope: "read",
  },
  "comparisons.cost": {
    method: "GET",
    path: "/comparisons/:id/cost",
    who: [buyer("party")],
    scope: "read",
  },

  "releases.create": {
    method: "POST",
    path: "/comparisons/:id/releases",
    who: [buyer("party")],
    scope: "releases",
    once: "key",
  },
  "releases.list": { method: "GET", path: "/releases", who: [buyer("own"), dealer("own")], scope: "read" },
  "releases.get": { method: "GET", path: "/releases/:id", who: [buyer("own"), dealer("own")], scope: "read" },
  "releases.answer": {
    method: "POST",
    path: "/releases/:id/answer",
    who: [dealer("own")],
    scope: "releases",
    once: "key",
    ifMatch: true,
  },

  "costTable.get": {
    method: "GET",
    path: "/cost-table",
    who: [buyer("own"), inspector("own")],
    scope: "read",
  },
  "costTable.history": {
    method: "GET",
    path: "/cost-table/history",
    who: [buyer("own"), inspector("own")],
    scope: "read",
  },
  "costTable.offered": { method: "GET", path: "/cost-table/offered", who: [buyer("own")], scope: "read" },
  "costTable.put": {
    method: "PUT",
    path: "/cost-table",
    who: [buyer("own"), inspector("own")],
    once: "content",
    ifMatch: true,
  },

  "summaries.create": {
    method: "POST",
    path: "/comparisons/:id/summaries",
    who: [buyer("party")],
    once: "key",
  },
  "summaries.list": { method: "GET", path: "/summaries", who: [buyer("own")], scope: "read" },
  "summaries.get": { method: "GET", path: "/summaries/:id", who: [buyer("own")], scope: "read" },
  "summaries.document": {
    method: "GET",
    path: "/summaries/:id/document",
    who: [buyer("own")],
    scope: "read",
  },
  "summaries.draft": {
    method: "PUT",
    path: "/summaries/:id/draft",
    who: [buyer("own")],
    once: "content",
    ifMatch: true,
  },
  "summaries.decide": { method: "POST", path: "/summaries/:id/decision", who: [buyer("own")], once: "key" },

  "decisions.list": { method: "GET", path: "/decisions", who: [buyer("own"), dealer("own")], scope: "read" },
  "decisions.get": {
    method: "GET",
    path: "/decisions/:id",
    who: [buyer("own"), dealer("own")],
    scope: "read",
  },
  "decisions.answer": {
    method: "POST",
    path: "/decisions/:id/answer",
    who: [dealer("own")],
    once: "key",
    ifMatch: true,
  },

  "notices.list": { method: "GET", path: "/notices", who: [anyone("self")], scope: "read" },
  "notices.read": { method: "POST", path: "/notices/reading", who: [anyone("self")], once: "content" },

  // From a published statement to a booked inspection.
  "listing.get": { method: "GET", path: "/vehicles/:id/listing", who: [anyone("may-see")], scope: "read" },
  "listing.publish": {
    method: "POST",
    path: "/vehicles/:id/listing",
    who: [dealer("own")],
    scope: "vehicles",
    once: "key",
    ifMatch: true,
  },
  "listing.withdraw": {
    method: "POST",
    path: "/vehicles/:id/withdrawal",
    who: [dealer("own")],
    scope: "vehicles",
    once: "key",
    ifMatch: true,
  },
  "shareLinks.create": {
    method: "POST",
    path: "/vehicles/:id/share-links",
    who: [dealer("own")],
    once: "secret",
  },
  "shareLinks.list": {
    method: "GET",
    path: "/vehicles/:id/share-links",
    who: [dealer("own")],
    scope: "read",
  },
  "shareLinks.revoke": { method: "DELETE", path: "/share-links/:id", who: [dealer("own")] },
  "sharedStatements.get": { method: "GET", path: "/shared-statements/:token", public: true, who: [] },

  "questions.create": {
    method: "POST",
    path: "/vehicles/:id/questions",
    who: [buyer("may-see")],
    scope: "orders",
    once: "key",
  },
  "questions.list": { method: "GET", path: "/questions", who: [buyer("own"), dealer("own")], scope: "read" },
  "questions.get": {
    method: "GET",
    path: "/questions/:id",
    who: [buyer("own"), dealer("own")],
    scope: "read",
  },
  "questions.change": {
    method: "PATCH",
    path: "/questions/:id",
    who: [buyer("own")],
    scope: "orders",
    ifMatch: true,
  },
  "questions.answer": {
    method: "POST",
    path: "/questions/:id/answer",
    who: [dealer("own")],
    scope: "reports",
    once: "key",
    ifMatch: true,
  },

  "calendars.create": {
    method: "POST",
    path: "/calendars",
    who: [inspector("admin")],
    scope: "orders",
    once: "key",
  },
  "calendars.list": {
    method: "GET",
    path: "/calendars",
    who: [inspector("own"), operator("any")],
    scope: "read",
  },
  "calendars.get": {
    method: "GET",
    path: "/calendars/:id",
    who: [inspector("own"), operator("any")],
    scope: "read",
  },
  "calendars.change": {
    method: "PATCH",
    path: "/calendars/:id",
    who: [inspector("own")],
    scope: "orders",
    ifMatch: true,
  },
  "calendars.days": {
    method: "GET",
    path: "/calendars/:id/days",
    who: [inspector("own")],
    scope: "read",
  },
  "calendars.layOut": {
    method: "POST",
    path: "/hours/layout",
    who: [inspector("any"), dealer("any")],
    scope: "read",
    once: "content",
  },
  "interests.declare": {
    method: "POST",
    path: "/calendars/:id/interests",
    who: [inspector("own")],
    scope: "orders",
    once: "key",
  },
  "interests.end": {
    method: "PUT",
    path: "/interests/:id/end",
    who: [inspector("own")],
    scope: "orders",
    once: "content",
  },
  "dealings.declare": {
    method: "POST",
    path: "/calendars/:id/dealings",
    who: [inspector("own")],
    scope: "orders",
    once: "key",
  },
  "sites.create": { method: "POST", path: "/sites", who: [dealer("own")], scope: "vehicles", once: "key" },
  "sites.list": { method: "GET", path: "/sites", who: [dealer("own")], scope: "read" },
  "sites.get": { method: "GET", path: "/sites/:id", who: [dealer("own")], scope: "read" },
  "sites.change": {
    method: "PATCH",
    path: "/sites/:id",
    who: [dealer("own")],
    scope: "vehicles",
    ifMatch: true,
  },
  "sites.days": { method: "GET", path: "/sites/:id/days", who: [dealer("own")], scope: "read" },
  "carPlace.get": { method: "GET", path: "/vehicles/:id/place", who: [anyone("may-see")], scope: "read" },
  "carPlace.put": {
    method: "PUT",
    path: "/vehicles/:id/place",
    who: [dealer("own")],
    scope: "vehicles",
    once: "content",
  },
  "admissions.list": {
    method: "GET",
    path: "/admissions",
    who: [inspector("own"), operator("any")],
    scope: "read",
  },
  "admissions.decide": {
    method: "POST",
    path: "/admissions/:id/decision",
    who: [operator("any")],
    once: "key",
    ifMatch: true,
  },
  "calendarFeeds.create": {
    method: "POST",
    path: "/calendar-feeds",
    who: [buyer("own"), inspector("own"), dealer("own")],
    once: "secret",
  },
  "calendarFeeds.list": {
    method: "GET",
    path: "/calendar-feeds",
    who: [buyer("own"), inspector("own"), dealer("own")],
  },
  "calendarFeeds.revoke": {
    method: "DELETE",
    path: "/calendar-feeds/:id",
    who: [buyer("own"), inspector("own"), dealer("own")],
  },
  "calendarFeeds.read": {
    method: "GET",
    path: "/calendar-feeds/:token/calendar.ics",
    public: true,
    who: [],
  },

  "brief.get": { method: "GET", path: "/vehicles/:id/brief", who: [buyer("may-see")], scope: "read" },
  "brief.put": {
    method: "PUT",
    path: "/vehicles/:id/brief",
    who: [buyer("may-see")],
    scope: "orders",
    once: "content",
    ifMatch: true,
  },
  "offers.list": { method: "GET", path: "/vehicles/:id/offers", who: [buyer("may-see")], scope: "read" },
  "offers.explain": {
    method: "GET",
    path: "/vehicles/:id/offers/day",
    who: [buyer("may-see")],
    scope: "read",
  },
  "bookingTerms.get": { method: "GET", path: "/booking-terms", who: [anyone("any")], scope: "read" },
  "bookingTerms.put": {
    method: "PUT",
    path: "/booking-terms",
    who: [operator("any")],
    once: "content",
    ifMatch: true,
  },
  "appointments.hold": {
    method: "POST",
    path: "/appointments",
    who: [buyer("may-see")],
    scope: "orders",
    once: "key",
  },
  "appointments.list": {
    method: "GET",
    path: "/appointments",
    who: [buyer("party"), inspector("party"), dealer("party"), operator("any")],
    scope: "read",
  },
  "appointments.counts": {
    method: "GET",
    path: "/appointment-counts",
    who: [operator("any")],
    scope: "read",
  },
  "appointments.get": {
    method: "GET",
    path: "/appointments/:id",
    who: [buyer("party"), inspector("party"), dealer("party"), operator("any")],
    scope: "read",
  },
  "appointments.request": {
    method: "POST",
    path: "/appointments/:id/request",
    who: [buyer("party")],
    scope: "orders",
    once: "key",
    ifMatch: true,
  },
  "appointments.accept": {
    method: "POST",
    path: "/appointments/:id/acceptance",
    who: [inspector("party")],
    scope: "orders",
    once: "key",
    ifMatch: true,
  },
  "appointments.decline": {
    method: "POST",
    path: "/appointments/:id/refusal",
    who: [inspector("party"), dealer("party")],
    scope: "orders",
    once: "key",
    ifMatch: true,
  },
  "appointments.confirm": {
    method: "POST",
    path: "/appointments/:id/confirmation",
    who: [dealer("party")],
    scope: "orders",
    once: "key",
    ifMatch: true,
  },
  "appointments.reschedule": {
    method: "POST",
    path: "/appointments/:id/rescheduling",
    who: [buyer("party")],
    scope: "orders",
    once: "key",
    ifMatch: true,
  },
  "appointments.cancel": {
    method: "POST",
    path: "/appointments/:id/cancellation",
    who: [buyer("party"), inspector("party"), dealer("party"), operator("any")],
    scope: "orders",
    once: "key",
    ifMatch: true,
  },
  "appointments.start": {
    method: "POST",
    path: "/appointments/:id/start",
    who: [inspector("party")],
    scope: "orders",
    once: "key",
    ifMatch: true,
  },
  "appointments.takeToRoad": {
    method: "POST",
    path: "/appointments/:id/road",
    who: [inspector("party")],
    scope: "orders",
    once: "key",
    ifMatch: true,
  },
  "appointments.miss": {
    method: "POST",
    path: "/appointments/:id/missed",
    who: [buyer("party"), dealer("party"), operator("any")],
    scope: "orders",
    once: "key",
    ifMatch: true,
  },
  "appointments.report": {
    method: "POST",
    path: "/appointments/:id/report",
    who: [inspector("party")],
    scope: "orders",
    once: "key",
    ifMatch: true,
  },
  "appointments.proposeBrief": {
    method: "POST",
    path: "/appointments/:id/brief-proposal",
    who: [buyer("party")],
    scope: "orders",
    once: "key",
    ifMatch: true,
  },
  "appointments.answerBrief": {
    method: "POST",
    path: "/appointments/:id/brief-answer",
    who: [inspector("party"), buyer("party")],
    scope: "orders",
    once: "key",
    ifMatch: true,
  },

  "complaints.create": { method: "POST", path: "/complaints", who: [anyone("own")], once: "key" },
  "complaints.list": { method: "GET", path: "/complaints", who: [anyone("own"), operator("any")] },
  "complaints.counts": { method: "GET", path: "/complaint-counts", who: [operator("any")] },
  "complaints.get": { method: "GET", path: "/complaints/:id", who: [anyone("own"), operator("any")] },
  "complaints.open": {
    method: "POST",
    path: "/complaints/:id/opening",
    who: [operator("any")],
    once: "key",
  },
  "complaints.answer": {
    method: "POST",
    path: "/complaints/:id/answer",
    who: [operator("any")],
    once: "key",
    ifMatch: true,
  },
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
