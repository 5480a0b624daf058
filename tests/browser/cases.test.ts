import type { Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { monday, newClock } from "../api/setup/booking-story.ts";
import { useService } from "../api/setup/service.ts";
import type { Person } from "../api/setup/person.ts";
import { loadWhole, violationsInEveryLook } from "./setup/accessibility.ts";
import { useBrowser } from "./setup/browser.ts";
import { casesScene } from "./setup/cases-scene.ts";
import { desk, east, keepPicture, openPage, phone } from "./setup/pages.ts";
import { rawIdsIn } from "./setup/raw-ids.ts";

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

/** The first screen keeps axe's rules in every look, fits a phone, and shows nobody an id. */
async function holds(page: Page, name: string): Promise<void> {
  expect(rawIdsIn(await page.locator("body").innerText())).toEqual([]);
  expect(await violationsInEveryLook(page, name)).toEqual([]);
}

/** One press of the first thing that is theirs to do, on a phone, leads to where it is done. */
async function pressFirst(page: Page, words: string, address: RegExp, there: string | RegExp): Promise<void> {
  await page.setViewportSize(phone.viewport);
  await page.goto("/");
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
  await page.goto("/");
  await part(page, "Yours to do").getByRole("link", { name: "See the complaint" }).click();
  await page.waitForURL(/\/complaints\//);
});

test("a case shows its way, what waits and its parts, each with a page of its own; old addresses lead to cases", async () => {
  const page = await open(scene.buyer);
  for (const name of ["asked", "released", "approved"] as const) {
    await loadWhole(page, `/cases/${scene.cases[name]}`);
    await holds(page, `case-${name}`);
    await page.setViewportSize(desk.viewport);
  }
  await page.getByRole("heading", { name: "Before money moves" }).waitFor();
  await page.goto(`/cases/${scene.cases.asked}`);
  await page.getByRole("listitem").filter({ hasText: "Book" }).first().waitFor();
  expect(await page.locator('[aria-current="step"]').textContent()).toBe("Book");
  await page.getByRole("link", { name: "Does the horn sound, and at both buttons?" }).click();
  await page.waitForURL(/\/questions\//);
  await page.getByRole("link", { name: "1961 Uthwick Rowan — the case" }).click();
  await page.waitForURL(`/cases/${scene.cases.asked}`);
  for (const address of ["/orders", "/cases"]) {
    await page.goto(address);
    await page.getByRole("heading", { name: "Yours to do" }).waitFor();
    expect(new URL(page.url()).pathname).toBe("/");
  }
});

/** The line over the title leads to the case, and fits. */
async function leadsTo(on: Page, name: string, address: string): Promise<string | null> {
  await on.goto(address);
  const link = on.getByRole("link", { name: / — the case$/ });
  await link.waitFor();
  for (const size of [phone, desk]) {
    await on.setViewportSize(size.viewport);
    expect(await on.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      size.viewport.width,
    );
    await keepPicture(on, `back-from-${name}`, false);
  }
  return link.getAttribute("href");
}

test("every page of a case leads to it with one press, whatever the width", async () => {
  const { buyer, dealer, cases } = scene;
  const page = await open(buyer);
  const parts = async (name: "approved" | "released" | "held") =>
    await buyer.does("cases.get", { path: { id: cases[name] } });
  const [approved, released, held] = [await parts("approved"), await parts("released"), await parts("held")];
  const pages = [
    [cases.approved, "comparison", `/comparisons/${approved.parts.inspections[0]?.comparison}`],
    [cases.approved, "inspection", `/report-versions/${approved.parts.inspections[0]?.id}`],
    [cases.approved, "summary", `/summaries/${approved.parts.summaries[0]?.id}`],
    [cases.approved, "visit-without-hour", `/orders/${approved.parts.visits[0]?.order}`],
    [cases.released, "released", `/released?vehicle=${released.car.id}`],
    [cases.held, "visit", `/appointments/${held.parts.visits[0]?.appointment}`],
  ] as const;
  for (const [id, name, address] of pages) expect(await leadsTo(page, name, address)).toBe(`/cases/${id}`);
  const laid = `/released?vehicle=${released.car.id}`;
  expect(await leadsTo(await open(dealer), "released-of-dealer", laid)).toBe(`/cases/${cases.released}`);
});

test("help tells the way and leads to every list, and the operator's queues to each of theirs", async () => {
  const page = await open(scene.dealer);
  await loadWhole(page, "/help");
  await holds(page, "help");
  await page.getByRole("link", { name: "Questions" }).click();
  await page.getByRole("heading", { name: "Questions", level: 1 }).waitFor();
  await expect.poll(() => page.getByRole("link", { name: /horn/i }).count()).toBe(2);
  const operators = await open(scene.operator);
  await loadWhole(operators, "/queues");
  await holds(operators, "queues");
});
