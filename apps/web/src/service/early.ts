/** An answer on its way, or why there will be none; never a rejection that nobody waits for yet. */
type Coming = Promise<{ readonly response: Response } | { readonly cause: unknown }>;

const coming = new Map<string, Coming>();

const comparisonPage = /^\/comparisons\/(?<id>[^/]+)\/?$/;

/** The comparison whose page an address of this site opens; `undefined` for every other page. */
export const comparisonAt = (pathname: string): string | undefined =>
  comparisonPage.exec(pathname)?.groups?.["id"];

/**
 * What a page asks of the service before it can show anything, by its address: who is signed in, and what a comparison opens with.
 *
 * @example askedFirst("/cars") // ["/api/v1/account"]
 */
export const askedFirst = (pathname: string): readonly string[] => {
  const id = comparisonAt(pathname);
  const ofPage = id === undefined ? [] : [`/api/v1/comparisons/${id}`, `/api/v1/comparisons/${id}/answer`];
  return ["/api/v1/account", ...ofPage];
};

const ask = async (address: string): Coming => {
  try {
    const headers = { accept: "application/json" };
    return { response: await fetch(address, { headers, credentials: "same-origin" }) };
  } catch (cause) {
    return { cause };
  }
};

/** Asks while the page's own code is still on its way. */
export const askEarly = (pathname: string): void => {
  for (const address of askedFirst(pathname)) coming.set(address, ask(address));
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
  if ("cause" in came) throw came.cause;
  if (!came.response.ok) coming.clear();
  return came.response;
};
