import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import type { Answer, AnswerCost } from "@evenhand/shared/page-one";
import { dearerFirst } from "@evenhand/shared/dearer-first";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { empty } from "../api/setup/database.ts";
import { useService } from "../api/setup/service.ts";
import { emailOf, password } from "../api/setup/world.ts";
import { useBrowser } from "./setup/browser.ts";
import { compareDemoCar, demoPeople } from "./setup/demo-car.ts";
import { keepPicture } from "./setup/pages.ts";
import { signedIn } from "./setup/signed-in.ts";

const service = useService({ emptyBetween: false });
const browser = useBrowser();

/** A table of costs with a row for whatever a demo car asks for; what the engine asks for is dear. */
const costTable = {
  format: "evenhand-cost-table",
  version: 1,
  name: "What I was quoted",
  currency: "USD",
  rows: [...new Set(sheetVersion1.items.flatMap(({ costRow }) => costRow ?? []))].map((row) => ({
    row,
    words: row,
    low: 12_345,
    likely: row.startsWith("engine") ? 523_456 : 23_456,
    high: row.startsWith("engine") ? 998_765 : 98_765,
    occurs: { differ: 0.9, unstated: 0.9, doubtful: 0.4, unseen: 0.1 },
  })),
};

/** A demo car compared and nothing else there, its answer as the service stores it, and its cost from the buyer's own table. */
async function answered() {
  await empty(service().databaseUrl);
  const people = await demoPeople(service());
  const { comparison } = await compareDemoCar(people, "sovrano");
  await people.buyer.does("costTable.put", { revision: 0, body: costTable });
  const of = { path: { id: comparison } };
  const answer = await people.buyer.does("comparisons.answer", of);
  return { people, comparison, answer, cost: await people.buyer.does("comparisons.cost", of) };
}

let common: ReturnType<typeof answered> | undefined;
/** The same for every test that only reads it. */
const readOnly = () => (common ??= answered());

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
  await page.locator("#first").waitFor({ state: "detached" });
  await page.getByRole("heading", { name: "What is wrong, worst first" }).waitFor();
  await page.evaluate(() => document.fonts.ready);
}

async function readsAs(page: Page, expected: Answer): Promise<void> {
  const listed = part(page, "What is wrong, worst first").getByRole("listitem");
  for (const [at, { matter, notes }] of expected.matters.slice(0, 3).entries()) {
    const shown = await listed.nth(at).textContent();
    for (const words of [matter.headline, matter.found, matter.next.words]) expect(shown).toContain(words);
    for (const { words } of notes.slice(0, 1)) expect(shown).toContain(words);
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

/** Of a text, from its matrix. */
const height = ([, , across = 0, up = 0]: number[]): number => Math.round(Math.hypot(across, up) * 100) / 100;

/** What the browser prints: of each page its text, and how large its letters are in points. */
async function printedPages(page: Page, format: string): Promise<{ text: string; sizes: number[] }[]> {
  const data = new Uint8Array(await page.pdf({ format, preferCSSPageSize: true }));
  const printed = await getDocument({ data, verbosity: 0 }).promise;
  const numbers = Array.from({ length: printed.numPages }, (_, index) => index + 1);
  return Promise.all(
    numbers.map(async (number) => {
      const { items } = await (await printed.getPage(number)).getTextContent();
      const said = items.flatMap((item) => ("str" in item && item.str.trim() !== "" ? [item] : []));
      return {
        text: said.map(({ str }) => str).join(" "),
        sizes: said.map(({ transform }) => height(transform)),
      };
    }),
  );
}

const dollars = (minor: number): string => `$${(minor / 100).toLocaleString("en-US")}`;

async function pricedAs(page: Page, { cost, asking }: AnswerCost): Promise<void> {
  const shown = part(page, "Cost to put right");
  await shown.getByText(dollars(cost?.total.likely ?? 0)).waitFor();
  const said = await shown.textContent();
  expect(said).toContain(dollars(asking?.minor ?? 0));
  expect(await shown.getByRole("listitem").count()).toBe(3);
  for (const { likely } of cost?.byMatter.slice(0, 3) ?? []) expect(said).toContain(dollars(likely));
}

const figures = (page: Page): Locator => page.locator("dl").filter({ hasText: "Not known" });

test("on the first screen of a desk: the three gravest, what nobody knows, the cost beside the price, and what to do next", async () => {
  // Of its own: here somebody asks the dealer.
  common = undefined;
  const { people, comparison, answer, cost } = await answered();
  expect(answer.matters.length).toBeGreaterThan(3);
  const desk = await signedIn(browser(), people.buyer, { viewport: { width: 1440, height: 900 } });
  const page = await desk.newPage();
  const asked: string[] = [];
  page.on("request", (request) => asked.push(new URL(request.url()).pathname));
  await openAnswer(page, comparison);
  const dearer = dearerFirst(answer, cost);
  expect(dearer.matters).not.toEqual(answer.matters);
  await readsAs(page, dearer);
  const headlines = part(page, "What is wrong, worst first").getByRole("heading", { level: 3 });
  expect(await headlines.allTextContents()).toEqual(dearer.matters.map(({ matter }) => matter.headline));
  await pricedAs(page, cost);
  for (const shown of [
    part(page, "What is wrong, worst first").getByRole("listitem").nth(2),
    part(page, "What nobody knows").getByRole("listitem").first(),
    figures(page),
    part(page, "What to do next").getByRole("listitem").last(),
  ])
    expect.soft(await lowerEdge(shown)).toBeLessThanOrEqual(900);
  expect(await page.locator("*").count()).toBeLessThanOrEqual(2500);
  for (const format of ["A4", "Letter"]) {
    const printed = await printedPages(page, format);
    // A car with fourteen matters takes a second leaf rather than letters nobody can read; the gravest stand on the first.
    expect.soft([format, printed.length <= 2]).toEqual([format, true]);
    expect.soft(Math.min(...printed.flatMap(({ sizes }) => sizes))).toBeGreaterThanOrEqual(8.5);
    for (const words of [
      answer.matters[7]?.matter.headline ?? "",
      "What nobody knows",
      "What stops the money",
    ])
      expect.soft(printed[0]?.text).toContain(words);
  }
  const dealer = part(page, "Ask the dealer");
  await dealer.getByRole("button", { name: `Ask this: ${answer.questions[0]}` }).click();
  await dealer.getByRole("link", { name: "Yours to the dealer: asked" }).waitFor();
  // Nothing is worked out here: neither the lines, nor the reports, nor what makes matters of them is asked for.
  expect(asked.filter((path) => /document|matters|compile-sheet/.test(path))).toEqual([]);
});

const pathOf = (request: { url(): string }): string => new URL(request.url()).pathname;

test("what the page opens with is asked for before its code has come, and once; a refusal is not kept for whoever signs in", async () => {
  const { people, comparison, answer } = await readOnly();
  const opensWith = ["", "/answer"].map((end) => `/api/v1/comparisons/${comparison}${end}`);
  const parts = [`/api/v1/case-parts/${comparison}/cases`];
  // As soon as the account has said that a buyer is signed in.
  const ofBuyers = [`/api/v1/comparisons/${comparison}/cost`, "/api/v1/summaries"];
  const first = ["/api/v1/account", ...opensWith, ...parts, ...ofBuyers];
  const buyer = await signedIn(browser(), people.buyer);
  const page = await buyer.newPage();
  const asked: string[] = [];
  page.on("request", (request) => asked.push(pathOf(request)));
  const askedAll = () => first.every((path) => asked.includes(path));
  // The application comes only when all of it has been asked for.
  await page.route(/\/assets\/main-[^/]+\.js$/, async (route) => {
    await expect.poll(askedAll).toBe(true);
    await route.continue();
  });
  await openAnswer(page, comparison);
  await readsAs(page, answer);
  expect(asked.filter((path) => /\/assets\/main-[^/]+\.js$/.test(path))).toHaveLength(1);
  expect(asked.filter((path) => first.includes(path)).toSorted()).toEqual(first.toSorted());

  const stranger = await (await browser().newContext({ baseURL: service().url })).newPage();
  const refused: number[] = [];
  stranger.on("response", (response) => {
    if (opensWith.includes(pathOf(response))) refused.push(response.status());
  });
  await stranger.goto(`/comparisons/${comparison}`);
  await stranger.getByLabel("E-mail address").fill(emailOf("Maribel Okonjo-Strand"));
  await expect.poll(() => refused).toEqual([401, 401]);
  await stranger.getByLabel("Password", { exact: true }).fill(password);
  await stranger.getByRole("button", { name: "Sign in" }).click();
  await stranger.getByRole("heading", { name: "What is wrong, worst first" }).waitFor();
  await readsAs(stranger, answer);
});

test("what is wrong stands there before the application has come, in the reader's colors, and gives way to it", async () => {
  const { people, comparison, answer } = await readOnly();
  const look = { viewport: { width: 360, height: 780 }, colorScheme: "dark" } as const;
  const buyer = await signedIn(browser(), people.buyer, look);
  const page = await buyer.newPage();
  const held = Promise.withResolvers<void>();
  await page.route(/\/assets\/main-[^/]+\.js$/, async (route) => {
    await held.promise;
    await route.continue();
  });
  await page.goto(`/comparisons/${comparison}`, { waitUntil: "commit" });
  const first = page.locator("#first");
  await first.getByRole("heading", { name: "What is wrong, worst first" }).waitFor();
  const words = await first.textContent();
  for (const { matter } of [...answer.matters, ...answer.unknown]) expect(words).toContain(matter.headline);
  for (const { matter } of answer.matters.slice(0, 3)) expect(words).toContain(matter.next.words);
  expect(words).toMatch(/\$[\d,]+ to \$[\d,]+/);
  await keepPicture(page, "first-sight-dark");
  const paper = await first.evaluate((element) => getComputedStyle(element).backgroundColor);
  expect(paper).toBe("rgb(18, 24, 29)");
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  held.resolve();
  await first.waitFor({ state: "detached" });
  await readsAs(page, answer);
});

test("on the first screen of a phone: the claims struck through, the four figures and the first matter", async () => {
  const { people, comparison, answer } = await readOnly();
  const phone = await signedIn(browser(), people.buyer, { viewport: { width: 360, height: 740 } });
  const small = await phone.newPage();
  await openAnswer(small, comparison);
  await readsAs(small, answer);
  expect(await small.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  const said = small
    .locator("section")
    .filter({ has: small.getByRole("heading", { name: "Grandspur Collector Hall says" }) });
  const struck = said.locator("s");
  expect(await struck.first().textContent()).toBe(answer.claims.line[0]?.words);
  expect(answer.claims.line.filter(({ became }) => became === "fell")).toHaveLength(await struck.count());
  await figures(small).getByText("$").first().waitFor();
  // Nothing is cut off: what a phone leaves out is behind a press that says how much.
  const clipped = await figures(small)
    .locator("*")
    .evaluateAll(
      (all) => all.filter((one) => one.scrollHeight > one.clientHeight + 1 && one.clientHeight > 0).length,
    );
  expect(clipped).toBe(0);
  const held = said.getByText(answer.claims.line.at(-1)?.words ?? "no such claim", { exact: true });
  expect(await held.isVisible()).toBe(false);
  await said.getByRole("button", { name: /^and \d+ more claims?$/ }).click();
  await held.waitFor();
  await said.getByRole("button", { name: "fewer claims" }).click();
  for (const shown of [
    struck.last(),
    figures(small),
    part(small, "What is wrong, worst first").getByRole("listitem").first(),
  ])
    expect.soft(await lowerEdge(shown)).toBeLessThanOrEqual(740);
});

test("a line is reached from its matter by keyboard, and the way back leads to the answer", async () => {
  const { people, comparison, answer } = await readOnly();
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
  expect(label).toContain(answer.matters[0]?.matter.headline ?? "no such matter");
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

test("the list of all lines draws what is in sight: 25 to a screen, filtered by matter and mark, and every tally says the same", async () => {
  const { people, comparison, answer } = await readOnly();
  const document = await people.buyer.does("comparisons.document", { path: { id: comparison } });
  const context = await signedIn(browser(), people.buyer, { viewport: { width: 1440, height: 900 } });
  const page = await context.newPage();
  await page.goto(`/comparisons/${comparison}?view=items`);
  const lines = page.locator("li[data-open]");
  await lines.first().waitFor();
  const listed = Object.values(document.tally).reduce((sum, count) => sum + count, 0);
  await page.getByRole("tab", { name: `All lines (${listed})` }).waitFor();
  await page.getByText(`${listed} of ${listed} lines`).waitFor();
  expect(answer.tally).toEqual(document.tally);
  for (const [outcome, count] of Object.entries(document.tally))
    await page.getByRole("button", { name: new RegExp(`^${count} ?${outcome}$`) }).waitFor();
  expect(await page.locator("*").count()).toBeLessThanOrEqual(2500);
  await page.mouse.wheel(0, 3000);
  const inSight = () =>
    lines.evaluateAll(
      (all) =>
        all.filter((one) => {
          const { top, bottom } = one.getBoundingClientRect();
          return top >= 85 && bottom <= 900;
        }).length,
    );
  await expect.poll(inSight).toBeGreaterThanOrEqual(25);
  expect(await page.locator("*").count()).toBeLessThanOrEqual(2500);
  const brakes = answer.matters.findIndex(({ matter }) => matter.kind === "brakes");
  await page.goto(`/comparisons/${comparison}?view=items&matter=${brakes}`);
  const ofMatter = answer.matters[brakes]?.matter.lines.length ?? 0;
  await page.getByText(`${ofMatter} of ${listed} lines`).waitFor();
  const hedged = document.entries.filter(
    ({ marks, coverageOnly }) => marks.includes("hedged") && coverageOnly !== true,
  ).length;
  await page.goto(`/comparisons/${comparison}?view=items&mark=hedged`);
  await page.getByText(`${hedged} of ${listed} lines`).waitFor();
});

test("a line says why it matters and what it costs, and leads to asking the dealer and to laying it before them", async () => {
  const { people, comparison } = await readOnly();
  const document = await people.buyer.does("comparisons.document", { path: { id: comparison } });
  const at = document.entries.findIndex(
    ({ item, outcome }) => item === "steering.free-play" && outcome === "differ",
  );
  const context = await signedIn(browser(), people.buyer, { viewport: { width: 1440, height: 900 } });
  const page = await context.newPage();
  await page.goto(`/comparisons/${comparison}?open=${at}`);
  const line = page.locator('li[data-open="true"]');
  await line.getByText(/^Why it matters: safety/).waitFor();
  await line.getByText(/By your own table, to .+: \$123.45 to \$987.65/).waitFor();
  const ask = await line.getByRole("link", { name: "Ask the dealer about it" }).getAttribute("href");
  expect(ask).toContain("item=steering.free-play");
  await line.getByRole("button", { name: "Lay it before the dealer" }).click();
  expect(
    await page.getByRole("checkbox", { name: "Lay before the dealer: steering free play" }).isChecked(),
  ).toBe(true);
});
