import type { Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { monday, newClock } from "../api/setup/booking-story.ts";
import { useService } from "../api/setup/service.ts";
import type { Person } from "../api/setup/person.ts";
import { loadWhole } from "./setup/accessibility.ts";
import { useBrowser } from "./setup/browser.ts";
import { casesScene } from "./setup/cases-scene.ts";
import { holds } from "./setup/holds.ts";
import { desk, east, openPage, phone } from "./setup/pages.ts";

const service = useService({ clock: newClock(), emptyBetween: false });
const browser = useBrowser();
let scene: Awaited<ReturnType<typeof casesScene>>;
beforeAll(async () => {
  scene = await casesScene(service());
});

const open = (person: Person): Promise<Page> => openPage(browser(), person, { ...desk, ...east }, monday);
const part = (page: Page, name: string) =>
  page
    .locator("section")
    .filter({ has: page.getByRole("heading", { name: new RegExp(`^${name}`), level: 2 }) });
/** The cars of a part of the home, from above. */
const carsIn = (page: Page, name: string): Promise<string[]> =>
  part(page, name)
    .getByRole("link", { name: /^\d{4} / })
    .allTextContents();
const menu = (page: Page): Promise<string[]> =>
  page.getByRole("navigation", { name: "Main menu" }).getByRole("link").allTextContents();

/** One press of the first thing that is theirs to do, on a phone, leads to where it is done. */
async function pressFirst(page: Page, words: string, address: RegExp, there: string | RegExp): Promise<void> {
  await page.setViewportSize(phone.viewport);
  if (new URL(page.url()).pathname !== "/") await page.goto("/");
  const first = part(page, "Yours to do").getByRole("listitem").first();
  await first.getByRole("link", { name: words }).click();
  await page.waitForURL(address);
  await page.getByRole("heading", { name: there }).first().waitFor();
}

test("a buyer's home: what is theirs by deadline, what others owe, the rest, and one press to the hour that runs out", async () => {
  const page = await open(scene.buyer);
  await loadWhole(page, "/");
  expect(await menu(page)).toEqual(["Cases", "Cars", "Help"]);
  expect(await carsIn(page, "Yours to do")).toEqual([
    "1958 Uthwick Alder",
    "1969 Ildmere Contralto",
    "1963 Pellham Osprey",
    "1949 Brackwater Six",
  ]);
  await part(page, "Yours to do")
    .getByText("lines of the list before money moves have no answer yet")
    .waitFor();
  expect((await carsIn(page, "Waiting on others")).toSorted()).toEqual([
    "1955 Pellham Gannet",
    "1961 Uthwick Rowan",
    "1967 Corvane Tern",
    "1971 Corvane Heron",
    "1984 Ildmere Sovrano",
  ]);
  expect(await carsIn(page, "The rest")).toEqual([]);
  await holds(page, "home-of-buyer");
  await pressFirst(page, "Ask for the hour", /\/appointments\//, /Uthwick Alder/);
});

test("a dealer's home: access, questions and items that wait, with the deadline first", async () => {
  const page = await open(scene.dealer);
  await loadWhole(page, "/");
  expect(await menu(page)).toEqual(["Cases", "Cars", "Sites", "Help"]);
  expect(await carsIn(page, "Yours to do")).toEqual([
    "1967 Corvane Tern",
    "1955 Pellham Gannet",
    "1961 Uthwick Rowan",
    "1952 Brackwater Nine",
  ]);
  await part(page, "Yours to do").getByText("Your statement is begun and not sealed").waitFor();
  expect(await carsIn(page, "Waiting on others")).toEqual(["1971 Corvane Heron"]);
  expect(await page.locator("body").innerText()).not.toContain("Bea");
  await holds(page, "home-of-dealer");
  await pressFirst(page, "Give access", /\/appointments\//, /Corvane Tern/);
});

test("a dealer no buyer has come to yet is led back to the statement begun, and not told that nothing was", async () => {
  const page = await open(scene.otherDealer);
  await pressFirst(page, "Go on with the sheet", /\/reports\//, /Brackwater Nine/);
  await page.goto("/");
  await part(page, "Yours to do").getByText("1952 Brackwater Nine").waitFor();
  expect(await page.getByText("No buyer has begun anything").count()).toBe(0);
});

test("an inspector's home: hours to answer, visits ahead and visits without an hour", async () => {
  const page = await open(scene.inspector);
  await loadWhole(page, "/");
  expect(await menu(page)).toEqual(["Cases", "Cars", "Hours", "Help"]);
  expect((await carsIn(page, "Yours to do")).toSorted()).toEqual([
    "1961 Uthwick Rowan",
    "1971 Corvane Heron",
    "1984 Ildmere Sovrano",
  ]);
  expect(await carsIn(page, "Waiting on others")).toEqual(["1967 Corvane Tern"]);
  await part(page, "Yours to do").getByText("May 4, 10:15 AM EDT").waitFor();
  await holds(page, "home-of-inspector");
  await pressFirst(page, "Answer about the hour", /\/appointments\//, /Uthwick Rowan/);
});

test("an operator's home: what waits, who owes what, and no contents", async () => {
  const page = await open(scene.operator);
  await loadWhole(page, "/");
  expect(await menu(page)).toEqual(["Cases", "Cars", "Queues", "Help"]);
  await part(page, "Yours to do").getByText("Otto Fennimore").waitFor();
  expect(await page.locator("body").innerText()).not.toMatch(/Nobody came|Uthwick|Bea/);
  await part(page, "Waiting on others").getByText("waiting for the dealer’s access").waitFor();
  await holds(page, "home-of-operator");
  await part(page, "Yours to do").getByRole("link", { name: "See the complaint" }).click();
  await page.waitForURL(/\/complaints\//);
});
