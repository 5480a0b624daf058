import { type Access, buyer, dealer, inspector } from "./grants.ts";

export const releaseAccess = {
  "releases.create": {
    method: "POST",
    path: "/comparisons/:id/releases",
    who: [buyer("party")],
    scope: "releases",
    once: "key",
  },
  "releases.list": {
    method: "GET",
    path: "/releases",
    who: [buyer("own"), dealer("own"), inspector("party")],
    scope: "read",
  },
  "releases.get": {
    method: "GET",
    path: "/releases/:id",
    who: [buyer("own"), dealer("own"), inspector("party")],
    scope: "read",
  },
  "releases.move": {
    method: "POST",
    path: "/releases/moves",
    who: [buyer("own"), dealer("own"), inspector("party")],
    scope: "releases",
    once: "key",
  },
} as const satisfies Readonly<Record<string, Access>>;
