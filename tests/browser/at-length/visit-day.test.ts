import type { BrowserContextOptions, Page } from "playwright-core";
import { beforeEach, describe, expect, test } from "vitest";
import { SetClock } from "../../../apps/api/src/platform/clock/index.ts";
import type { Person } from "../../api/setup/person.ts";
import { useService } from "../../api/setup/service.ts";
import { bookingScene, type BookingScene } from "../setup/booking-scene.ts";
import { requestHour, takeAccepted, takeConfirmed, takeRequested } from "../setup/booking-screens.ts";
import { useBrowser } from "../setup/browser.ts";
import { demoReport, fillInspection, stateDemoCar } from "../setup/demo-car.ts";
import { desk, east, keepPicture, openPage, phone } from "../setup/pages.ts";

const site = process.env["SITE_FOLDER"];
const clock = new SetClock(new Date());
const service = useService({ clock, ...(site === undefined ? {} : { environment: { SITE_FOLDER: site } }) });
const browser = useBrowser();
beforeEach(() => {
  clock.set(new Date());
});

/** The page of a person at the hour the service has. */
const pageOf = (person: Person, options: BrowserContextOptions = desk): Promise<Page> =>
  openPage(browser(), person, { ...options, ...east }, clock.now());

const see = (person: Person, id: string) => person.does("appointments.get", { path: { id } });

async function proposeBrief({ buyer }: BookingScene, id: string): Promise<void> {
  const page = await pageOf(buyer);
  await page.goto(`/appointments/${id}`);
  await page.getByText("Propose a change").click();
  await page.getByLabel("Search", { exact: false }).fill("door jambs");
  await page.getByRole("checkbox", { name: "Door jambs" }).check();
  await page.getByRole("button", { name: "Propose it to the inspector" }).click();
  await page.getByText("You proposed a change; the inspector has not answered yet").waitFor();
  await page.getByText("Added: Door jambs").waitFor();
  await keepPicture(page, "visit-brief-proposed");
  await page.context().close();
}

async function agreeToBrief({ inspector }: BookingScene, id: string): Promise<void> {
  const page = await pageOf(inspector, phone);
  await page.goto(`/appointments/${id}`);
  await page.getByText("The buyer proposes a change").waitFor();
  await page.getByRole("button", { name: "Agree", exact: true }).click();
  await page.getByText("The buyer proposes a change").waitFor({ state: "detached" });
  await page.context().close();
}

async function recordRoad(page: Page): Promise<void> {
  await page.getByRole("checkbox", { name: /nor any doubt of mine, keeps the car off the road/ }).check();
  await page.getByRole("button", { name: "Record, and take it on the road" }).click();
}

const stopLamp = (value: "yes" | "no") => ({
  item: "electrics.lamps",
  position: "left-stop",
  answer: { kind: "working" as const, value },
});

describe("the day of a visit", () => {
  test("a change to the brief is agreed, the visit begins, the road waits for its papers, and the sealed report closes it", async () => {
    const scene = await bookingScene(service());
    const id = await requestHour(scene);
    await takeRequested(scene, id);
    await takeAccepted(scene, id);
    await proposeBrief(scene, id);
    await agreeToBrief(scene, id);
    const agreed = await see(scene.buyer, id);
    expect(agreed.visits[0]?.brief?.items.map(({ item }) => item)).toContain("doors.jambs");
    await takeConfirmed(scene, id);
    clock.set(new Date(Date.parse(agreed.start) + 60_000));
    const page = await pageOf(scene.inspector, phone);
    await page.goto(`/appointments/${id}`);
    await page.getByText("Local law and a licensed mechanic decide", { exact: false }).first().waitFor();
    await keepPicture(page, "visit-begin");
    await page.getByRole("button", { name: "I am at the car: begin" }).click();
    await page.getByRole("heading", { name: "Before the road" }).waitFor();
    await recordRoad(page);
    const refusal = page.getByRole("alert");
    await refusal.waitFor();
    await keepPicture(page, "visit-road-wanting");
    for (const wanting of [/consent/i, /insurance/i, /plates/i, /damage/i])
      await refusal.getByText(wanting).first().waitFor();
    await page.getByLabel("Written consent of").fill("Rafe Tolliver-Ash");
    await page.getByLabel("Insurance, reference", { exact: true }).fill("GS-4471");
    await page.getByLabel("Plates, reference", { exact: true }).fill("dealer plate 12");
    await page.getByLabel("Damage is borne by").selectOption("dealer");
    const { order } = (await see(scene.inspector, id)).visits[0] ?? {};
    const report = await fillInspection(scene.inspector, order ?? "", demoReport("larksong-inspection"));
    // A plate lamp that is out, as the report has it, keeps no car off the road; a stop lamp does.
    await report.change(stopLamp("no"));
    await recordRoad(page);
    await refusal.getByText("what you found keeps it off the road: Lamps, left stop lamp").waitFor();
    await keepPicture(page, "visit-road-open");
    await report.change(stopLamp("yes"));
    await recordRoad(page);
    await refusal.waitFor({ state: "detached" });
    await page.getByText(/^written consent of Rafe Tolliver-Ash, signed/).waitFor();
    expect((await see(scene.inspector, id)).road).toMatchObject({ damageBorneBy: "dealer" });
    await keepPicture(page, "visit-under-way");
    await page.reload();
    await page.getByRole("link", { name: "On the lift", exact: true }).click();
    await page.getByRole("heading", { name: "On the lift" }).waitFor();
    await page.getByText("Before this stage: On the lift").waitFor();
    await keepPicture(page, "visit-opens-stage");
    await page.goto(`/appointments/${id}`);
    await page.getByRole("button", { name: "The report is sealed: close the visit" }).click();
    await page.getByRole("alert").waitFor();
    await keepPicture(page, "visit-not-sealed");
    await report.seal();
    expect((await see(scene.inspector, id)).state).toBe("reported");
    await page.reload();
    await page.getByText("There is nothing for you to do at the moment.").waitFor();
    await keepPicture(page, "visit-reported");
  });

  test("an inspector who did not come can be recorded once the grace is over, and not before", async () => {
    const scene = await bookingScene(service());
    const id = await requestHour(scene);
    await takeRequested(scene, id);
    await takeAccepted(scene, id);
    await takeConfirmed(scene, id);
    const { start } = await see(scene.buyer, id);
    clock.set(new Date(Date.parse(start) + 60_000));
    const page = await pageOf(scene.buyer, phone);
    await page.goto(`/appointments/${id}`);
    const record = page.getByRole("button", { name: "The inspector did not come" });
    await page.getByRole("heading", { name: "Cancel" }).waitFor();
    expect(await record.count()).toBe(0);
    clock.set(new Date(Date.parse(start) + 3_600_000));
    await page.reload();
    await record.click();
    await page.getByRole("link", { name: "Find another hour" }).first().waitFor();
    await keepPicture(page, "visit-missed");
    expect((await see(scene.buyer, id)).state).toBe("missed");
  });

  test("two cars of one dealer are looked at in one visit, each with its own brief", async () => {
    const scene = await bookingScene(service());
    const { vehicle: second } = await stateDemoCar(scene, "windrow");
    const page = await pageOf(scene.buyer);
    await page.goto(`/cars/${scene.vehicle}/hours`);
    await page.getByText(/^Times are those at/).waitFor();
    await page.getByRole("group", { name: "In the same visit" }).getByRole("checkbox").first().check();
    await page.waitForURL(new RegExp(second));
    await page
      .getByRole("button", { name: /Varga-Reyes, \$/ })
      .first()
      .click();
    await page.getByRole("button", { name: "Hold this hour for 10 minutes" }).waitFor();
    await keepPicture(page, "visit-two-cars");
    await page.getByRole("button", { name: "Hold this hour for 10 minutes" }).click();
    await page.getByText(/You hold this hour until/).waitFor();
    const id = new URL(page.url()).pathname.split("/").at(-1) ?? "";
    const seen = await see(scene.buyer, id);
    expect(seen.cars.map((car) => car.id).toSorted()).toEqual([scene.vehicle, second].toSorted());
    expect(seen.visits.every(({ brief }) => (brief?.items.length ?? 0) > 0)).toBe(true);
    await keepPicture(page, "visit-two-cars-held");
  });
});
