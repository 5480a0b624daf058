import type { Page } from "playwright-core";
import sharp from "sharp";
import { expect, test } from "vitest";
import { hashOf } from "../api/setup/evidence-story.ts";
import { photograph } from "../api/setup/pictures.ts";
import { useService } from "../api/setup/service.ts";
import { entryAt } from "../api/setup/story.ts";
import { violationsOn } from "./setup/accessibility.ts";
import { useBrowser } from "./setup/browser.ts";
import { demoPeople } from "./setup/demo-car.ts";
import { choose, draft, filesOf, jpeg, openHorn, throttle, work } from "./setup/evidence-drafts.ts";
import { desk, keepPicture, openPage, phone } from "./setup/pages.ts";
import { picturedCar, tire } from "./setup/pictured-car.ts";
import { signedIn } from "./setup/signed-in.ts";

const service = useService();
const browser = useBrowser();

/** What the page says has gone, in megabytes. */
const goneOn = async (page: Page): Promise<number> => {
  const words = await page
    .getByText(/^Sending: /)
    .textContent({ timeout: 30_000 })
    .catch(() => "");
  return Number(/^Sending: ([\d.]+) of/.exec(words ?? "")?.[1] ?? Number.NaN);
};

test("a photograph goes with true progress, is cut, survives a killed tab, and arrives whole, once", async () => {
  const { dealer, id } = await draft(service());
  const photo = await photograph();
  const context = await signedIn(browser(), dealer);
  const page = await openHorn(context, id);
  await throttle(page, 250_000);
  await choose(page, [jpeg("horn.jpg", photo)]);
  const first = await goneOn(page);
  await expect.poll(() => goneOn(page)).toBeGreaterThan(first);
  expect(await goneOn(page)).toBeLessThan(photo.length / 1e6);
  await page.goto(`/reports/${id}`);
  await page.getByText("still on its way: horn.jpg", { exact: false }).waitFor();
  await page.getByRole("checkbox", { name: /what we state about this car/ }).check();
  expect(await page.getByRole("button", { name: "Seal the statement" }).isDisabled()).toBe(true);
  await context.setOffline(true);
  await page.close();
  await context.setOffline(false);
  const again = await openHorn(context, id);
  await again.getByText("Arrived; the service is looking at it").waitFor();
  await work(service(), dealer, id);
  await again.getByText("Arrived", { exact: true }).waitFor();
  const files = await filesOf(dealer, id);
  expect(files).toMatchObject([{ name: "horn.jpg", received: photo.length, item: "electrics.horn" }]);
  const { body } = await dealer.ask("evidence.original", { path: { id: files[0]?.id ?? "" } });
  expect(hashOf(body)).toBe(hashOf(photo));
});

test("a photograph that is blurred or dark is said to be before it has gone, without a connection, and is taken again", async () => {
  const { dealer, id } = await draft(service());
  const context = await signedIn(browser(), dealer);
  const page = await openHorn(context, id);
  await page.waitForLoadState("networkidle");
  await context.setOffline(true);
  const sharpOne = await tire({ worn: 0.4, light: 90 });
  await choose(page, [
    jpeg("blurred.jpg", await sharp(sharpOne).blur(14).jpeg().toBuffer()),
    jpeg("dark.jpg", await sharp(sharpOne).linear(0.05).jpeg().toBuffer()),
    jpeg("sharp.jpg", sharpOne),
  ]);
  const line = (name: string) => page.locator("li[data-word]").filter({ hasText: name });
  await line("blurred.jpg").getByText("Blurred; take it again?").waitFor();
  await line("dark.jpg")
    .getByText(/^Too dark to see much/)
    .waitFor();
  await line("sharp.jpg")
    .getByText(/^No connection\. Kept on this device/)
    .waitFor();
  expect(await line("sharp.jpg").getByRole("button", { name: "Take it again" }).count()).toBe(0);
  await keepPicture(page, "advice", false);
  expect(await violationsOn(page, "advice")).toEqual([]);
  const [camera] = await Promise.all([
    page.waitForEvent("filechooser"),
    line("blurred.jpg").getByRole("button", { name: "Take it again" }).click(),
  ]);
  await camera.setFiles([jpeg("again.jpg", await tire({ worn: 0.3, light: 100 }))]);
  await line("again.jpg")
    .getByText(/^No connection/)
    .waitFor();
  await expect.poll(() => line("blurred.jpg").getByText("Blurred").count()).toBe(0);
  await context.setOffline(false);
  await expect
    .poll(async () => (await filesOf(dealer, id)).map(({ name }) => name).toSorted())
    .toEqual(["again.jpg", "dark.jpg", "sharp.jpg"]);
});

/** What of a picture is seen, as its frame has it. */
const seenIn = (page: Page, nth: number) =>
  page
    .locator("[data-picture]")
    .nth(nth)
    .evaluate((picture) =>
      picture instanceof HTMLElement ? [picture.style.scale, picture.style.translate] : [],
    );

test("side by side both are looked at as closely, at the same place, on a phone and at a desk", async () => {
  const people = await demoPeople(service());
  const { comparison } = await picturedCar(service(), people);
  const document = await people.buyer.does("comparisons.document", { path: { id: comparison } });
  const at = entryAt(document, "wheels.tread-depth", "left-front");
  for (const size of [phone, desk]) {
    const page = await openPage(browser(), people.buyer, size);
    await page.goto(`/comparisons/${comparison}?open=${at}`);
    await page.getByText("1 photograph of the statement, 2 of the inspection").waitFor();
    await page.getByRole("button", { name: "Look at them side by side" }).click();
    const viewer = page.getByRole("dialog");
    await viewer.getByRole("button", { name: "Look closer" }).click();
    const frames = await viewer.locator("[data-picture]").all();
    expect(frames).toHaveLength(2);
    expect(await seenIn(page, 0)).toContain("1.5");
    const [one, other] = await Promise.all(
      [0, 1].map((nth) => viewer.locator("figure > [data-side]").nth(nth).boundingBox()),
    );
    if (!one || !other) throw new Error("Both sides are drawn.");
    // Beside each other where there is room, one above the other on a phone.
    expect(size === desk ? other.x >= one.x + one.width : other.y >= one.y + one.height).toBe(true);
    await page.mouse.move(one.x + one.width * 0.7, one.y + one.height / 2);
    await page.mouse.wheel(0, -600);
    await expect.poll(() => seenIn(page, 0)).not.toContain("1.5");
    await page.mouse.down();
    await page.mouse.move(one.x + one.width * 0.5, one.y + one.height * 0.4, { steps: 4 });
    await page.mouse.up();
    const seen = await seenIn(page, 0);
    expect(await seenIn(page, 1)).toEqual(seen);
    await keepPicture(page, "side-by-side", false);
    expect(await violationsOn(page, "side-by-side")).toEqual([]);
    await page.context().close();
  }
});
