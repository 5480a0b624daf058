import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import { analyze } from "@evenhand/comparison/analyze";
import { answer } from "@evenhand/matters/answer";
import { matters } from "@evenhand/matters/matters";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { useService } from "../api/setup/service.ts";
import { useBrowser } from "./setup/browser.ts";
import { compareDemoCar, demoPeople, demoReport } from "./setup/demo-car.ts";
import { signedIn } from "./setup/signed-in.ts";

const service = useService();
const browser = useBrowser();

/** The answer as the libraries give it, away from any page. */
function expectedAnswer(name: string) {
  const a = demoReport(`${name}-statement`);
  const b = demoReport(`${name}-inspection`);
  const reports = { a, b, sheet: compileSheet(sheetVersion1) };
  const comparison = analyze(a, b, reports.sheet);
  return answer({ comparison, matters: matters(comparison, reports), reports });
}

const part = (page: Page, heading: string): Locator =>
  page
    .locator("section")
    .filter({ has: page.getByRole("heading", { name: heading, exact: true, level: 2 }) });

/** Lower edge of what is shown, in pixels from the top of the page. */
async function lowerEdge(shown: Locator): Promise<number> {
  const box = await shown.boundingBox();
  if (box === null) throw new Error("It is not shown.");
  return box.y + box.height;
}

async function openAnswer(page: Page, comparison: string): Promise<void> {
  await page.goto(`/comparisons/${comparison}`);
  await page.getByRole("heading", { name: "What is wrong, worst first" }).waitFor();
  await page.evaluate(() => document.fonts.ready);
}

async function readsAs(page: Page, expected: ReturnType<typeof expectedAnswer>): Promise<void> {
  const listed = part(page, "What is wrong, worst first").getByRole("listitem");
  for (const [at, { matter, notes }] of expected.matters.slice(0, 3).entries()) {
    const shown = await listed.nth(at).textContent();
    for (const words of [matter.headline, matter.found, matter.next.words]) expect(shown).toContain(words);
    for (const { words } of notes.slice(0, 2)) expect(shown).toContain(words);
  }
  const stops = await part(page, "What stops the money").textContent();
  for (const { words } of expected.stops.slice(0, 4)) expect(stops).toContain(words);
  expect(await part(page, "What nobody knows").textContent()).toContain(
    expected.unknown[0]?.matter.headline ?? "no such matter",
  );
  expect(await part(page, "What to do next").getByRole("listitem").first().textContent()).toContain(
    expected.matters[0]?.matter.next.words ?? "no such step",
  );
  for (const question of expected.questions)
    await part(page, "Ask the dealer").getByText(question, { exact: true }).waitFor();
  expect(await part(page, "What became of the statement").textContent()).toContain(
    `not found as stated${expected.claims.fell}`,
  );
}

test("the comparison opens with the answer: the three gravest, what nobody knows and what to do next, on the first screen of a desk", async () => {
  const people = await demoPeople(service());
  const { comparison } = await compareDemoCar(people, "sovrano");
  const expected = expectedAnswer("sovrano");
  expect(expected.matters.length).toBeGreaterThan(3);

  const desk = await signedIn(browser(), people.buyer, { viewport: { width: 1440, height: 900 } });
  const page = await desk.newPage();
  await openAnswer(page, comparison);
  await readsAs(page, expected);
  for (const shown of [
    part(page, "What is wrong, worst first").getByRole("listitem").nth(2),
    part(page, "What nobody knows").getByRole("listitem").first(),
    part(page, "What to do next").getByRole("listitem").last(),
  ])
    expect(await lowerEdge(shown)).toBeLessThanOrEqual(900);
  expect(await page.locator("*").count()).toBeLessThanOrEqual(2500);

  const phone = await signedIn(browser(), people.buyer, { viewport: { width: 360, height: 740 } });
  const small = await phone.newPage();
  await openAnswer(small, comparison);
  await readsAs(small, expected);
  expect(await small.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  expect(await lowerEdge(part(small, "What to do next"))).toBeLessThan(
    await lowerEdge(part(small, "What is wrong, worst first").getByRole("listitem").first()),
  );
});

test("a line is reached from its matter by keyboard, and the way back leads to the answer", async () => {
  const people = await demoPeople(service());
  const { comparison } = await compareDemoCar(people, "sovrano");
  const context = await signedIn(browser(), people.buyer, { viewport: { width: 1280, height: 900 } });
  const page = await context.newPage();
  await openAnswer(page, comparison);
  const matter = part(page, "What is wrong, worst first").getByRole("listitem").first();
  await page.getByRole("tab", { name: "The answer" }).focus();
  for (let presses = 0; presses < 5; presses += 1) {
    await page.keyboard.press("Tab");
    if (
      await matter
        .getByRole("button")
        .first()
        .evaluate((one) => one === document.activeElement)
    )
      break;
  }
  const opens = matter.getByRole("button").first();
  const label = await opens.getAttribute("aria-label");
  expect(label).toContain((await opens.textContent()) ?? "no words");
  expect(label).toContain(expectedAnswer("sovrano").matters[0]?.matter.headline ?? "no such matter");
  await page.keyboard.press("Enter");
  const line = matter.getByRole("listitem").first().getByRole("button");
  await line.waitFor();
  const name = (await line.textContent()) ?? "";
  await page.keyboard.press("Tab");
  expect(await line.evaluate((one) => one === document.activeElement)).toBe(true);
  await page.keyboard.press("Enter");
  const opened = page.locator('li[data-open="true"]');
  await opened.waitFor();
  const opener = opened.getByRole("button", { expanded: true });
  await expect.poll(() => opener.evaluate((one) => one === document.activeElement)).toBe(true);
  expect(name.toLowerCase()).toContain(((await opener.textContent()) ?? "").split(" ")[0]?.toLowerCase());
  expect(await opener.evaluate((one) => one.getBoundingClientRect().top > 60)).toBe(true);
  await page.goBack();
  await page.getByRole("heading", { name: "What to do next" }).waitFor();

  await page.goto(`/comparisons/${comparison}?section=engine`);
  await page.getByRole("heading", { name: "Most pressing first" }).waitFor();
  await page.goto(`/comparisons/${comparison}?view=whole`);
  await page.getByRole("heading", { name: "Nobody saw, of what a purchase can turn on" }).waitFor();
});
