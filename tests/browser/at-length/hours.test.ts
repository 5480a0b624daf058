import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import type { Person } from "../../api/setup/person.ts";
import { useService } from "../../api/setup/service.ts";
import { bookingScene } from "../setup/booking-scene.ts";
import { useBrowser } from "../setup/browser.ts";
import { desk, keepPicture, openPage } from "../setup/pages.ts";

const site = process.env["SITE_FOLDER"];
const service = useService(site === undefined ? {} : { environment: { SITE_FOLDER: site } });
const browser = useBrowser();
const pageOf = (person: Person): Promise<Page> => openPage(browser(), person, desk);

test("an inspector's week is changed, tried before it is kept, and a mistake is named", async () => {
  const scene = await bookingScene(service());
  const page = await pageOf(scene.inspector);
  await page.goto(`/calendars/${scene.calendar}`);
  const hours = page.getByRole("group", { name: "Hours 1" });
  await hours.getByLabel("From").fill("09:00");
  await hours.getByRole("checkbox", { name: "Fri" }).uncheck();
  await page.getByLabel("A visit", { exact: true }).fill("much");
  await page.getByRole("button", { name: "Save" }).click();
  await page.getByText(/^Check A visit/).waitFor();
  await page.getByLabel("A visit", { exact: true }).fill("455.50");
  await keepPicture(page, "calendar-tried");
  await page.getByRole("button", { name: "Save" }).click();
  await page.getByText("Saved.", { exact: true }).waitFor();
  await page.getByText("open 9:00 AM – 7:00 PM").first().waitFor();
  expect(await page.getByText("open 6:30 AM").count()).toBe(0);
  await keepPicture(page, "calendar-saved");
  const seen = await scene.inspector.does("calendars.get", { path: { id: scene.calendar } });
  expect(seen.fees.perVisit).toBe(45_550);
  expect(seen.hours.open[0]?.opens).toMatch(/T09:00/);
  expect(seen.hours.open[0]?.rrule).toMatch(/BYDAY=MO,TU,WE,TH$/);
});

test("a dealer's yard without access on a day is offered to nobody that day", async () => {
  const scene = await bookingScene(service());
  const { offers } = await scene.buyer.does("offers.list", { path: { id: scene.vehicle } });
  const day = offers[0]?.start.slice(0, 10) ?? "";
  const page = await pageOf(scene.dealer);
  await page.goto(`/sites/${scene.site}`);
  await page.getByRole("button", { name: "Add a time" }).click();
  const closure = page.getByRole("group", { name: "Time without access 1" });
  await closure.getByLabel("From").fill(`${day}T00:00`);
  await closure.getByLabel("Until").fill(`${day}T23:59`);
  await closure.getByLabel("Why").fill("Auction in the yard");
  await page.getByRole("button", { name: "Add a lift" }).click();
  await page.getByLabel("Name of lift 3").fill("Old hoist");
  await page.getByRole("button", { name: "Save" }).click();
  await page.getByText("Saved.", { exact: true }).waitFor();
  await keepPicture(page, "site-saved");
  const seen = await scene.dealer.does("sites.get", { path: { id: scene.site } });
  expect(seen.bays.map(({ name }) => name)).toEqual(["North lift", "South lift", "Old hoist"]);
  const after = await scene.buyer.does("offers.list", { path: { id: scene.vehicle } });
  expect(after.offers.filter(({ start }) => start.startsWith(day))).toEqual([]);
  const why = await scene.buyer.does("offers.explain", {
    path: { id: scene.vehicle },
    query: { date: day },
  });
  expect(why.hours.flatMap(({ site: reasons }) => reasons.map(({ code }) => code))).toContain(
    "dealer-closed",
  );
});
