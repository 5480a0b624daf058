import { expect, test } from "vitest";
import { useService } from "../../api/setup/service.ts";
import { makePerson } from "../../api/setup/world.ts";
import { violationsInLooks } from "../setup/accessibility.ts";
import { useBrowser } from "../setup/browser.ts";
import { desk, keepPicture, openPage, phone } from "../setup/pages.ts";

const site = process.env["SITE_FOLDER"];
const service = useService(site === undefined ? {} : { environment: { SITE_FOLDER: site } });
const browser = useBrowser();

test("a buyer sets what a thing costs, is told what cannot be saved, and reads later what changed", async () => {
  const buyer = await makePerson(service(), "buyer", "Maribel Okonjo-Strand");
  const page = await openPage(browser(), buyer, desk);
  await page.goto("/");
  await page.getByRole("button", { name: "Maribel Okonjo-Strand", exact: true }).click();
  await page.getByRole("link", { name: "What repairs cost" }).click();
  await page.getByText("Nothing has been saved yet.").waitFor();
  await page.getByLabel("What this table is called").fill("Mine");
  const battery = page.getByRole("listitem").filter({ hasText: "renew the battery" });
  await battery.getByLabel(/^At the least, renew the battery$/i).fill("110");
  await battery.getByLabel(/^Most likely, renew the battery$/i).fill("90");
  await battery.getByLabel(/^At the most, renew the battery$/i).fill("260");
  const save = page.getByRole("button", { name: "Save the table" });
  await save.click();
  await page.getByText("One row cannot be saved as typed").waitFor();
  expect(await buyer.does("costTable.get")).toEqual({ revision: 0, table: null });

  await battery.getByLabel(/^Most likely, renew the battery$/i).fill("160");
  await battery.getByText("Trifles, and how likely it falls due").click();
  await battery.getByLabel("in doubt").fill("25");
  await battery.getByLabel("At the least, renew the battery, a trifle").fill("5");
  await battery.getByLabel("Most likely, renew the battery, a trifle").fill("15");
  await battery.getByLabel("At the most, renew the battery, a trifle").fill("40");
  await save.click();
  await page.getByText("The table is saved as version 1.").waitFor();
  const { table } = await buyer.does("costTable.get");
  expect(table?.rows).toMatchObject([
    {
      low: 11_000,
      likely: 16_000,
      high: 26_000,
      small: { low: 500, likely: 1_500, high: 4_000 },
      per: "place",
      occurs: { doubtful: 0.25 },
    },
  ]);

  await battery.getByLabel(/^At the most, renew the battery$/i).fill("300");
  await save.click();
  await page.getByText("The table is saved as version 2.").waitFor();
  await page.getByText("Version 2, “Mine”").click();
  await page
    .getByText(
      /Renew the battery: \$110, \$160, \$260 \(a trifle \$5, \$15, \$40\) before, \$110, \$160, \$300 \(a trifle .*\) now/,
    )
    .waitFor();
});

test.each([
  ["desk", desk],
  ["phone", phone],
] as const)("the table can be read and filled at the size of a %s", async (name, view) => {
  const buyer = await makePerson(service(), "buyer", "Maribel Okonjo-Strand");
  await buyer.does("costTable.put", {
    revision: 0,
    body: {
      format: "evenhand-cost-table",
      version: 1,
      name: "Mine",
      currency: "USD",
      rows: [{ row: "battery", words: "a battery", low: 11_000, likely: 16_000, high: 26_000 }],
    },
  });
  const page = await openPage(browser(), buyer, view);
  await page.goto("/costs");
  await page.getByText("a battery", { exact: true }).waitFor();
  await page.getByText("Trifles, and how likely it falls due").first().click();
  await keepPicture(page, `costs-${name}`);
  expect(await violationsInLooks(page, `costs-${name}`)).toEqual([]);
});
