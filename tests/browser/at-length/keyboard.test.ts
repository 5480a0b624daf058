import type { OpenMatter } from "@evenhand/shared/summary";
import type { Page, Route } from "playwright-core";
import { expect, test } from "vitest";
import { asSummary } from "@evenhand/shared/as-summary";
import { useService } from "../../api/setup/service.ts";
import { inspect } from "../../api/setup/story.ts";
import { emailOf, makeWorld, password } from "../../api/setup/world.ts";
import { useBrowser } from "../setup/browser.ts";
import { faultsOnTheWay, focusFaults, narrow, tabTo, type TabKey, wide } from "../setup/focus.ts";
import { signedIn } from "../setup/signed-in.ts";

const service = useService();
const browser = useBrowser();

/** From the foot of the page upward, where a head that stays could cover it: the focus is always seen, on a narrow screen and on a wide one. */
async function seenUpward(page: Page, most?: number): Promise<void> {
  await page.setViewportSize(narrow);
  await faultsOnTheWay(page, "Shift+Tab");
  for (const viewport of [narrow, wide]) {
    await page.setViewportSize(viewport);
    expect(await faultsOnTheWay(page, "Shift+Tab", most)).toEqual([]);
  }
}

/** On downward, where a bar that stays at the foot could cover it; the narrow screen is the one it is left on. */
async function seenDownward(page: Page, most: number): Promise<void> {
  for (const viewport of [wide, narrow]) {
    await page.setViewportSize(viewport);
    expect(await faultsOnTheWay(page, "Tab", most)).toEqual([]);
  }
}

/** Answers that wait until they are released. */
const held = () => {
  const asked = Promise.withResolvers<undefined>();
  const released = Promise.withResolvers<undefined>();
  const hold = async (route: Route): Promise<void> => {
    asked.resolve(undefined);
    await released.promise;
    await route.continue();
  };
  return { asked: asked.promise, hold, release: () => released.resolve(undefined) };
};

test("from signing in to an open line of the comparison without a pointer", async () => {
  const world = await makeWorld(service());
  await inspect(world);
  const context = await browser().newContext({
    baseURL: service().url,
    viewport: { width: 1280, height: 900 },
  });
  const page = await context.newPage();
  await page.goto("/");
  await page.getByLabel("E-mail address").waitFor();
  await tabTo(page, /^\s*E-mail address/);
  await page.keyboard.type(emailOf("Bea"));
  await tabTo(page, /Password/);
  await page.keyboard.type(password);
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { name: "Good day, Bea" }).waitFor();
  await page.getByRole("link", { name: "1958 Uthwick Alder" }).first().waitFor();
  await tabTo(page, /Read the answer/);
  expect(await focusFaults(page)).toEqual([]);
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { name: "What is wrong, worst first" }).waitFor();
  await tabTo(page, /The answer/);
  await page.keyboard.press("ArrowRight");
  await page.getByRole("heading", { name: "Most pressing first" }).waitFor();
  await page.keyboard.press("ArrowRight");
  await page.getByRole("heading", { name: "Nobody saw, of what a purchase can turn on" }).waitFor();
  await page.keyboard.press("ArrowLeft");
  await page.getByRole("heading", { name: "Most pressing first" }).waitFor();
  await tabTo(page, /^\s*tread depth\s+left front/i);
  expect(await focusFaults(page)).toEqual([]);
  await page.keyboard.press("Enter");
  await page
    .getByText(/Stated 8.*found 2/)
    .first()
    .waitFor();
});

/** To what is named so, where the focus is seen, and the key that does it. */
async function press(page: Page, name: RegExp, key = "Enter", way: TabKey = "Tab"): Promise<void> {
  await tabTo(page, name, way);
  expect(await focusFaults(page)).toEqual([]);
  await page.keyboard.press(key);
}

/** Answers the matter that is asked, in words where it asks for them. */
async function answerMatter(page: Page, { headline, severity }: OpenMatter, number: number): Promise<void> {
  const asked = page.getByRole("group", { name: headline, exact: true });
  await asked.getByText(`${number} of `).waitFor();
  // An arrow onto a choice leaves the focus there; every later matter takes it, on the way.
  const takesFocus = number > 1;
  await expect.poll(() => asked.evaluate((one) => one.contains(document.activeElement))).toBe(takesFocus);
  if (!takesFocus && severity === "halt") await tabTo(page, /In your own words/);
  const inWords = await page.evaluate(() => document.activeElement?.tagName === "TEXTAREA");
  expect((takesFocus ? await focusFaults(page) : undefined) ?? []).toEqual([]);
  if (inWords) await page.keyboard.type(`I know of number ${number}, and a mechanic looks at it.`);
  await press(page, /It is looked at again first/, "Space");
}

test("from home to a decision without a pointer, and the focus is always seen", async () => {
  const world = await makeWorld(service());
  await inspect(world);
  const context = await signedIn(browser(), world.buyer, { viewport: wide });
  const page = await context.newPage();
  const heading = (name: string | RegExp) => page.getByRole("heading", { name }).first().waitFor();
  await page.goto("/");
  await page.getByRole("link", { name: "1958 Uthwick Alder" }).first().waitFor();
  await seenUpward(page);
  await press(page, /^\s*1958 Uthwick Alder/);
  await page.waitForURL(/\/cases\//);
  await heading("1958 Uthwick Alder");
  await seenUpward(page);
  await press(page, /^\s*The answer:/);
  await heading("What is wrong, worst first");
  await seenUpward(page);
  await press(page, /^\s*The answer/, "ArrowRight");
  await heading("Most pressing first");
  await seenUpward(page, 30);
  // From its top again: how far up the list the focus has come hangs on how many of its lines were drawn.
  await page.reload();
  await heading("Most pressing first");
  await press(page, /Choose items for the dealer/);
  await page.getByRole("button", { name: "Cancel" }).first().waitFor();
  await seenDownward(page, 45);
  await press(page, /^\s*Cancel/, "Enter", "Shift+Tab");
  // What can be done stands above the list on a wide screen and below it on a narrow one: from the top of it, in its place.
  await page.setViewportSize(wide);
  await page.reload();
  await heading("Most pressing first");
  await press(page, /Make the summary/);
  await page.waitForURL(/\/summaries\//);
  await heading("Summary: 1958 Uthwick Alder");
  await heading("Decide");
  await seenUpward(page);
  const id = new URL(page.url()).pathname.split("/").at(-1) ?? "";
  const { openMatters } = asSummary(await world.buyer.does("summaries.document", { path: { id } }));
  expect(openMatters.length).toBeGreaterThan(3);
  await press(page, /(Approve|Counter|Decline)/, "ArrowDown");
  const approve = page.getByRole("radio", { name: /^Approve/ });
  for (let more = 0; more < 2 && !(await approve.isChecked()); more += 1)
    await page.keyboard.press("ArrowDown");
  expect(await approve.isChecked()).toBe(true);
  for (const [at, open] of openMatters.entries()) await answerMatter(page, open, at + 1);
  await seenUpward(page);
  await press(page, /Approve this summary/);
  const said = page.getByRole("status").filter({ hasText: "You approved this summary" });
  await expect.poll(() => said.evaluate((one) => one === document.activeElement)).toBe(true);
  expect(await focusFaults(page)).toEqual([]);
  await press(page, /Decisions/);
  await page.waitForURL(/\/decisions/);
});

test("after going to another page the focus is on its title, and the first Tab on a page skips the menu", async () => {
  const world = await makeWorld(service());
  const context = await signedIn(browser(), world.buyer);
  const page = await context.newPage();
  // The page that is left shows anew, its cars come, while the next one is still being fetched.
  const cars = held();
  const help = held();
  await page.route(/\/api\/v1\/vehicles/, cars.hold);
  await page.route(/\/assets\/Help/, help.hold);
  await page.goto("/cars");
  await page.getByRole("link", { name: "Help" }).press("Enter");
  await help.asked;
  cars.release();
  await page.getByText("No car is listed at the moment.").waitFor();
  help.release();
  await page.getByRole("heading", { name: "Help", level: 1 }).waitFor();
  await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe("Help");
  await page.reload();
  await page.getByRole("heading", { name: "Help", level: 1 }).waitFor();
  await page.keyboard.press("Tab");
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Skip to the page");
});
