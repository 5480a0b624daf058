import { type Access, anyone, dealer, inspector } from "./grants.ts";

export const reportAccess = {
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
  "reports.lookAgain": {
    method: "POST",
    path: "/reports/:id/second-look",
    who: [inspector("own")],
    scope: "reports",
    once: "key",
    ifMatch: true,
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
} as const satisfies Readonly<Record<string, Access>>;
