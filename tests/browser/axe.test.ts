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
  'section[id^="item-"]:nth-of-type(n+8)',
  "article:nth-of-type(n+13)",
].join(", ");

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
  await screen.before?.(page);
  await page.locator(repeated).evaluateAll((elements) => elements.forEach((element) => element.remove()));
  const { violations } = await new AxeBuilder({ page }).withTags(rules).analyze();
  await context.close();
  const where = `${screen.name}, ${options.viewport?.width ?? 0} px ${options.colorScheme ?? ""}`;
  return violations.map(
    ({ id, help, nodes }) => `${where}: ${id}: ${help}: ${nodes[0]?.html.slice(0, 200) ?? ""}`,
  );
}

test.each(seen)(
  "every screen keeps the rules of WCAG 2.2 AA that axe can check: $colorScheme",
  async (options) => {
    const people = await demoPeople(service());
    const car = await compareDemoCar(people, "sovrano");
    const found: string[] = [];
    for (const screen of await screens(people, car, await stateDemoCar(people, "larksong"))) {
      found.push(...(await violationsOn(screen, options)));
    }
    expect(found).toEqual([]);
  },
);
