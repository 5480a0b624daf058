import type { Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { monday, newClock } from "../../api/setup/booking-story.ts";
import { useService } from "../../api/setup/service.ts";
import type { Person } from "../../api/setup/person.ts";
import { loadWhole } from "../setup/accessibility.ts";
import { useBrowser } from "../setup/browser.ts";
import { casesScene } from "../setup/cases-scene.ts";
import { holds } from "../setup/holds.ts";
import { desk, east, keepPicture, openPage, phone } from "../setup/pages.ts";

const service = useService({ clock: newClock(), emptyBetween: false });
const browser = useBrowser();
let scene: Awaited<ReturnType<typeof casesScene>>;
beforeAll(async () => {
  scene = await casesScene(service());
});

const open = (person: Person): Promise<Page> => openPage(browser(), person, { ...desk, ...east }, monday);

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
