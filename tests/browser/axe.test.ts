import { expect, test } from "vitest";
import { useService } from "../api/setup/service.ts";
import { loadWhole, shortenLists, violationsInEveryLook } from "./setup/accessibility.ts";
import { useBrowser } from "./setup/browser.ts";
import { compareDemoCar, demoPeople, stateDemoCar } from "./setup/demo-car.ts";
import { openPage } from "./setup/pages.ts";
import { rawIdsIn } from "./setup/raw-ids.ts";
import { screens, type Screen } from "./setup/screens.ts";

const service = useService();
const browser = useBrowser();

async function violationsOf(screen: Screen): Promise<string[]> {
  const page = await openPage(browser(), screen.by);
  await loadWhole(page, screen.address);
  await screen.before?.(page);
  const raw = rawIdsIn(await page.locator("body").innerText()).map((id) => `${screen.name}: ${id} is shown`);
  await shortenLists(page);
  const found = await violationsInEveryLook(page, screen.name);
  await page.context().close();
  return [...raw, ...found];
}

test("every screen keeps the rules of WCAG 2.2 AA that axe can check, fits a phone, and shows nobody an id", async () => {
  const people = await demoPeople(service());
  const car = await compareDemoCar(people, "sovrano");
  const found: string[] = [];
  for (const screen of await screens(service(), people, car, await stateDemoCar(people, "larksong"))) {
    found.push(...(await violationsOf(screen)));
  }
  expect(found).toEqual([]);
});
