import type { Account, Membership } from "@evenhand/shared/http/accounts";

/** Where somebody works that may have figures of its own. */
export const firmsOf = (account: Account | null): readonly Membership[] =>
  account?.memberships.filter(({ organization: { kind } }) => kind === "dealer" || kind === "inspector") ??
  [];
