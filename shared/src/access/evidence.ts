import { type Access, anyone, dealer, inspector } from "./grants.ts";

/** Files are sent by tus 1.0; `HEAD /uploads/:id` is the `GET` beside it, as everywhere. */
export const evidenceAccess = {
  "uploads.create": {
    method: "POST",
    path: "/reports/:id/uploads",
    who: [dealer("own"), inspector("own")],
    scope: "reports",
    once: "content",
  },
  "uploads.get": {
    method: "GET",
    path: "/uploads/:id",
    who: [dealer("own"), inspector("own")],
    scope: "read",
  },
  "uploads.append": {
    method: "PATCH",
    path: "/uploads/:id",
    who: [dealer("own"), inspector("own")],
    scope: "reports",
    once: "content",
  },
  "evidence.ofReport": {
    method: "GET",
    path: "/reports/:id/evidence",
    who: [dealer("own"), inspector("own")],
    scope: "read",
  },
  "evidence.ofVersion": {
    method: "GET",
    path: "/report-versions/:id/evidence",
    who: [anyone("may-see")],
    scope: "read",
  },
  "evidence.ofVehicle": {
    method: "GET",
    path: "/vehicles/:id/evidence",
    who: [anyone("may-see")],
    scope: "read",
  },
  "evidence.small": {
    method: "GET",
    path: "/evidence/:id/small",
    who: [anyone("may-see")],
    scope: "read",
  },
  "evidence.medium": {
    method: "GET",
    path: "/evidence/:id/medium",
    who: [anyone("may-see")],
    scope: "read",
  },
  "evidence.large": {
    method: "GET",
    path: "/evidence/:id/large",
    who: [anyone("may-see")],
    scope: "read",
  },
  "evidence.original": {
    method: "GET",
    path: "/evidence/:id/original",
    who: [dealer("own"), inspector("own")],
    scope: "read",
  },
  "evidence.mark": {
    method: "PUT",
    path: "/evidence/:id/marks",
    who: [dealer("own"), inspector("own")],
    scope: "reports",
    once: "content",
  },
  "evidence.remove": {
    method: "DELETE",
    path: "/evidence/:id",
    who: [dealer("own"), inspector("own")],
    scope: "reports",
    once: "content",
  },
  "evidence.restore": {
    method: "PUT",
    path: "/evidence/:id/place",
    who: [dealer("own"), inspector("own")],
    scope: "reports",
    once: "content",
  },
} as const satisfies Readonly<Record<string, Access>>;
