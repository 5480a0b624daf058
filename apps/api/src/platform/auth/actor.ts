import type { OrganizationKind, Scope } from "@evenhand/shared/access";

export type ActorMembership = {
  readonly organization: string;
  readonly kind: OrganizationKind;
  readonly role: "admin" | "member";
};

/** Who asks: an account with its memberships, by a session or by a program's token. */
export class Actor {
  readonly account: string;
  readonly memberships: readonly ActorMembership[];
  readonly by: { readonly session: string } | { readonly token: string; readonly scopes: readonly Scope[] };

  constructor(account: string, memberships: readonly ActorMembership[], by: Actor["by"]) {
    this.account = account;
    this.memberships = memberships;
    this.by = by;
  }

  /** Kinds of organization the person belongs to. */
  get kinds(): OrganizationKind[] {
    return this.memberships.map((each) => each.kind);
  }

  /** Ids of the person's organizations, of one kind or of all. */
  organizations(kind?: OrganizationKind): string[] {
    return this.memberships
      .filter((each) => kind === undefined || each.kind === kind)
      .map((each) => each.organization);
  }

  /** Is it a dealer's or an inspection firm this account belongs to? */
  worksFor(organization: string): boolean {
    return [...this.organizations("dealer"), ...this.organizations("inspector")].includes(organization);
  }

  isAdmin(organization: string): boolean {
    return this.memberships.some((each) => each.organization === organization && each.role === "admin");
  }

  get isOperator(): boolean {
    return this.kinds.includes("operator");
  }
}
