import axe from "axe-core";
import type { Page } from "playwright-core";
import { desk, keepPicture, phone, settle } from "./pages.ts";

declare global {
  interface Window {
    /** Once its code is read. */
    readonly axe: typeof axe;
  }
}

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
  if (!(await page.evaluate(() => "axe" in window))) await page.evaluate(axe.source);
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
  await page.locator("h1").first().waitFor();
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

/** The same of one page in every look; the page is turned, not loaded again. */
export async function violationsInEveryLook(page: Page, name: string): Promise<string[]> {
  const found: string[] = [];
  for (const { viewport, colorScheme } of looks) {
    await page.setViewportSize(viewport);
    await page.emulateMedia({ colorScheme });
    // Colors halfway from one look to the other belong to neither.
    await settle(page);
    await keepPicture(page, `${name}-${colorScheme}`);
    found.push(...(await violationsOn(page, name)));
  }
  return found;
}

/** Loads a page and waits until it has its title and everything it asked for. */
export async function loadWhole(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.locator("h1").first().waitFor();
  await page.waitForLoadState("networkidle");
}
