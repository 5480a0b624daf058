import { type Access, anyone, operator } from "./grants.ts";

export const complaintAccess = {
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
