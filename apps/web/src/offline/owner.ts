/**
 * What this device keeps of unsealed reports belongs to an account. A page, once loaded, is one account's: when another one is
 * signed in, it is loaded anew, so that nothing that still runs for the first writes into what belongs to the second.
 */

let owner: string | null = null;

/**
 * Takes the page for an account.
 *
 * @returns whether it is that account's; if not, the page has to be loaded anew
 */
export const takePageFor = (account: string): boolean => {
  owner ??= account;
  return owner === account;
};

/** Whose page it is, as soon as somebody was signed in on it. */
export const pageOwner = (): string | null => owner;

/** The name of an account's own store on this device; only ever opened on that account's page. */
export const storeName = (account: string | null): string => `evenhand-sheet-${account ?? "nobody"}`;
