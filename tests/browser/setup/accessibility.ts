import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type axe from "axe-core";
import type { Page, Request } from "playwright-core";
import { desk, keepPicture, phone, settle } from "./pages.ts";

declare global {
  interface Window {
    /** Once its code is read. */
    readonly axe: typeof axe;
  }
}

/** The same code as its package runs, in half as many bytes: a page has to read it first. */
const axeSource = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** Web Content Accessibility Guidelines 2.2, levels A and AA, and axe's good practice. */
const rules = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/** A phone in the dark and a desk in the light: between them both layouts and both palettes. */
export const looks = [
  { ...phone, colorScheme: "dark" },
  { ...desk, colorScheme: "light" },
] as const;

type Violation = { readonly id: string; readonly help: string; readonly first: string };

/** What axe finds. Its code is read by a page once, however often the page is looked at: reading it takes longer than looking. */
async function violatedOn(page: Page): Promise<readonly Violation[]> {
  if (!(await page.evaluate(() => "axe" in window))) await page.evaluate(axeSource);
  return page.evaluate(async (values) => {
    const { violations } = await window.axe.run(document, {
      runOnly: { type: "tag", values },
      resultTypes: ["violations"],
    });
    return violations.map(({ id, help, nodes }) => ({ id, help, first: nodes[0]?.html.slice(0, 200) ?? "" }));
  }, rules);
}

/** What axe finds on the page as it stands, and whether it is wider than its window: one sentence each. */
export async function violationsOn(page: Page, name: string): Promise<string[]> {
  // A page whose code is still on its way is none yet.
  await page.locator("#root h1").first().waitFor();
  // What lies under a bar at the foot of the window is one turn of the wheel away, and not too small.
  await page.locator('[class*="_bar_"]').evaluateAll((bars) => {
    const held = new Set(["fixed", "sticky"]);
    for (const bar of bars) {
      if (bar instanceof HTMLElement && held.has(getComputedStyle(bar).position))
        bar.style.position = "static";
    }
  });
  const violations = await violatedOn(page);
  const where = `${name}, ${page.viewportSize()?.width ?? 0} px`;
  const wider = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  return [
    ...violations.map(({ id, help, first }) => `${where}: ${id}: ${help}: ${first}`),
    ...(wider > 0 ? [`${where}: ${wider} px wider than the window`] : []),
  ];
}

/** A list of hundreds is one line many times over: the first dozen are looked at, or every page takes a minute. */
const repeated = [
  'li[id^="entry-"]:nth-child(n+13)',
  "tr:nth-child(n+13)",
  'section[id^="item-"]:nth-of-type(n+8)',
  "article:nth-of-type(n+13)",
  "option:nth-child(n+13):not(:checked)",
].join(", ");

/** Leaves of every long list its first dozen, on a page that is looked at once more and then closed. */
export const shortenLists = (page: Page): Promise<void> =>
  page.locator(repeated).evaluateAll((elements) => elements.forEach((element) => element.remove()));

/** `npm run test:browser`: everything, and not what every run does. */
export const atLength = process.env["BROWSER"] === "full";

/** At length every screen is looked at in every look, and where pictures are kept; else in one, always the same. */
const inEveryLook = atLength || process.env["PICTURES"] !== undefined;

/** By its name, so that of the screens about half are looked at in each. */
function looksOf(name: string): readonly (typeof looks)[number][] {
  if (inEveryLook) return looks;
  const turn = Buffer.from(name).reduce((sum, byte) => sum + byte, 0) % looks.length;
  return looks.filter((_, at) => at === turn);
}

/** The same of one page in its looks; the page is turned, not loaded again. */
export async function violationsInLooks(page: Page, name: string): Promise<string[]> {
  const found: string[] = [];
  for (const { viewport, colorScheme } of looksOf(name)) {
    await page.setViewportSize(viewport);
    await page.emulateMedia({ colorScheme });
    // Colors halfway from one look to the other belong to neither.
    await settle(page);
    await keepPicture(page, `${name}-${colorScheme}`);
    found.push(...(await violationsOn(page, name)));
  }
  return found;
}

/** Waits until a page has asked for nothing for a while: what it shows by then is the whole of it. */
async function quiet(page: Page, work: () => Promise<unknown>): Promise<void> {
  const open = new Set<Request>();
  let last = 0;
  const begins = (request: Request): void => void open.add(request);
  const ends = (request: Request): void => {
    open.delete(request);
    last = performance.now();
  };
  page.on("request", begins).on("requestfinished", ends).on("requestfailed", ends);
  await work();
  last = performance.now();
  while (open.size > 0 || performance.now() - last < 400) await page.waitForTimeout(50);
  page.off("request", begins).off("requestfinished", ends).off("requestfailed", ends);
}

/** The same page about something else keeps its title where it is, and shows nobody when it has changed: one goes there by way of another. */
const isSamePage = (one: URL, other: URL): boolean => {
  const [a, b] = [one.pathname.split("/"), other.pathname.split("/")];
  return a.length === b.length && a[1] === b[1];
};

/** Goes to an address as a link within the application leads there: nothing is loaded again but what that screen asks for. From none it is loaded. */
export async function goWithin(page: Page, address: string): Promise<void> {
  const [at, to] = [new URL(page.url()), new URL(address, "http://any")];
  if (at.protocol === "about:") return loadWhole(page, address);
  if (isSamePage(at, to)) await goWithin(page, at.pathname === "/help" ? "/" : "/help");
  const old = await page.locator("#root h1").first().elementHandle();
  await quiet(page, () => page.evaluate((next) => window.history.pushState(null, "", next), address));
  await page.waitForFunction((title) => title === null || !title.isConnected, old);
  await page.locator("#root h1").first().waitFor();
}

/** Loads a page and waits until it has its title and everything it asked for. */
export async function loadWhole(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.locator("#root h1").first().waitFor();
  await page.waitForLoadState("networkidle");
}
