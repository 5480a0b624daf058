import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { useService } from "../api/setup/service.ts";
import { atLength, loadWhole, violationsOn } from "./setup/accessibility.ts";
import { useBrowser } from "./setup/browser.ts";
import { compareDemoCar, demoPeople, stateDemoCar } from "./setup/demo-car.ts";
import { openPage } from "./setup/pages.ts";
import { rawIdsIn } from "./setup/raw-ids.ts";
import { screens, type Screen } from "./setup/screens.ts";
import { violationsOnScreens } from "./setup/sweep.ts";

const service = useService();
const browser = useBrowser();

async function idsShown(page: Page, { name }: Screen): Promise<string[]> {
  return rawIdsIn(await page.locator("body").innerText()).map((id) => `${name}: ${id} is shown`);
}

test("what is planted is found", async () => {
  const { dealer } = await demoPeople(service());
  const page = await openPage(browser(), dealer);
  await loadWhole(page, "/help");
  await page.locator("main").evaluate((main) => {
    main.insertAdjacentHTML(
      "beforeend",
      `<img src="/a.png"><p style="color: #ccc; background: #fff">Faint</p>`,
    );
    main.style.minWidth = "4000px";
  });
  const found = (await violationsOn(page, "help")).join("\n");
  for (const each of [/image-alt/, /color-contrast/, /px wider than the window/]) expect(found).toMatch(each);
});

test("every screen keeps the rules of WCAG 2.2 AA that axe can check, fits a phone, and shows nobody an id", async () => {
  const people = await demoPeople(service());
  const car = await compareDemoCar(people, "sovrano");
  const all = await screens(service(), people, car, await stateDemoCar(people, "larksong"));
  const here = atLength ? all : all.filter((screen) => screen.atLength !== true);
  const found = await violationsOnScreens(here, (person) => openPage(browser(), person), idsShown);
  expect(found).toEqual([]);
});
