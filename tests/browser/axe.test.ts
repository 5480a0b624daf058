import { AxeBuilder } from "@axe-core/playwright";
import type { BrowserContextOptions } from "playwright-core";
import { expect, test } from "vitest";
import { useService } from "../api/setup/service.ts";
import { useBrowser } from "./setup/browser.ts";
import { compareDemoCar, demoPeople, stateDemoCar } from "./setup/demo-car.ts";
import { screens, type Screen } from "./setup/screens.ts";
import { signedIn } from "./setup/signed-in.ts";

const service = useService();
const browser = useBrowser();

/** A list of hundreds is one line many times over: the first dozen are looked at, or every page takes a minute. */
const repeated = [
  'li[id^="entry-"]:nth-child(n+13)',
  "tr:nth-child(n+13)",
  'section[id^="item-"]:nth-child(n+13)',
];

/** Web Content Accessibility Guidelines 2.2, levels A and AA. */
const rules = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

const seen: readonly BrowserContextOptions[] = [
  { viewport: { width: 360, height: 780 }, colorScheme: "dark" },
  { viewport: { width: 1440, height: 1000 }, colorScheme: "light" },
];

async function violationsOn(screen: Screen, options: BrowserContextOptions): Promise<string[]> {
  const context = await signedIn(browser(), screen.by, options);
  const page = await context.newPage();
  await page.goto(screen.address);
  await page.waitForLoadState("networkidle");
  await page.locator("h1").first().waitFor();
  await screen.then?.(page);
  const check = new AxeBuilder({ page }).withTags(rules);
  for (const selector of repeated) check.exclude(selector);
  const { violations } = await check.analyze();
  await context.close();
  const where = `${screen.name}, ${options.viewport?.width ?? 0} px ${options.colorScheme ?? ""}`;
  return violations.map(
    ({ id, help, nodes }) => `${where}: ${id}: ${help}: ${nodes[0]?.html.slice(0, 200) ?? ""}`,
  );
}

test("every screen keeps the rules of WCAG 2.2 AA that axe can check", async () => {
  const people = await demoPeople(service());
  const car = await compareDemoCar(people, "sovrano");
  const all = await screens(people, car, await stateDemoCar(people, "larksong"));
  const found: string[] = [];
  for (const options of seen) {
    for (const screen of all) found.push(...(await violationsOn(screen, options)));
  }
  expect(found).toEqual([]);
});
