import { type Access, inspector, operator } from "./grants.ts";

export const admissionAccess = {
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
} as const satisfies Readonly<Record<string, Access>>;
