import type { BrowserContext, Page } from "playwright-core";
import sharp from "sharp";
import { expect, test } from "vitest";
import { Arrivals } from "../../apps/api/src/capabilities/evidence/arrivals.ts";
import { hashOf } from "../api/setup/evidence-story.ts";
import type { Person } from "../api/setup/person.ts";
import { photograph } from "../api/setup/pictures.ts";
import { useService } from "../api/setup/service.ts";
import { draftStatement, entryAt, makeVehicle } from "../api/setup/story.ts";
import { makeWorld } from "../api/setup/world.ts";
import { loadWhole, violationsInEveryLook, violationsOn } from "./setup/accessibility.ts";
import { useBrowser } from "./setup/browser.ts";
import { demoPeople } from "./setup/demo-car.ts";
import { desk, keepPicture, openPage, phone } from "./setup/pages.ts";
import { picturedCar, sendAll, tire } from "./setup/pictured-car.ts";
import { signedIn } from "./setup/signed-in.ts";

const service = useService();
const browser = useBrowser();

/** A dealer with a draft of a few findings. */
async function draft() {
  const { dealer } = await makeWorld(service());
  const { id } = await draftStatement(dealer, await makeVehicle(dealer));
  return { dealer, id };
}

async function openHorn(context: BrowserContext, id: string): Promise<Page> {
  const page = await context.newPage();
  page.setDefaultTimeout(60_000);
  await page.goto(`/reports/${id}?section=electrics&open=electrics.horn%40`);
  await page.getByRole("button", { name: "Choose files" }).waitFor();
  return page;
}

/** So many bytes a second leave this page from now on. */
async function throttle(page: Page, bytes: number): Promise<void> {
  const line = await page.context().newCDPSession(page);
  await line.send("Network.emulateNetworkConditions", {
    offline: false,
    latency: 20,
    downloadThroughput: -1,
    uploadThroughput: bytes,
  });
}

const choose = (page: Page, files: readonly { name: string; mimeType: string; buffer: Buffer }[]) =>
  page.locator('input[data-of="files"]').setInputFiles([...files]);
const jpeg = (name: string, buffer: Buffer) => ({ name, mimeType: "image/jpeg", buffer });
/** What the page says has gone, in megabytes. */
const goneOn = async (page: Page): Promise<number> => {
  const words = await page
    .getByText(/^Sending: /)
    .textContent({ timeout: 30_000 })
    .catch(() => "");
  return Number(/^Sending: ([\d.]+) of/.exec(words ?? "")?.[1] ?? Number.NaN);
};
const filesOf = async (person: Person, id: string) =>
  (await person.does("evidence.ofReport", { path: { id } })).items;
/** A worker takes all that has arrived. */
async function work(person: Person, id: string): Promise<void> {
  for (const { id: file, state } of await filesOf(person, id))
    if (state === "pending") await service().app.get(Arrivals, { strict: false }).take(file);
}

test("a photograph goes with true progress, is cut, survives a killed tab, and arrives whole, once", async () => {
  const { dealer, id } = await draft();
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
  await work(dealer, id);
  await again.getByText("Arrived", { exact: true }).waitFor();
  const files = await filesOf(dealer, id);
  expect(files).toMatchObject([{ name: "horn.jpg", received: photo.length, item: "electrics.horn" }]);
  const { body } = await dealer.ask("evidence.original", { path: { id: files[0]?.id ?? "" } });
  expect(hashOf(body)).toBe(hashOf(photo));
});

test("what is refused says why; what is taken away can be put back, with a connection and without", async () => {
  const { dealer, id } = await draft();
  const context = await signedIn(browser(), dealer);
  const page = await openHorn(context, id);
  const heic = Buffer.from("\0\0\0\u0018ftypheic\0\0\0\0mif1heic");
  await choose(page, [{ name: "plate.heic", mimeType: "image/heic", buffer: heic }]);
  await page.getByText("the service is looking at it", { exact: false }).waitFor();
  await work(dealer, id);
  await page.getByText(/^Not taken: .*JPEG/).waitFor();
  await choose(page, [jpeg("horn.jpg", await photograph(90))]);
  await page.getByText("the service is looking at it", { exact: false }).waitFor();
  await work(dealer, id);
  await page.getByText("Arrived", { exact: true }).waitFor();
  await page.getByRole("button", { name: "Take away horn.jpg" }).click();
  await page.getByText("horn.jpg was taken away.").waitFor();
  await page.getByRole("button", { name: "Put it back" }).click();
  await page.getByText("Arrived", { exact: true }).waitFor();
  await context.setOffline(true);
  await choose(page, [jpeg("bracket.jpg", await photograph(110))]);
  await page.getByText(/^No connection\. Kept on this device/).waitFor();
  await page.getByRole("button", { name: "Take away bracket.jpg" }).click();
  await page.getByRole("button", { name: "Put it back" }).click();
  await context.setOffline(false);
  await expect.poll(async () => (await filesOf(dealer, id)).map(({ name }) => name)).toContain("bracket.jpg");
});

test("a photograph that is blurred or dark is said to be before it has gone, without a connection, and is taken again", async () => {
  const { dealer, id } = await draft();
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

test("a draft's pictures stand together, with what the sheet asks for and is not there", async () => {
  const { dealer, id } = await draft();
  await sendAll(service(), dealer, id, [
    [await tire({ worn: 0.4, light: 90 }), { item: "identity.odometer", filename: "odometer.jpg" }],
  ]);
  const page = await openPage(browser(), dealer, phone);
  await page.goto(`/reports/${id}`);
  await page.getByRole("link", { name: "Photographs", exact: true }).click();
  await page.getByRole("heading", { name: /^Photographs: statement of the/ }).waitFor();
  await page.getByText("12 pictures are missing.", { exact: false }).waitFor();
  await page.getByRole("button", { name: /: photograph of the statement/ }).waitFor();
  await page.getByRole("link", { name: /^A film with its sound/ }).click();
  await page.getByRole("button", { name: "Choose files" }).waitFor();
  expect(new URL(page.url()).searchParams.get("open")).toBe("road.cold-start@");
});

/** What of a picture is seen, as its frame has it. */
const seenIn = (page: Page, nth: number) =>
  page
    .locator("[data-picture]")
    .nth(nth)
    .evaluate((picture) =>
      picture instanceof HTMLElement ? [picture.style.scale, picture.style.translate] : [],
    );

test("a report's pictures stand by place, and are gone through with the keyboard", async () => {
  const people = await demoPeople(service());
  const { inspection } = await picturedCar(service(), people);
  const page = await openPage(browser(), people.buyer, phone);
  await loadWhole(page, `/report-versions/${inspection}/pictures`);
  const shown = page.getByRole("button", { name: /: photograph of the inspection$/ });
  await expect.poll(() => shown.count()).toBe(3);
  await shown.first().focus();
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("Enter");
  const viewer = page.getByRole("dialog");
  await viewer.getByText("2 of 3").waitFor();
  await page.keyboard.press("ArrowRight");
  await viewer.getByText("3 of 3").waitFor();
  expect(await violationsInEveryLook(page, "picture-viewer")).toEqual([]);
  await page.keyboard.press("Escape");
  await viewer.waitFor({ state: "detached" });
});

test.each([phone, desk])(
  "side by side both are looked at as closely, at the same place: %o",
  async (size) => {
    const people = await demoPeople(service());
    const { comparison } = await picturedCar(service(), people);
    const document = await people.buyer.does("comparisons.document", { path: { id: comparison } });
    const at = entryAt(document, "wheels.tread-depth", "left-front");
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
  },
);

test("its author draws over a picture, and takes back the last", async () => {
  const { dealer, id } = await draft();
  const [file = ""] = await sendAll(service(), dealer, id, [
    [await tire({ worn: 0.4, light: 90 }), { item: "electrics.horn", filename: "horn.jpg" }],
  ]);
  const page = await openHorn(await signedIn(browser(), dealer, desk), id);
  await page.getByRole("button", { name: "Show horn.jpg large" }).click();
  const viewer = page.getByRole("dialog");
  await viewer.getByRole("button", { name: "Circle" }).click();
  const box = await viewer.locator("[data-draw]").boundingBox();
  if (!box) throw new Error("There is a picture to draw on.");
  await page.mouse.move(box.x + box.width * 0.5, box.y + box.height * 0.5);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width * 0.75, box.y + box.height * 0.5, { steps: 3 });
  await page.mouse.up();
  await viewer.locator('[data-marks="1"]').waitFor();
  await viewer.getByRole("button", { name: "Words", exact: true }).click();
  await viewer.getByLabel("Words on the picture").fill("bracket bent");
  await viewer.getByRole("button", { name: "Put it in the middle of what is seen" }).click();
  await viewer.locator('[data-marks="2"]').waitFor();
  await keepPicture(page, "marks", false);
  expect(await violationsOn(page, "marks")).toEqual([]);
  await viewer.getByRole("button", { name: "Take back the last" }).click();
  await viewer.locator('[data-marks="1"]').waitFor();
  await expect
    .poll(async () => (await filesOf(dealer, id))[0]?.marks)
    .toMatchObject([{ kind: "circle", radius: 0.25 }]);
  expect((await filesOf(dealer, id))[0]?.id).toBe(file);
});
