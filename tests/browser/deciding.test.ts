import { readFileSync } from "node:fs";
import { checkCommand } from "../../apps/cli/src/check/index.ts";
import { plainStyle } from "../../apps/cli/src/terminal/style.ts";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { useService } from "../api/setup/service.ts";
import { summarize } from "../api/setup/story.ts";
import { useBrowser } from "./setup/browser.ts";
import { compareDemoCar, demoPeople } from "./setup/demo-car.ts";
import { signedIn } from "./setup/signed-in.ts";

const service = useService();
const browser = useBrowser();

/** Counts what is pressed; what is typed is typed where the focus is already. */
function presser(page: Page) {
  let presses = 0;
  return {
    press: async (role: "button" | "radio" | "textbox", name: string | RegExp) => {
      presses += 1;
      await page.getByRole(role, { name }).first().click();
    },
    count: () => presses,
  };
}

const asked = (page: Page) =>
  page.getByRole("group").filter({ hasText: /of 8: what will you do about it\?/ });

/** Presses what makes a file, and gives the path of what the browser then saved. */
async function download(page: Page, name: string): Promise<string> {
  const [saved] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name }).click(),
  ]);
  return saved.path();
}

/** What `npm run record -- check` says of the file, and its exit code. */
function checked(file: string) {
  const heard: string[] = [];
  const hear = (text: string): void => void heard.push(text);
  const code = checkCommand([file], { out: hear, error: hear, terminal: { width: 80, style: plainStyle } });
  return { code, said: heard.join("\n") };
}

/** Types where the focus is, if a field for words has it. */
async function typeWhereAsked(page: Page, words: string): Promise<boolean> {
  const isField = await page.evaluate(() => document.activeElement?.tagName === "TEXTAREA");
  if (isField) await page.keyboard.type(words);
  return isField;
}

test("a car with eight open matters is approved with twelve presses at most, and nothing is asked twice", async () => {
  const people = await demoPeople(service());
  const { comparison } = await compareDemoCar(people, "sovrano");
  const before = await summarize(people.buyer, comparison);
  const many = before.summary.openMatters.filter(({ lines }) => lines.length > 1);
  const disputed = many.flatMap(({ lines }) => lines).filter(({ outcome }) => outcome === "differ");
  const entries = disputed.slice(0, 1).map(({ entry }) => entry);
  await people.buyer.does("releases.create", { path: { id: comparison }, body: { entries } });
  const { id, summary } = await summarize(people.buyer, comparison);
  expect(summary.openMatters).toHaveLength(8);
  const context = await signedIn(browser(), people.buyer, { viewport: { width: 1280, height: 900 } });
  const page = await context.newPage();
  await page.goto(`/summaries/${id}`);
  // Only a part of it was laid before the dealer, and the word for it is of that part.
  await page.getByText(/laid before the dealer: 1 of \d+ lines/).waitFor();
  const { press, count } = presser(page);
  await press("radio", /^Approve/);
  expect(summary.openMatters[0]?.severity).toBe("halt");
  const fields: string[] = [];
  for (const [at, { headline, severity }] of summary.openMatters.entries()) {
    const one = page.getByRole("group", { name: headline, exact: true });
    await one.getByText(`${at + 1} of 8: what will you do about it?`).waitFor();
    await expect
      .poll(() =>
        page.evaluate(
          () => document.activeElement?.closest("fieldset[aria-label]")?.getAttribute("aria-label") ?? null,
        ),
      )
      .toBe(at === 0 ? null : headline);
    // Choosing to approve leaves the focus where it is; every later matter takes it, and its words where it asks for them.
    if (at === 0) await press("textbox", "In your own words");
    const typed = await typeWhereAsked(page, `I know of number ${at + 1}, and a mechanic looks at it.`);
    expect(typed).toBe(severity === "halt");
    if (typed) fields.push(headline);
    if (at === 4) {
      // What was said so far is there again, and the walk goes on where it was left.
      await page.getByText("What you chose and typed is kept").waitFor();
      await page.reload();
      await one.getByText(`${at + 1} of 8`).waitFor();
    }
    await press("button", "It is looked at again first");
  }
  expect(new Set(fields).size).toBe(fields.length);
  expect(await asked(page).count()).toBe(0);
  await press("button", "Approve this summary");
  expect(count()).toBeLessThanOrEqual(12);
  const said = page.getByRole("status").filter({ hasText: "You approved this summary" });
  await said.waitFor();
  await said.getByText("Nothing is bought or paid here").waitFor();
  await expect.poll(() => said.evaluate((one) => one === document.activeElement)).toBe(true);
  const box = await said.boundingBox();
  expect(box !== null && box.y > 0 && box.y + box.height < 900).toBe(true);
  const seen = await people.buyer.does("summaries.get", { path: { id } });
  expect(seen.decision?.acknowledgements.map(({ matter }) => matter)).toEqual(
    summary.openMatters.map((open) => open.id),
  );
});

test("what is taken as it is stays in sight until it has its reason, and can be said anew", async () => {
  const people = await demoPeople(service());
  const { comparison, statement } = await compareDemoCar(people, "larksong");
  const { id, summary, hash } = await summarize(people.buyer, comparison);
  const danger = summary.openMatters.findIndex(({ severity }) => severity === "danger");
  const context = await signedIn(browser(), people.buyer, { viewport: { width: 360, height: 740 } });
  const page = await context.newPage();
  await page.goto(`/summaries/${id}`);
  const { press } = presser(page);
  await press("radio", /^Approve/);
  for (let at = 0; at < danger; at += 1) {
    await page.getByLabel("In your own words").fill(`I know of number ${at + 1} and see to it.`);
    await press("button", "The dealer puts it right");
  }
  const headline = summary.openMatters[danger]?.headline ?? "";
  const one = page.getByRole("group", { name: headline, exact: true });
  await one.waitFor();
  await press("button", /^I take it as it is/);
  await expect
    .poll(() => one.getByLabel("In your own words").evaluate((field) => field === document.activeElement))
    .toBe(true);
  await page.keyboard.type("It goes");
  await press("button", "Go on");
  await one.getByText("At least ten letters.", { exact: true }).waitFor();
  await one.getByLabel("In your own words").fill("It goes on a trailer, never on the road.");
  await press("button", "Go on");
  await page.getByText("taken as it is: “It goes on a trailer, never on the road.”").waitFor();
  await press("button", `Change what you said: ${headline}`);
  await one.waitFor();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  // Countered instead, the dealer reads the price once, beside what it is asked for with.
  const price = { minor: 1_650_000, currency: "USD" } as const;
  await people.buyer.does("summaries.decide", { path: { id }, body: { decision: "counter", hash, price } });
  const dealers = await (await signedIn(browser(), people.dealer)).newPage();
  await dealers.goto("/decisions");
  await dealers.getByRole("button", { name: "Accept the counter" }).waitFor();
  expect(await dealers.getByText("$16,500").count()).toBe(1);
  // Each takes away what was sealed, and it holds without the service.
  const holds = { code: 0, said: expect.stringContaining("The file holds.") };
  const summaryFile = checked(await download(page, "Download to check it elsewhere"));
  expect(summaryFile).toEqual(holds);
  expect(summaryFile.said).toContain(hash);
  await dealers.goto(`/report-versions/${statement}`);
  await dealers.getByText(/^Receipt: signed with key [0-9a-f]{16} on /).waitFor();
  expect(checked(await download(dealers, "Download to check it elsewhere"))).toEqual(holds);
  await dealers.goto("/organization");
  const all = readFileSync(await download(dealers, "Export what the organization holds"), "utf8");
  expect(JSON.parse(all)).toMatchObject({ documents: [{ id: statement }], members: [{ role: "admin" }] });
});
