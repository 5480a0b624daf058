import type { Browser, BrowserContext, BrowserContextOptions } from "playwright-core";
import type { Person } from "../../api/setup/person.ts";

/** A browser of its own, signed in as that person without going through the page. */
export async function signedIn(
  browser: Browser,
  person: Person,
  options: BrowserContextOptions = {},
): Promise<BrowserContext> {
  const context = await browser.newContext({ baseURL: person.url, ...options });
  const secret = person.credentials["cookie"]?.replace(/^evenhand=/, "") ?? "";
  await context.addCookies([
    { name: "evenhand", value: secret, url: person.url, httpOnly: true, sameSite: "Lax" },
  ]);
  return context;
}
