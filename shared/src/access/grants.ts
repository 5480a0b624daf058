/** What an entry of the access table says. */

export type OrganizationKind = "dealer" | "inspector" | "operator" | "buyer";

/** The relation to the object the route is about. `any`: no object, or one that is open to everybody of that kind. */
type Relation =
  | "any"
  /** The account, session or token is the person's own. */
  | "self"
  /** A member of the organization that the object belongs to. */
  | "own"
  /** An administrator of that organization. */
  | "admin"
  /** A party to the order: the buyer who ordered, or the inspector's firm that was asked. */
  | "party"
  /** The car is listed, or the organization has it, has ordered work on it or was asked to work on it. */
  | "may-see";

type Grant = { readonly kind: OrganizationKind | "anyone"; readonly relation: Relation };

/** What a program's token may be given. Sign-in, tokens, invitations and decisions are for people only and have no scope. */
export const scopes = ["read", "vehicles", "orders", "reports", "releases"] as const;
export type Scope = (typeof scopes)[number];

export type Access = {
  readonly method: "GET" | "POST" | "PUT" | "PATCH" | "DELETE";
  /** Under `/api/v1`. */
  readonly path: `/${string}`;
  readonly public?: true;
  readonly who: readonly Grant[];
  /** Absent: never with a token. */
  readonly scope?: Scope;
  /**
   * How a repeat is kept from doing the thing twice: an `Idempotency-Key` header is asked for; `content` means that what is sent
   * carries its own identity; `secret` means the answer holds a secret and is never stored.
   */
  readonly once?: "key" | "content" | "secret";
  /** `If-Match` with the object's revision is asked for. */
  readonly ifMatch?: true;
};

const grant =
  (kind: Grant["kind"]) =>
  (relation: Relation): Grant => ({ kind, relation });
export const anyone = grant("anyone");
export const dealer = grant("dealer");
export const buyer = grant("buyer");
export const inspector = grant("inspector");
export const operator = grant("operator");
