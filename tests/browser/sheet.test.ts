import type { BrowserContext, Page } from "playwright-core";
import { expect, test } from "vitest";
import { useService } from "../api/setup/service.ts";
import { header, makeVehicle, stated, write } from "../api/setup/story.ts";
import { makeWorld } from "../api/setup/world.ts";
import { useBrowser } from "./setup/browser.ts";
import { signedIn } from "./setup/signed-in.ts";

const service = useService();
const browser = useBrowser();

/** A dealer with a draft of a few findings. */
async function draft() {
  const { dealer } = await makeWorld(service());
  const vehicle = await makeVehicle(dealer);
  const { id } = await dealer.does("reports.state", { path: { id: vehicle }, body: header });
  await write(dealer, id, stated);
  return { dealer, id };
}

async function openHorn(context: BrowserContext, id: string): Promise<Page> {
  const page = await context.newPage();
  await page.goto(`/reports/${id}?section=electrics&open=electrics.horn%40`);
  await page.getByRole("radio", { name: "works", exact: true }).first().waitFor();
  return page;
}

const hornOf = (page: Page) => page.locator('[id="place-electrics.horn@"]');
const choose = (page: Page, answer: string) =>
  hornOf(page).getByRole("radio", { name: answer, exact: true }).check();

test("what was answered without a signal survives a killed tab and is sent when the signal returns", async () => {
  const { dealer, id } = await draft();
  const context = await signedIn(browser(), dealer);
  const page = await openHorn(context, id);
  await context.setOffline(true);
  await choose(page, "works now and then");
  await page.getByText(/No connection. 1 finding is kept on this device/).waitFor();
  await page.close();
  await context.setOffline(false);
  const again = await openHorn(context, id);
  await again.getByText("Everything is saved with the service").waitFor();
  const { report } = await dealer.does("reports.get", { path: { id } });
  expect(report.findings.find(({ item }) => item === "electrics.horn")?.answer).toEqual({
    kind: "working",
    value: "intermittent",
  });
});

test("a finding changed on two devices shows both versions, and the person says which stands", async () => {
  const { dealer, id } = await draft();
  const [phone, desk] = [await signedIn(browser(), dealer), await signedIn(browser(), dealer)];
  const [there, here] = [await openHorn(phone, id), await openHorn(desk, id)];
  await phone.setOffline(true);
  await choose(there, "works now and then");
  await there.getByText(/No connection/).waitFor();
  await choose(here, "does not work");
  const stored = async () => {
    const { report } = await dealer.does("reports.get", { path: { id } });
    return report.findings.find(({ item }) => item === "electrics.horn")?.answer;
  };
  // The words "everything is saved" also stand before the change is queued, so the service itself is asked.
  await expect.poll(stored, { timeout: 20_000 }).toEqual({ kind: "working", value: "no" });
  await phone.setOffline(false);
  await there.getByText("This finding was changed on another device too").waitFor();
  const conflict = there.getByRole("alert");
  expect(await conflict.textContent()).toMatch(/works now and then.*does not work/);
  await conflict.getByRole("button", { name: "Keep this one" }).click();
  await there.getByText("Everything is saved with the service").waitFor();
  await expect.poll(stored).toEqual({ kind: "working", value: "intermittent" });
});

test("an implausible reading is said at the field and not kept", async () => {
  const { dealer, id } = await draft();
  const context = await signedIn(browser(), dealer);
  const page = await context.newPage();
  await page.goto(`/reports/${id}?section=wheels&open=wheels.tread-depth%40left-rear`);
  const line = page.locator('[id="place-wheels.tread-depth@left-rear"]');
  await line.getByLabel(/inner groove/i).fill("900");
  expect(await line.getByRole("alert").textContent()).toMatch(/Not kept: it should lie between/);
  await line.getByLabel(/inner groove/i).fill("9");
  await expect
    .poll(async () => {
      const { report } = await dealer.does("reports.get", { path: { id } });
      return report.findings.find(
        ({ item, position }) => item === "wheels.tread-depth" && position === "left-rear",
      )?.answer;
    })
    .toMatchObject({ values: [{ value: 9 }] });
});
