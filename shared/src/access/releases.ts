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
  "releasePictures.add": {
    method: "POST",
    path: "/releases/:id/pictures",
    who: [buyer("own"), dealer("own"), inspector("party")],
    scope: "releases",
    once: "content",
  },
  "releasePictures.list": {
    method: "GET",
    path: "/releases/:id/pictures",
    who: [buyer("own"), dealer("own"), inspector("party")],
    scope: "read",
  },
  "releasePictures.small": {
    method: "GET",
    path: "/release-pictures/:id/small",
    who: [buyer("own"), dealer("own"), inspector("party")],
    scope: "read",
  },
  "releasePictures.large": {
    method: "GET",
    path: "/release-pictures/:id/large",
    who: [buyer("own"), dealer("own"), inspector("party")],
    scope: "read",
  },
  "releasePictures.original": {
    method: "GET",
    path: "/release-pictures/:id/original",
    who: [buyer("own"), dealer("own"), inspector("own")],
    scope: "read",
  },
  "releasePictures.remove": {
    method: "DELETE",
    path: "/release-pictures/:id",
    who: [buyer("own"), dealer("own"), inspector("own")],
    scope: "releases",
    once: "content",
  },
} as const satisfies Readonly<Record<string, Access>>;
