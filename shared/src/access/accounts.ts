import { type Access, anyone, buyer, dealer, inspector, operator } from "./grants.ts";

export const accountAccess = {
  "sessions.create": { method: "POST", path: "/sessions", public: true, who: [], once: "secret" },
  "sessions.end": { method: "DELETE", path: "/sessions/current", who: [anyone("self")] },
  "sessions.list": { method: "GET", path: "/sessions", who: [anyone("self")] },
  "sessions.revoke": { method: "DELETE", path: "/sessions/:id", who: [anyone("self")] },
  "sessions.endAll": { method: "DELETE", path: "/sessions", who: [anyone("self")] },
  "account.get": { method: "GET", path: "/account", who: [anyone("self")], scope: "read" },
  "account.changePassword": {
    method: "PUT",
    path: "/account/password",
    who: [anyone("self")],
    once: "content",
  },
  "account.close": { method: "POST", path: "/account/closure", who: [anyone("self")], once: "content" },
  "passwordResets.request": {
    method: "POST",
    path: "/password-resets",
    public: true,
    who: [],
    once: "content",
  },
  "passwordResets.get": { method: "GET", path: "/password-resets/:token", public: true, who: [] },
  "passwordResets.use": {
    method: "POST",
    path: "/password-resets/:token/password",
    public: true,
    who: [],
    once: "content",
  },
  "invitations.create": {
    method: "POST",
    path: "/invitations",
    who: [dealer("admin"), inspector("admin"), buyer("admin"), operator("any")],
    once: "key",
  },
  "invitations.list": {
    method: "GET",
    path: "/organizations/:id/invitations",
    who: [dealer("admin"), inspector("admin"), buyer("admin"), operator("any")],
  },
  "invitations.revoke": {
    method: "DELETE",
    path: "/invitations/:id",
    who: [dealer("admin"), inspector("admin"), buyer("admin"), operator("any")],
  },
  "invitations.get": { method: "GET", path: "/invitations/:token", public: true, who: [] },
  "invitations.accept": {
    method: "POST",
    path: "/invitations/:token/acceptance",
    public: true,
    who: [],
    once: "content",
  },
  "tokens.create": { method: "POST", path: "/tokens", who: [anyone("self")], once: "secret" },
  "tokens.list": { method: "GET", path: "/tokens", who: [anyone("self")] },
  "tokens.revoke": { method: "DELETE", path: "/tokens/:id", who: [anyone("self")] },

  "members.change": {
    method: "PUT",
    path: "/organizations/:id/members/:account",
    who: [dealer("admin"), inspector("admin"), buyer("admin"), operator("admin")],
    once: "content",
  },
  "members.remove": {
    method: "DELETE",
    path: "/organizations/:id/members/:account",
    who: [dealer("own"), inspector("own"), buyer("own"), operator("own")],
  },
} as const satisfies Readonly<Record<string, Access>>;
