import type { BrowserContext, Page } from "playwright-core";
import { expect, test } from "vitest";
import type { Person } from "../api/setup/person.ts";
import { useService } from "../api/setup/service.ts";
import { header, makeVehicle, stated, write } from "../api/setup/story.ts";
import { joinPerson, makeWorld } from "../api/setup/world.ts";
import { useBrowser } from "./setup/browser.ts";
import { signedIn } from "./setup/signed-in.ts";

const service = useService();
const browser = useBrowser();

/** A dealer with a draft of a few findings, open at the horn; and another dealer. */
async function openDraft() {
  const { dealer, otherDealer } = await makeWorld(service());
  const vehicle = await makeVehicle(dealer);
  const { id } = await dealer.does("reports.state", { path: { id: vehicle }, body: header });
  await write(dealer, id, stated);
  const context = await signedIn(browser(), dealer);
  const page = await context.newPage();
  await page.goto(addressOf(id));
  await hornOf(page).waitFor();
  // Read by somebody whose session stays.
  const colleague = await joinPerson(service(), dealer.organization, "Colin");
  const stands = async () => {
    const { report } = await colleague.does("reports.get", { path: { id } });
    return report.findings.find(({ item }) => item === "electrics.horn")?.answer;
  };
  return { dealer, otherDealer, id, context, page, stands };
}
const addressOf = (id: string) => `/reports/${id}?section=electrics&open=electrics.horn%40`;
const hornOf = (page: Page) => page.locator('[id="place-electrics.horn@"]');
const choose = (page: Page, answer: string) =>
  hornOf(page).getByRole("radio", { name: answer, exact: true }).check();
const kept = (page: Page) =>
  page.evaluate(async () => (await indexedDB.databases()).map(({ name }) => name ?? ""));

async function becomes(context: BrowserContext, person: Person): Promise<void> {
  const value = person.credentials["cookie"]?.replace(/^evenhand=/, "") ?? "";
  await context.addCookies([{ name: "evenhand", value, url: person.url, httpOnly: true, sameSite: "Lax" }]);
}
const signOut = async (page: Page) => {
  await page.locator('[popovertarget="account-menu"]').click();
  await page.getByRole("button", { name: "Sign out", exact: true }).click();
};

test("another account on the device is shown nothing of a draft, and the first one's unsent answer still arrives", async () => {
  const { dealer, otherDealer, id, context, page, stands } = await openDraft();
  await context.setOffline(true);
  await choose(page, "works now and then");
  await page.getByText(/No connection/).waitFor();
  await becomes(context, otherDealer);
  // The page finds that somebody else is signed in, and loads itself anew as theirs.
  const anew = page.waitForEvent("load");
  await context.setOffline(false);
  await anew;
  await page.getByText("There is nothing here").waitFor();
  expect(await hornOf(page).count()).toBe(0);
  const shown = () => page.locator("main").textContent();
  await expect.poll(shown).not.toMatch(/1 answer/);
  await page.goto(addressOf(id));
  await page.getByText("There is nothing here").waitFor();
  expect(await shown()).not.toMatch(/Corvane|1 answer/);
  expect(await stands()).toMatchObject({ value: "yes" });
  // What the page still asks is answered before the next one signs in: else it might load itself anew once more.
  await page.waitForLoadState("networkidle");
  await becomes(context, dealer);
  await page.goto(addressOf(id));
  await hornOf(page).waitFor();
  await expect.poll(stands).toMatchObject({ value: "intermittent" });
});

test("a session that is over shows nothing of the draft until the person signs in again", async () => {
  const { dealer, page } = await openDraft();
  await dealer.does("sessions.end");
  await choose(page, "does not work");
  await page.getByText("Nobody is signed in").waitFor();
  expect(await hornOf(page).count()).toBe(0);
  await page.getByRole("link", { name: "Sign in" }).waitFor();
});

test("signing out sends what waits, and leaves nothing on the device", async () => {
  const { dealer, context, page, stands } = await openDraft();
  await context.setOffline(true);
  await choose(page, "works now and then");
  await page.getByText(/No connection/).waitFor();
  expect((await kept(page)).some((name) => name.includes(dealer.account))).toBe(true);
  await context.setOffline(false);
  await signOut(page);
  await page.waitForURL(/\/sign-in/);
  expect(await stands()).toMatchObject({ value: "intermittent" });
  expect((await kept(page)).filter((name) => name.includes(dealer.account))).toEqual([]);
});

test("with no signal signing out asks first; who stays has lost nothing, and who throws it away was told", async () => {
  const { dealer, context, page, stands } = await openDraft();
  await context.setOffline(true);
  await choose(page, "works now and then");
  await page.getByText(/No connection/).waitFor();
  await signOut(page);
  const dialog = page.getByRole("dialog", { name: "1 answer or photograph is on this device only" });
  await dialog.waitFor();
  await dialog.getByRole("button", { name: "Sign out and throw it away" }).click();
  await dialog.getByText("The service cannot be reached").waitFor();
  await dialog.getByRole("button", { name: "Stay signed in" }).click();
  expect(await dialog.count()).toBe(0);
  await hornOf(page).waitFor();
  expect((await kept(page)).some((name) => name.includes(dealer.account))).toBe(true);
  await context.setOffline(false);
  await expect.poll(stands).toMatchObject({ value: "intermittent" });
});
