import type { BrowserContextOptions, Locator, Page } from "playwright-core";
import { beforeEach, expect, test } from "vitest";
import { alike, confirmed, fell, insertInspected, open } from "../../api/setup/inspected-cars.ts";
import { useService } from "../../api/setup/service.ts";
import { publish } from "../../api/setup/story.ts";
import { makePerson, makeWorld, type World } from "../../api/setup/world.ts";
import { violationsOn } from "../setup/accessibility.ts";
import { useBrowser } from "../setup/browser.ts";
import { desk, keepPicture, openPage, phone } from "../setup/pages.ts";

const site = process.env["SITE_FOLDER"];
const service = useService(site === undefined ? {} : { environment: { SITE_FOLDER: site } });
const browser = useBrowser();
let world: World;
beforeEach(async () => {
  world = await makeWorld(service());
});

const insert = (cars: Parameters<typeof insertInspected>[1], dealer = world.dealer) =>
  insertInspected({ ...world, databaseUrl: service().databaseUrl, dealer }, cars);

/** Two sections with enough cars, one of them with open falls, and a section without. */
const enough = [
  ...alike(17, { body: confirmed, wheels: fell }),
  ...alike(7, { body: open, wheels: confirmed, trunk: confirmed }),
  ...alike(4, { body: fell, wheels: confirmed }),
];

const looks: readonly (readonly [name: string, options: BrowserContextOptions])[] = [
  ["phone, light", { ...phone, colorScheme: "light" }],
  ["phone, dark", { ...phone, colorScheme: "dark" }],
  ["desktop, light", { ...desk, colorScheme: "light" }],
  ["desktop, dark", { ...desk, colorScheme: "dark" }],
];

/** The panel on a car's page, as a buyer sees it. */
async function openPanel(vehicle: string, options: BrowserContextOptions): Promise<[Page, Locator]> {
  const page = await openPage(browser(), world.buyer, options);
  await page.goto(`/cars/${vehicle}`);
  const heading = page.getByRole("heading", { name: "How this dealer’s statements held up" });
  await heading.waitFor();
  await page.waitForLoadState("networkidle");
  return [page, page.locator("section").filter({ has: heading })];
}

const expectReadable = async (page: Page): Promise<void> =>
  expect(await violationsOn(page, "record")).toEqual([]);

/** A bar must have been drawn where its figures say: the band's ends, as shares of the bar's width. */
const bandOf = (panel: Locator): Promise<number[]> =>
  panel
    .locator("svg")
    .first()
    .evaluate((bar) => {
      const { left, width } = bar.getBoundingClientRect();
      const band = bar.querySelectorAll("rect")[1]?.getBoundingClientRect();
      return band === undefined ? [] : [(band.left - left) / width, (band.right - left) / width];
    });

test.each(looks)("with few cars one sentence says so: %s", async (name, options) => {
  const { vehicle } = await publish(world.dealer);
  await insert(alike(6, { body: fell, trunk: confirmed }));
  const [page, panel] = await openPanel(vehicle, options);
  expect(await panel.getByRole("listitem").count()).toBe(0);
  expect(await panel.getByRole("paragraph").allInnerTexts()).toEqual([
    "6 of this dealer’s cars have been inspected so far; nothing is said of how their statements held up before 20 cars were tested.",
  ]);
  await expectReadable(page);
  await keepPicture(page, `few-${name.split(", ")[1] ?? ""}`);
});

test.each(looks)(
  "with enough cars shares stand with their intervals and counts: %s",
  async (name, options) => {
    const { vehicle } = await publish(world.dealer);
    await insert(enough);
    const [page, panel] = await openPanel(vehicle, options);
    const rows = await panel.getByRole("listitem").allInnerTexts();
    expect(rows.map((row) => row.split("\n").filter((line) => line !== ""))).toEqual([
      [
        "The whole car",
        "Fell",
        "8.6% (5.9% to 12%)",
        "If all that is open should fall",
        "11% (8.1% to 15%)",
        "Stated",
        "80% (77% to 83%)",
        "28 cars, 245 statements tested: 21 fell; beside them 7 found worse by one look and open, 35 only not contradicted.",
        "To the dealer’s credit: 35 faults were stated worse than found. It stands by itself and changes no share.",
        "Too little is known of other dealers to set beside it.",
      ],
      [
        "Body and paint",
        "Fell",
        "3.8% (1.5% to 8%)",
        "If all that is open should fall",
        "10% (5.8% to 15%)",
        "Stated",
        "80% (76% to 84%)",
        "28 cars, 105 statements tested: 4 fell; beside them 7 found worse by one look and open, 17 only not contradicted.",
        "To the dealer’s credit: 17 faults were stated worse than found. It stands by itself and changes no share.",
        "Too little is known of other dealers to set beside it.",
      ],
      ["Trunk", "too few cars to say (7 of 20)"],
      [
        "Wheels and tires",
        "Fell",
        "15% (10% to 22%)",
        "Stated",
        "80% (76% to 84%)",
        "28 cars, 112 statements tested: 17 fell; beside them none found worse that is open, 11 only not contradicted.",
        "To the dealer’s credit: 11 faults were stated worse than found. It stands by itself and changes no share.",
        "Too little is known of other dealers to set beside it.",
      ],
    ]);
    const [from = 0, to = 0] = await bandOf(panel);
    // Bars of what fell end at 50 %, where the longest of them fits.
    expect(from).toBeCloseTo(0.12, 1);
    expect(to).toBeCloseTo(0.24, 1);
    await panel.getByText("no rating of the dealer and no promise for this car").waitFor();
    await expectReadable(page);
    await keepPicture(page, `enough-${name.split(", ")[1] ?? ""}`);
  },
);

test("from three other dealers on, their middle stands beside the shares", async () => {
  const { vehicle } = await publish(world.dealer);
  await insert(enough);
  for (const name of ["Ada Fenwick-Lune", "Bram Fenwick-Lune", "Cleo Fenwick-Lune"]) {
    await insert(enough, await makePerson(service(), "dealer", name));
  }
  const [page, panel] = await openPanel(vehicle, desk);
  const [whole] = await panel.getByRole("listitem").allInnerTexts();
  expect(whole).toContain("In the middle of 3 other dealers: 8.6% fell, 80% stated.");
  await keepPicture(page, "others");
});
