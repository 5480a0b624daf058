import type { BrowserContextOptions, Locator, Page } from "playwright-core";
import { beforeEach, expect, test } from "vitest";
import { alike, confirmed, fell, insertInspected, notContradicted } from "../api/setup/inspected-cars.ts";
import { useService } from "../api/setup/service.ts";
import { publish } from "../api/setup/story.ts";
import { makePerson, makeWorld, type World } from "../api/setup/world.ts";
import { violationsOn } from "./setup/accessibility.ts";
import { useBrowser } from "./setup/browser.ts";
import { desk, keepPicture, openPage, phone } from "./setup/pages.ts";

const site = process.env["SITE_FOLDER"];
const service = useService(site === undefined ? {} : { environment: { SITE_FOLDER: site } });
const browser = useBrowser();
let world: World;
beforeEach(async () => {
  world = await makeWorld(service());
});

const insert = (cars: Parameters<typeof insertInspected>[1], dealer = world.dealer) =>
  insertInspected({ ...world, databaseUrl: service().databaseUrl, dealer }, cars);

/** Two sections with enough cars, one without. */
const enough = [
  ...alike(17, { body: confirmed, wheels: fell }),
  ...alike(7, { body: notContradicted, wheels: confirmed, trunk: confirmed }),
  ...alike(4, { body: fell, wheels: notContradicted }),
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
    "6 of this dealer’s cars have been inspected so far; nothing is said of how their statements held up before 20 cars were tested in the same section.",
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
        "Body and paint",
        "Held up",
        "86% (72% to 94%)",
        "Confirmed",
        "61% (45% to 75%)",
        "28 cars: confirmed in 17, only not contradicted in 7, something found worse in 4",
      ],
      ["Trunk", "too few cars to say (7 of 20)"],
      [
        "Wheels and tires",
        "Held up",
        "39% (25% to 55%)",
        "Confirmed",
        "25% (14% to 40%)",
        "28 cars: confirmed in 7, only not contradicted in 4, something found worse in 17",
      ],
    ]);
    const [from = 0, to = 0] = await bandOf(panel);
    expect(from).toBeCloseTo(0.72, 1);
    expect(to).toBeCloseTo(0.94, 1);
    await panel.getByText("no rating of the dealer and no promise for this car").waitFor();
    expect(await panel.getByText("toward those of other dealers").count()).toBe(0);
    await expectReadable(page);
    await keepPicture(page, `enough-${name.split(", ")[1] ?? ""}`);
  },
);

test("where other dealers' shares were drawn on, that is said", async () => {
  const { vehicle } = await publish(world.dealer);
  await insert(enough);
  for (const name of ["Ada Fenwick-Lune", "Bram Fenwick-Lune", "Cleo Fenwick-Lune", "Dov Fenwick-Lune"]) {
    await insert(enough, await makePerson(service(), "dealer", name));
  }
  const [page, panel] = await openPanel(vehicle, desk);
  await panel.getByText("toward those of other dealers").waitFor();
  const [body] = await panel.getByRole("listitem").allInnerTexts();
  expect(body).toContain("84% (75% to 92%)");
  expect(body).toContain("28 cars: confirmed in 17");
  await keepPicture(page, "pooled");
});
