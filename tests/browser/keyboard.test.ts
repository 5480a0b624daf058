import type { Page, Route } from "playwright-core";
import { expect, test } from "vitest";
import { useService } from "../api/setup/service.ts";
import { inspect } from "../api/setup/story.ts";
import { emailOf, makeWorld, password } from "../api/setup/world.ts";
import { useBrowser } from "./setup/browser.ts";
import { signedIn } from "./setup/signed-in.ts";

const service = useService();
const browser = useBrowser();

/** Presses Tab until the focus is on what is named so; gives up where a person would have long given up. */
async function tabTo(page: Page, name: RegExp, most = 80): Promise<void> {
  for (let count = 0; count < most; count += 1) {
    await page.keyboard.press("Tab");
    const focused = await page.evaluate(() => {
      const element = document.activeElement;
      const labels =
        element instanceof HTMLInputElement ? [...(element.labels ?? [])].map((one) => one.textContent) : [];
      return [element?.getAttribute("aria-label") ?? "", ...labels, element?.textContent ?? ""].join(" ");
    });
    if (name.test(focused)) return;
  }
  throw new Error(`Nothing called ${String(name)} was reached in ${most} presses of Tab.`);
}

/** What has the focus can be told from what has not. */
const focusIsVisible = (page: Page): Promise<boolean> =>
  page.evaluate(() => {
    const element = document.activeElement;
    if (!element) return false;
    const styles = [getComputedStyle(element), getComputedStyle(element, "::after")];
    return styles.some(({ outlineStyle, outlineWidth }) => outlineStyle !== "none" && outlineWidth !== "0px");
  });

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
  expect(await focusIsVisible(page)).toBe(true);
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
  expect(await focusIsVisible(page)).toBe(true);
  await page.keyboard.press("Enter");
  await page
    .getByText(/Stated 8.*found 2/)
    .first()
    .waitFor();
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
