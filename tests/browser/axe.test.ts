import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import type { Person } from "../api/setup/person.ts";
import { useService } from "../api/setup/service.ts";
import {
  goWithin,
  loadWhole,
  shortenLists,
  violationsInEveryLook,
  violationsOn,
} from "./setup/accessibility.ts";
import { useBrowser } from "./setup/browser.ts";
import { compareDemoCar, demoPeople, stateDemoCar } from "./setup/demo-car.ts";
import { desk, openPage } from "./setup/pages.ts";
import { rawIdsIn } from "./setup/raw-ids.ts";
import { screens, type Screen } from "./setup/screens.ts";

const service = useService();
const browser = useBrowser();

/** Everybody keeps one page, and goes from screen to screen in it as a person does. */
const pages = new Map<Person, Page>();
async function pageOf(person: Person): Promise<Page> {
  const page = pages.get(person) ?? (await openPage(browser(), person));
  pages.set(person, page);
  return page;
}

async function violationsOf(screen: Screen): Promise<string[]> {
  const page = await pageOf(screen.by);
  await page.setViewportSize(desk.viewport);
  await goWithin(page, screen.address);
  await screen.before?.(page);
  const raw = rawIdsIn(await page.locator("body").innerText()).map((id) => `${screen.name}: ${id} is shown`);
  await shortenLists(page);
  const found = await violationsInEveryLook(page, screen.name);
  return [...raw, ...found];
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
  const found: string[] = [];
  for (const screen of await screens(service(), people, car, await stateDemoCar(people, "larksong"))) {
    found.push(...(await violationsOf(screen)));
  }
  expect(found).toEqual([]);
});
