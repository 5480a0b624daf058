import { accessTable, type RouteId } from "@evenhand/shared/access";
import type { Account } from "@evenhand/shared/http/accounts";
import { isKind } from "./queries";

/** Is it ever open to people of this account's kinds? The service asks again, for the very object. */
export const mayEver = (account: Account | null, route: RouteId): boolean =>
  accessTable[route].who.some(({ kind }) => (kind === "anyone" ? account !== null : isKind(account, kind)));
