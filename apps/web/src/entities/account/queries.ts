import type { OrganizationKind } from "@evenhand/shared/access";
import type { Account } from "@evenhand/shared/http/accounts";
import { queryOptions, useQuery, type QueryClient } from "@tanstack/react-query";
import { call } from "../../service/client";
import { Refusal } from "../../service/refusal";

/** Who is signed in; `null` when nobody is. */
export const accountQuery = queryOptions({
  queryKey: ["account"],
  queryFn: async ({ signal }): Promise<Account | null> => {
    try {
      return await call("account.get", { signal });
    } catch (error) {
      if (error instanceof Refusal && error.problem.status === 401) return null;
      throw error;
    }
  },
  staleTime: 5 * 60_000,
});

export const useAccount = (): Account | null => useQuery(accountQuery).data ?? null;

export const isKind = (account: Account | null, kind: OrganizationKind): boolean =>
  account?.memberships.some(({ organization }) => organization.kind === kind) ?? false;

/** The organizations of one kind a person acts for. */
export const organizationsOf = (account: Account | null, kind: OrganizationKind) =>
  account?.memberships
    .filter(({ organization }) => organization.kind === kind)
    .map(({ organization }) => organization) ?? [];

/** Somebody else, or nobody, is signed in from here on: nothing the last person read stays, and who watches is told. */
export const becomes = (queries: QueryClient, account: Account | null): void => {
  queries.removeQueries({ predicate: ({ queryKey: [first] }) => first !== "account" && first !== "sheet" });
  queries.setQueryData(accountQuery.queryKey, account);
};
