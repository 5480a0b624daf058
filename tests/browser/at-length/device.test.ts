import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { useService } from "../../api/setup/service.ts";
import { useBrowser } from "../setup/browser.ts";
import { choose, hornOf, openDraft } from "../setup/device-draft.ts";

const service = useService();
const browser = useBrowser();

const kept = (page: Page) =>
  page.evaluate(async () => (await indexedDB.databases()).map(({ name }) => name ?? ""));
const signOut = async (page: Page) => {
  await page.locator('[popovertarget="account-menu"]').click();
  await page.getByRole("button", { name: "Sign out", exact: true }).click();
};

test("a session that is over shows nothing of the draft until the person signs in again", async () => {
  const { dealer, page } = await openDraft(service(), browser());
  await dealer.does("sessions.end");
  await choose(page, "does not work");
  await page.getByText("Nobody is signed in").waitFor();
  expect(await hornOf(page).count()).toBe(0);
  await page.getByRole("link", { name: "Sign in" }).waitFor();
});

test("signing out sends what waits, and leaves nothing on the device", async () => {
  const { dealer, context, page, stands } = await openDraft(service(), browser());
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
  const { dealer, context, page, stands } = await openDraft(service(), browser());
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
