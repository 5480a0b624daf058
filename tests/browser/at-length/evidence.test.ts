import { expect, test } from "vitest";
import { photograph } from "../../api/setup/pictures.ts";
import { useService } from "../../api/setup/service.ts";
import { loadWhole, violationsInLooks, violationsOn } from "../setup/accessibility.ts";
import { useBrowser } from "../setup/browser.ts";
import { demoPeople } from "../setup/demo-car.ts";
import { choose, draft, filesOf, jpeg, openHorn, throttle, work } from "../setup/evidence-drafts.ts";
import { desk, keepPicture, openPage, phone } from "../setup/pages.ts";
import { picturedCar, sendAll, tire } from "../setup/pictured-car.ts";
import { signedIn } from "../setup/signed-in.ts";

const service = useService();
const browser = useBrowser();

test("what is refused says why; what is taken away can be put back, with a connection and without", async () => {
  const { dealer, id } = await draft(service());
  const context = await signedIn(browser(), dealer);
  const page = await openHorn(context, id);
  const heic = Buffer.from("\0\0\0\u0018ftypheic\0\0\0\0mif1heic");
  await choose(page, [{ name: "plate.heic", mimeType: "image/heic", buffer: heic }]);
  await page.getByText("the service is looking at it", { exact: false }).waitFor();
  await work(service(), dealer, id);
  await page.getByText(/^Not taken: .*JPEG/).waitFor();
  await choose(page, [jpeg("horn.jpg", await photograph(90))]);
  await page.getByText("the service is looking at it", { exact: false }).waitFor();
  await work(service(), dealer, id);
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

test("what waits on the device goes on from another page, which says how much is left", async () => {
  const { dealer, id } = await draft(service());
  const photo = await photograph(77);
  const context = await signedIn(browser(), dealer);
  const page = await openHorn(context, id);
  await context.setOffline(true);
  await choose(page, [jpeg("horn.jpg", photo)]);
  await page.getByText(/^No connection\. Kept on this device/).waitFor();
  await page.close();
  await context.setOffline(false);
  const home = await context.newPage();
  await throttle(home, 50_000);
  await home.goto("/");
  const waiting = home.getByRole("complementary", { name: "Photographs and papers on their way" });
  await waiting.getByText(/MB/).waitFor();
  expect(await violationsOn(home, "waiting-uploads")).toEqual([]);
  await waiting.waitFor({ state: "detached", timeout: 60_000 });
  expect(await filesOf(dealer, id)).toMatchObject([{ name: "horn.jpg", received: photo.length }]);
});

test("a draft's pictures stand together, with what the sheet asks for and is not there", async () => {
  const { dealer, id } = await draft(service());
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
  expect(await violationsInLooks(page, "picture-viewer")).toEqual([]);
  await page.keyboard.press("Escape");
  await viewer.waitFor({ state: "detached" });
});

test("its author draws over a picture, and takes back the last", async () => {
  const { dealer, id } = await draft(service());
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
