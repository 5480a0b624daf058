import { type Access, buyer, dealer } from "./grants.ts";

export const releaseAccess = {
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
} as const satisfies Readonly<Record<string, Access>>;
