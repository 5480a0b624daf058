import { type Access, anyone } from "./grants.ts";

export const noticeAccess = {
  "notices.list": { method: "GET", path: "/notices", who: [anyone("self")], scope: "read" },
  "notices.choice": { method: "GET", path: "/notices/choice", who: [anyone("self")], scope: "read" },
  "notices.choose": { method: "PUT", path: "/notices/choice", who: [anyone("self")], once: "content" },
  "notices.read": { method: "POST", path: "/notices/reading", who: [anyone("self")], once: "content" },

  // From a published statement to a booked inspection.
} as const satisfies Readonly<Record<string, Access>>;
