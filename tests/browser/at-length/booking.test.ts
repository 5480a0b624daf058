import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import type { Person } from "../../api/setup/person.ts";
import { useService } from "../../api/setup/service.ts";
import { makePerson } from "../../api/setup/world.ts";
import { bookingScene } from "../setup/booking-scene.ts";
import {
  requestHour,
  screensBefore,
  screensOf,
  takeAccepted,
  takeRequested,
} from "../setup/booking-screens.ts";
import { useBrowser } from "../setup/browser.ts";
import { desk, east, keepPicture, openPage } from "../setup/pages.ts";
import type { Screen } from "../setup/screens.ts";
import { violationsOnScreens } from "../setup/sweep.ts";

const service = useService();
const browser = useBrowser();

const pageOf = (person: Person): Promise<Page> => openPage(browser(), person, { ...desk, ...east });

const nextMonday = (): string => {
  const date = new Date();
  date.setUTCDate(date.getUTCDate() + ((8 - date.getUTCDay()) % 7 || 7) + 7);
  return date.toISOString().slice(0, 10);
};

test("an hour that somebody else took meanwhile is refused with hours that are free, and one of them can be taken", async () => {
  const scene = await bookingScene(service());
  const other = await makePerson(service(), "buyer", "Anselm Oduya-Birch");
  const page = await pageOf(scene.buyer);
  await page.goto(`/cars/${scene.vehicle}/hours`);
  await page
    .getByRole("button", { name: /Varga-Reyes, \$/ })
    .first()
    .click();
  await page.getByRole("button", { name: "Hold this hour for 10 minutes" }).waitFor();
  await requestHour({ ...scene, buyer: other });
  await page.getByRole("button", { name: "Hold this hour for 10 minutes" }).click();
  const refusal = page.getByRole("alert");
  await refusal.getByText("Somebody else has that hour now").waitFor();
  await refusal.getByText("These are free at this moment:").waitFor();
  await keepPicture(page, "booking-lost");
  await refusal.getByRole("button").first().click();
  await page.getByText(/You hold this hour until/).waitFor();
  const { items } = await scene.buyer.does("appointments.list", {});
  expect(items.map(({ state }) => state)).toEqual(["held"]);
});

test("a buyer moves a visit and the hour that was given up stays in its history, then withdraws and sees what it settles", async () => {
  const scene = await bookingScene(service());
  const id = await requestHour(scene);
  await takeRequested(scene, id);
  const page = await pageOf(scene.buyer);
  await page.goto(`/appointments/${id}`);
  await page.getByRole("link", { name: "Move the visit" }).click();
  await page
    .getByRole("button", { name: /Varga-Reyes, \$/ })
    .nth(30)
    .click();
  await page.getByRole("button", { name: "Move the visit to this hour" }).click();
  await page.getByText(/given up:/).waitFor();
  await keepPicture(page, "booking-moved");
  await page.getByRole("radio", { name: "The buyer withdraws" }).check();
  await page.getByRole("button", { name: "Cancel the visit" }).click();
  await page.getByText("It was cancelled.", { exact: false }).waitFor();
  await page.getByRole("link", { name: "Find another hour" }).first().waitFor();
  const { state, history } = await scene.buyer.does("appointments.get", { path: { id } });
  expect(state).toBe("cancelled");
  expect(history.map((each) => each.move)).toEqual(["hold", "request", "reschedule", "cancel"]);
});

test("every screen of booking keeps the rules of WCAG 2.2 AA that axe can check, and fits a phone", async () => {
  const scene = await bookingScene(service());
  const found: string[] = [];
  const check = async (screens: readonly Screen[]): Promise<void> => {
    found.push(...(await violationsOnScreens(screens, pageOf)));
  };
  await check(screensBefore(scene, nextMonday()));
  const id = await requestHour(scene);
  await check(screensOf(scene, "held", id).slice(0, 1));
  await takeRequested(scene, id);
  await check(screensOf(scene, "requested", id).slice(1, 2));
  await takeAccepted(scene, id);
  await check(screensOf(scene, "accepted", id));
  const { start } = await scene.inspector.does("appointments.get", { path: { id } });
  await check([
    { name: "booking-day", by: scene.inspector, address: `/day?date=${start.slice(0, 10)}` },
    { name: "booking-appointments", by: scene.inspector, address: "/appointments" },
  ]);
  expect(found).toEqual([]);
});
