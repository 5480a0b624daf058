import { type Access, anyone, dealer } from "./grants.ts";

export const publishingAccess = {
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
  "sharedStatements.small": {
    method: "GET",
    path: "/shared-statements/:token/pictures/:id/small",
    public: true,
    who: [],
  },
  "sharedStatements.large": {
    method: "GET",
    path: "/shared-statements/:token/pictures/:id/large",
    public: true,
    who: [],
  },
} as const satisfies Readonly<Record<string, Access>>;
