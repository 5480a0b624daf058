import { writeWorkbook } from "@evenhand/tables/write-workbook";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import type { Person } from "../api/setup/person.ts";
import { useService } from "../api/setup/service.ts";
import { acceptOrder, header, makeVehicle, order, publish } from "../api/setup/story.ts";
import { makeWorld } from "../api/setup/world.ts";
import { useBrowser } from "./setup/browser.ts";
import { signedIn } from "./setup/signed-in.ts";
import { seal } from "./setup/steps.ts";

const service = useService();
const browser = useBrowser();

const captions = `WEBVTT

00:02.000 --> 00:05.000
The horn works and the wipers work.

01:10.000 --> 01:14.000
The left front door has a dent of fifteen millimeters.

01:20.000 --> 01:24.000
The radio does not work.
`;

async function openReading(person: Person, report: string): Promise<Page> {
  const context = await signedIn(browser(), person, { viewport: { width: 1280, height: 900 } });
  const page = await context.newPage();
  page.setDefaultTimeout(60_000);
  await page.goto(`/reports/${report}`);
  await page.getByRole("link", { name: "Read a recording’s captions or a sheet" }).click();
  return page;
}

const choose = async (page: Page, name: string, bytes: Uint8Array | string): Promise<void> => {
  await page
    .locator("input[type=file]")
    .setInputFiles({ name, mimeType: "application/octet-stream", buffer: Buffer.from(bytes) });
  await page.getByRole("heading", { name: "What was read" }).waitFor();
};

const line = (page: Page, words: RegExp) =>
  page
    .getByRole("listitem")
    .filter({ has: page.getByRole("button", { name: words }) })
    .last();

const sealedFindings = async (person: Person, report: string) => {
  const { versions } = await person.does("reports.get", { path: { id: report } });
  const [version] = versions;
  const document = await person.does("reportVersions.document", { path: { id: version?.id ?? "" } });
  return document.findings.map(({ item, position, answer }) => [item, position, answer]);
};

test("captions become a sealed statement of what was accepted, and of nothing else", async () => {
  const { dealer } = await makeWorld(service());
  const vehicle = await makeVehicle(dealer);
  const { id } = await dealer.does("reports.state", { path: { id: vehicle }, body: header });
  const page = await openReading(dealer, id);
  await page.getByLabel(/Where the recording can be watched/).fill("https://video.example/walk?v=7");
  await choose(page, "walk.vtt", captions);
  expect(await page.getByRole("link", { name: "Watch at 1:10" }).getAttribute("href")).toBe(
    "https://video.example/walk?v=7#t=70",
  );
  await page.getByRole("heading", { name: /^Never mentioned: \d+ items$/ }).waitFor();
  // The words lead to the finding, which has the focus and is walked with the keys.
  await page.getByRole("link", { name: /^The horn works/ }).click();
  const horn = page.getByRole("button", { name: /^Horn: works/ });
  await expect.poll(() => horn.evaluate((one) => one === document.activeElement)).toBe(true);
  await page.keyboard.press("a");
  await line(page, /^Horn: works/)
    .getByText("In the draft")
    .waitFor();
  await page.getByRole("button", { name: /^Radio/ }).press("r");
  await line(page, /^Radio/)
    .getByText("Rejected")
    .waitFor();
  // Whoever opens the page again goes on where they were.
  await page.reload();
  await page.getByText("walk.vtt is being gone through below.").waitFor();
  await line(page, /^Radio/)
    .getByText("Rejected")
    .waitFor();
  await page.getByText("1 of 4 lines accepted, 1 rejected, 2 left").waitFor();
  expect(await page.getByLabel(/Where the recording can be watched/).inputValue()).toContain("walk?v=7");
  await page.getByRole("button", { name: /^Panel faults.*left front door/i }).press("c");
  await page.getByLabel("Firmness").selectOption("hedged");
  await page.getByRole("button", { name: "Accept as changed" }).click();
  await page.getByLabel("Sure to at least").selectOption("0.5");
  await page.getByRole("button", { name: "Accept this 1 line" }).click();
  await page.getByText("3 of 4 lines accepted, 1 rejected, 0 left").waitFor();
  await page.getByRole("link", { name: "Back to the sheet" }).click();
  await seal(page, "statement");
  await page.getByRole("heading", { name: "Statement, version 1" }).waitFor();
  expect(await page.getByRole("link", { name: "XLSX" }).getAttribute("href")).toMatch(/table\?form=xlsx$/);
  const findings = await sealedFindings(dealer, id);
  expect(findings.map(([item]) => item)).toEqual(
    expect.arrayContaining(["electrics.horn", "electrics.wipers"]),
  );
  expect(findings).toHaveLength(3);
});

test("a workbook becomes a sealed inspection, and a line settled by hand is known the next time", async () => {
  const world = await makeWorld(service());
  const { dealer, buyer, inspector } = world;
  const { vehicle, statement } = await publish(dealer);
  const orderId = await order(buyer, inspector, vehicle, statement);
  await acceptOrder(inspector, orderId);
  const { id } = await inspector.does("reports.inspect", { path: { id: orderId }, body: header });
  const page = await openReading(inspector, id);
  const sheet = writeWorkbook([
    {
      name: "Car",
      rows: [
        ["Item", "Result"],
        ["Horn", "✗"],
        ["Wipers", "✓"],
        ["Whirligig", "✓"],
      ],
    },
  ]);
  await choose(page, "mine.xlsx", sheet);
  await page.getByRole("button", { name: "Accept these 2 lines" }).click();
  const odd = line(page, /^Nothing was read from this/);
  await odd.getByRole("button", { name: "Settle by hand" }).click();
  await page.getByLabel("Look for an item").fill("blower");
  await page.getByLabel("Item", { exact: true }).selectOption("electrics.blower");
  await page.getByRole("radio", { name: "works", exact: true }).check();
  await page.getByRole("button", { name: "Accept as changed" }).click();
  await page.getByText("3 of 3 lines accepted, 0 rejected, 0 left").waitFor();
  await page.getByText("Everything is saved with the service").waitFor();
  await choose(page, "mine.xlsx", sheet);
  await page.getByText("As it was settled on an earlier sheet.").waitFor();
  await page.getByText("3 of 3 lines accepted, 0 rejected, 0 left").waitFor();
  await page.getByRole("link", { name: "Back to the sheet" }).click();
  await seal(page, "report");
  await page.getByText("Your report is sealed as version 1").waitFor();
  expect(await sealedFindings(inspector, id)).toEqual(
    expect.arrayContaining([
      ["electrics.blower", "", { kind: "working", value: "yes" }],
      ["electrics.horn", "", { kind: "working", value: "no" }],
      ["electrics.wipers", "", { kind: "working", value: "yes" }],
    ]),
  );
});
