import { z } from "zod";
import { scopes } from "../access.ts";
import { Instant, ObjectId } from "../identifier.ts";
import { nameOf } from "../names.ts";
import { Zone } from "../zone.ts";
import { OrganizationName, OrganizationSeen } from "./organizations.ts";
import { Created, pageOf, PageQuery, type Contract } from "./paging.ts";

export const Email = z.email().max(254);
/** At least 12 characters, any of them; long ones are welcome. */
export const NewPassword = z.string().min(12, "at least 12 characters").max(200);
export const MemberRole = z.enum(["admin", "member"]);
export type MemberRole = z.infer<typeof MemberRole>;

export const Membership = z.strictObject({ organization: OrganizationSeen, role: MemberRole });
export type Membership = z.infer<typeof Membership>;

export const Account = z.strictObject({
  id: ObjectId,
  name: z.string(),
  email: z.string(),
  memberships: z.array(Membership),
  /** Notices not read yet; 100 stands for that many or more. */
  unread: z.int().min(0).max(100),
});
export type Account = z.infer<typeof Account>;

export const SignInRequest = z.strictObject({ email: Email, password: z.string().min(1).max(200) });
export type SignInRequest = z.infer<typeof SignInRequest>;
/** The session itself travels in the cookie only. */
export const SignedIn = z.strictObject({ account: Account });
export type SignedIn = z.infer<typeof SignedIn>;

export const SessionSeen = z.strictObject({
  id: ObjectId,
  createdAt: Instant,
  lastSeenAt: Instant,
  expiresAt: Instant,
  /** Browser and system in a few words, as the browser named itself. */
  device: z.string(),
  current: z.boolean(),
});
export type SessionSeen = z.infer<typeof SessionSeen>;

export const InvitationRequest = z.strictObject({ email: Email, organization: ObjectId, role: MemberRole });
export type InvitationRequest = z.infer<typeof InvitationRequest>;
/** `known`: the address already has an account, whose password accepts the invitation. */
export const InvitationSeen = z.strictObject({
  organization: OrganizationSeen,
  email: z.string(),
  role: MemberRole,
  expiresAt: Instant,
  known: z.boolean(),
});
export type InvitationSeen = z.infer<typeof InvitationSeen>;
export const AcceptanceRequest = z.strictObject({
  name: OrganizationName,
  password: NewPassword,
  /** Of the device, for a new account: on its clock gathered news comes in the morning. */
  zone: Zone.optional(),
});
export type AcceptanceRequest = z.infer<typeof AcceptanceRequest>;

/** An invitation that still holds, as the organization's administrators see it. Its secret is in the letter only. */
export const OpenInvitation = z.strictObject({
  id: ObjectId,
  email: z.string(),
  role: MemberRole,
  createdAt: Instant,
  expiresAt: Instant,
});
export type OpenInvitation = z.infer<typeof OpenInvitation>;

export const MemberChange = z.strictObject({ role: MemberRole });
export type MemberChange = z.infer<typeof MemberChange>;

/** The password that holds today; at most as long as a new one may be, since every character costs. */
const CurrentPassword = z.string().min(1).max(200);
export const PasswordChange = z.strictObject({ current: CurrentPassword, next: NewPassword });
export type PasswordChange = z.infer<typeof PasswordChange>;
export const AccountClosure = z.strictObject({ password: CurrentPassword });
export type AccountClosure = z.infer<typeof AccountClosure>;
export const PasswordResetRequest = z.strictObject({ email: Email });
export type PasswordResetRequest = z.infer<typeof PasswordResetRequest>;
/** What the holder of the mailed link is told. */
export const PasswordResetSeen = z.strictObject({ email: z.string(), expiresAt: Instant });
export type PasswordResetSeen = z.infer<typeof PasswordResetSeen>;
export const PasswordResetUse = z.strictObject({ password: NewPassword });
export type PasswordResetUse = z.infer<typeof PasswordResetUse>;

export const Scope = z.enum(scopes);
export const TokenRequest = z.strictObject({
  name: nameOf(100),
  scopes: z.array(Scope).min(1),
  /** At most a year ahead. */
  expires: Instant,
});
export type TokenRequest = z.infer<typeof TokenRequest>;
/** `token` is shown once and stored only as a hash. */
export const TokenCreated = z.strictObject({ id: ObjectId, token: z.string() });
export type TokenCreated = z.infer<typeof TokenCreated>;
export const TokenSeen = z.strictObject({
  id: ObjectId,
  name: z.string(),
  scopes: z.array(Scope),
  createdAt: Instant,
  expires: Instant,
  lastUsedAt: Instant.nullable(),
});
export type TokenSeen = z.infer<typeof TokenSeen>;

export const accountContracts = {
  "sessions.create": { body: SignInRequest, status: 201, answer: SignedIn },
  "sessions.end": { status: 204, answer: null },
  "sessions.list": { query: PageQuery, status: 200, answer: pageOf(SessionSeen) },
  "sessions.revoke": { status: 204, answer: null },
  "sessions.endAll": { status: 204, answer: null },
  "account.changePassword": { body: PasswordChange, status: 204, answer: null },
  "account.close": { body: AccountClosure, status: 204, answer: null },
  "passwordResets.request": { body: PasswordResetRequest, status: 204, answer: null },
  "passwordResets.get": { status: 200, answer: PasswordResetSeen },
  "passwordResets.use": { body: PasswordResetUse, status: 204, answer: null },
  "invitations.list": { query: PageQuery, status: 200, answer: pageOf(OpenInvitation) },
  "invitations.revoke": { status: 204, answer: null },
  "members.change": { body: MemberChange, status: 204, answer: null },
  "members.remove": { status: 204, answer: null },
  "account.get": { status: 200, answer: Account },
  "invitations.create": { body: InvitationRequest, status: 201, answer: Created },
  "invitations.get": { status: 200, answer: InvitationSeen },
  "invitations.accept": { body: AcceptanceRequest, status: 201, answer: Created },
  "tokens.create": { body: TokenRequest, status: 201, answer: TokenCreated },
  "tokens.list": { query: PageQuery, status: 200, answer: pageOf(TokenSeen) },
  "tokens.revoke": { status: 204, answer: null },
} as const satisfies Record<string, Contract>;
