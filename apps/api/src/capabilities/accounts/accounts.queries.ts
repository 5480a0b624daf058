import { pageStatement } from "../../platform/database/page.ts";
import { unreadCount } from "../notices/index.ts";

/** `$1` organization, `$2` cursor, `$3` limit, `$4` now. */
export const openInvitations = pageStatement(
  `SELECT * FROM invitation WHERE organization_id = $1 AND accepted_at IS NULL AND revoked_at IS NULL
   AND expires_at > $4 AND id < $2 ORDER BY id DESC LIMIT $3 + 1`,
  `json_build_object('id', page.id, 'email', page.email, 'role', page.role,
    'createdAt', instant(page.created_at), 'expiresAt', instant(page.expires_at))`,
  "$3",
);

/** JSON of the account in scope, with its memberships and the count of its unread notices: every page asks for it, and for no more. */
export const accountJson = `json_build_object(
  'id', account.id, 'name', account.name, 'email', account.email,
  'memberships', coalesce((
    SELECT json_agg(json_build_object(
      'organization', json_build_object('id', o.id, 'name', o.name, 'kind', o.kind), 'role', m.role) ORDER BY o.id)
    FROM membership m JOIN organization o ON o.id = m.organization_id WHERE m.account_id = account.id), '[]'),
  'unread', ${unreadCount("account.id")})`;

export const sessionItem = `json_build_object(
  'id', page.id, 'createdAt', instant(page.created_at), 'lastSeenAt', instant(page.last_seen_at),
  'expiresAt', instant(page.expires_at), 'device', page.device, 'current', page.id = $4)`;

export const tokenItem = `json_build_object(
  'id', page.id, 'name', page.name, 'scopes', page.scopes, 'createdAt', instant(page.created_at),
  'expires', instant(page.expires_at), 'lastUsedAt', instant(page.last_used_at))`;

export const invitationJson = `json_build_object(
  'organization', json_build_object('id', o.id, 'name', o.name, 'kind', o.kind),
  'email', i.email, 'role', i.role, 'expiresAt', instant(i.expires_at),
  'known', EXISTS (SELECT 1 FROM account a WHERE a.email = i.email))`;
