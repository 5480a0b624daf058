import type { BrowserContext } from "playwright-core";
import { expect, test } from "vitest";
import type { Person } from "../api/setup/person.ts";
import { useService } from "../api/setup/service.ts";
import { useBrowser } from "./setup/browser.ts";
import { addressOf, choose, hornOf, openDraft } from "./setup/device-draft.ts";

const service = useService();
const browser = useBrowser();

async function becomes(context: BrowserContext, person: Person): Promise<void> {
  const value = person.credentials["cookie"]?.replace(/^evenhand=/, "") ?? "";
  await context.addCookies([{ name: "evenhand", value, url: person.url, httpOnly: true, sameSite: "Lax" }]);
}

test("another account on the device is shown nothing of a draft, and the first one's unsent answer still arrives", async () => {
  const { dealer, otherDealer, id, context, page, stands } = await openDraft(service(), browser());
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
