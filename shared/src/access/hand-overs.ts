import { type Access, buyer, dealer } from "./grants.ts";

/** The carrier has no account: the link is theirs, works once for each of the two reports, and ends. */
export const handOverAccess = {
  "handOvers.arrange": {
    method: "POST",
    path: "/cases/:id/hand-overs",
    who: [buyer("own")],
    once: "secret",
  },
  "handOvers.ofCase": {
    method: "GET",
    path: "/cases/:id/hand-overs",
    who: [buyer("own"), dealer("party")],
    scope: "read",
  },
  "handOvers.get": {
    method: "GET",
    path: "/hand-overs/:id",
    who: [buyer("own"), dealer("party")],
    scope: "read",
  },
  "handOvers.renewLink": {
    method: "POST",
    path: "/hand-overs/:id/links",
    who: [buyer("own")],
    once: "secret",
  },
  "handOvers.setTerms": {
    method: "PUT",
    path: "/hand-overs/:id/terms",
    who: [buyer("own")],
    once: "content",
    ifMatch: true,
  },
  "handOvers.callOff": {
    method: "POST",
    path: "/hand-overs/:id/calling-off",
    who: [buyer("own")],
    once: "key",
    ifMatch: true,
  },
  "handOvers.signOff": {
    method: "POST",
    path: "/hand-overs/:id/sign-off",
    who: [buyer("own")],
    once: "key",
    ifMatch: true,
  },
  "handOvers.openClaim": {
    method: "POST",
    path: "/hand-overs/:id/claim",
    who: [buyer("own")],
    once: "key",
    ifMatch: true,
  },
  "handOvers.closeClaim": {
    method: "POST",
    path: "/hand-overs/:id/claim-end",
    who: [buyer("own")],
    once: "key",
    ifMatch: true,
  },
  "carriedHandOvers.get": { method: "GET", path: "/carried-hand-overs/:token", public: true, who: [] },
  "carriedHandOvers.preview": {
    method: "POST",
    path: "/carried-hand-overs/:token/preview",
    public: true,
    who: [],
    once: "content",
  },
  "carriedHandOvers.sign": {
    method: "POST",
    path: "/carried-hand-overs/:token/signatures",
    public: true,
    who: [],
    once: "content",
  },
} as const satisfies Readonly<Record<string, Access>>;
