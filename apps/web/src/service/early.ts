import type { Account } from "@evenhand/shared/http/accounts";

type Came = { readonly response: Response } | { readonly cause: unknown };
/** An answer on its way, or why there will be none; never a rejection that nobody waits for yet. */
type Coming = Promise<Came>;

/** What is asked only once another answer is there may turn out not to be asked. */
const coming = new Map<string, Promise<Came | undefined>>();
const accountAddress = "/api/v1/account";

const comparisonPage = /^\/comparisons\/(?<id>[^/]+)\/?$/;

/** The comparison whose page an address of this site opens; `undefined` for every other page. */
export const comparisonAt = (pathname: string): string | undefined =>
  comparisonPage.exec(pathname)?.groups?.["id"];

/** What a page asks of the service before it can show anything, by its address. */
interface AskedFirst {
  /** Who is signed in, and what a comparison opens with, whoever opens it. */
  readonly byAll: readonly string[];
  /** What the service gives buyers alone, asked for as soon as it has said that one of them is signed in. */
  readonly byBuyers: readonly string[];
}

/**
 * @example askedFirst("/cars") // { byAll: ["/api/v1/account"], byBuyers: [] }
 */
export const askedFirst = (pathname: string): AskedFirst => {
  const id = comparisonAt(pathname);
  if (id === undefined) return { byAll: [accountAddress], byBuyers: [] };
  const comparison = `/api/v1/comparisons/${id}`;
  return {
    byAll: [accountAddress, comparison, `${comparison}/answer`, `/api/v1/case-parts/${id}/cases`],
    byBuyers: [`${comparison}/cost`, `/api/v1/summaries?comparison=${id}&limit=10`],
  };
};

const ask = async (address: string): Coming => {
  try {
    const headers = { accept: "application/json" };
    return { response: await fetch(address, { headers, credentials: "same-origin" }) };
  } catch (cause) {
    return { cause };
  }
};

/** The answer itself stays for whoever takes it. */
const isBuyers = async (account: Came): Promise<boolean> => {
  if ("cause" in account || !account.response.ok) return false;
  const { memberships }: Account = await account.response.clone().json();
  return memberships.some(({ organization }) => organization.kind === "buyer");
};

/** Asks while the page's own code is still on its way. */
export const askEarly = (pathname: string): void => {
  const { byAll, byBuyers } = askedFirst(pathname);
  const account = ask(accountAddress);
  for (const address of byAll) coming.set(address, address === accountAddress ? account : ask(address));
  if (byBuyers.length === 0) return;
  const buys = account.then(isBuyers).catch(() => false);
  for (const address of byBuyers)
    coming.set(
      address,
      buys.then((yes) => (yes ? ask(address) : undefined)),
    );
};

/**
 * What was asked early, once; `undefined` where nothing was. Nothing asked early outlives a refusal: what nobody may read now is
 * asked for anew when somebody has signed in.
 *
 * @throws what `fetch` threw
 */
export const takeEarly = async (address: string): Promise<Response | undefined> => {
  const early = coming.get(address);
  if (early === undefined) return undefined;
  coming.delete(address);
  const came = await early;
  if (came === undefined) return undefined;
  if ("cause" in came) throw came.cause;
  if (!came.response.ok) coming.clear();
  return came.response;
};
