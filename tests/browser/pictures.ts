import { mkdirSync } from "node:fs";
import { join } from "node:path";
import type { BrowserContext, Page } from "playwright-core";
import { expect, test } from "vitest";
import { useService } from "../api/setup/service.ts";
import { useBrowser } from "./setup/browser.ts";
import { compareDemoCar, demoPeople, stateDemoCar } from "./setup/demo-car.ts";
import { screens, type Screen } from "./setup/screens.ts";
import { signedIn } from "./setup/signed-in.ts";

const service = useService();
const browser = useBrowser();
const docs = join(import.meta.dirname, "../../docs/pictures");
const sizes = [
  { width: 360, height: 1640 },
  { width: 1440, height: 1100 },
] as const;

async function settle(page: Page): Promise<void> {
  await page.waitForLoadState("networkidle");
  await page.locator("#root h1").first().waitFor();
  await page.evaluate(() => document.fonts.ready);
  await page.waitForTimeout(250);
}

async function take(context: BrowserContext, screen: Screen, path: string, fullPage: boolean): Promise<void> {
  const page = await context.newPage();
  await page.goto(screen.address);
  await settle(page);
  await screen.before?.(page);
  await page.waitForTimeout(150);
  await page.screenshot({ path, fullPage });
  await page.close();
}

test("pictures", async () => {
  const people = await demoPeople(service());
  const car = await compareDemoCar(people, "sovrano");
  const other = await stateDemoCar(people, "larksong");
  const all = await screens(service(), people, car, other);
  const folder = process.env["PICTURES"];
  const only = process.env["SCREENS"]?.split(",");
  const wanted = all.filter(({ name }) => only === undefined || only.includes(name));
  if (folder !== undefined) mkdirSync(folder, { recursive: true });
  for (const viewport of sizes) {
    for (const colorScheme of ["light", "dark"] as const) {
      if (folder === undefined && colorScheme === "dark") continue;
      const of = { viewport, colorScheme, deviceScaleFactor: viewport.width < 500 ? 2 : 1 };
      for (const screen of folder === undefined ? all.filter(({ name }) => name === "comparison") : wanted) {
        const context = await signedIn(browser(), screen.by, of);
        const path =
          folder === undefined
            ? join(docs, `${screen.name}-${viewport.width}.png`)
            : join(folder, `${screen.name}-${viewport.width}-${colorScheme}.png`);
        await take(context, screen, path, folder !== undefined && screen.whole !== false);
        await context.close();
      }
    }
  }
  expect(all.length).toBeGreaterThan(10);
});
