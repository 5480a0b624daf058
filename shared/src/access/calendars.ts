import { type Access, dealer, inspector, operator } from "./grants.ts";

export const calendarAccess = {
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
} as const satisfies Readonly<Record<string, Access>>;
