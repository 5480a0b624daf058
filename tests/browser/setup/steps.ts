import type { Browser, Page } from "playwright-core";
import { emailOf, password } from "../../api/setup/world.ts";

/** Signs in on the page itself, in a browser context of that person's own. */
export async function signIn(browser: Browser, url: string, name: string): Promise<Page> {
  const context = await browser.newContext({ baseURL: url, viewport: { width: 1280, height: 900 } });
  const page = await context.newPage();
  page.setDefaultTimeout(60_000);
  await page.goto("/");
  await page.getByLabel("E-mail address").fill(emailOf(name));
  await page.getByLabel("Password", { exact: true }).fill(password);
  await page.getByRole("button", { name: "Sign in" }).click();
  await page.getByRole("heading", { name: `Good day, ${name}` }).waitFor();
  return page;
}

/** A section of the sheet; an inspection is shown by stage at first. */
export const openSection = async (page: Page, section: string): Promise<void> => {
  await page.getByText("By section", { exact: true }).click();
  await page
    .getByRole("navigation", { name: "Sections of the sheet" })
    .getByRole("button", { name: section })
    .click();
};

const openPlace = async (page: Page, section: string, item: string, place: RegExp) => {
  await openSection(page, section);
  const card = page.locator(`[id="item-${item}"]`);
  await card.getByRole("button", { name: place }).click();
  return card;
};

const next = async (page: Page): Promise<void> => page.getByRole("button", { name: "Done, next" }).click();

export async function read(
  page: Page,
  section: string,
  item: string,
  place: RegExp,
  values: readonly number[],
): Promise<void> {
  const card = await openPlace(page, section, item, place);
  const fields = card.locator('input[inputmode="decimal"]');
  for (const [at, value] of values.entries()) await fields.nth(at).fill(String(value));
  await next(page);
}

export async function choose(
  page: Page,
  section: string,
  item: string,
  place: RegExp,
  answer: string,
): Promise<void> {
  const card = await openPlace(page, section, item, place);
  await card.getByRole("radio", { name: answer, exact: true }).check();
  await next(page);
}

export async function notSeen(
  page: Page,
  section: string,
  item: string,
  place: RegExp,
  reason: string,
): Promise<void> {
  const card = await openPlace(page, section, item, place);
  await card.getByRole("button", { name: "Not seen" }).click();
  await card.getByRole("radio", { name: reason, exact: true }).check();
  await next(page);
}

/** Adds an instrument on the sheet's first section. */
export async function addInstrument(page: Page, name: string, step: string, within: string): Promise<void> {
  await openSection(page, "Visit");
  await page.getByRole("button", { name: "Add an instrument" }).click();
  await page.getByLabel("Name, as you call it").fill(name);
  await page.getByLabel("Unit", { exact: true }).selectOption("1/32in");
  await page.getByLabel("Smallest step it shows").fill(step);
  await page.getByLabel(/^Accuracy ±(?! of)/).fill(within);
  await page.getByRole("button", { name: "Add it" }).click();
  await page.getByText(name, { exact: true }).waitFor();
}

/** Waits until everything has arrived, says what it means, and seals. */
export async function seal(page: Page, what: "statement" | "report"): Promise<void> {
  await openSection(page, "Visit");
  await page.getByText("Everything on this device has reached the service").waitFor();
  await page.getByRole("checkbox", { name: /^These findings are what/ }).check();
  await page.getByRole("button", { name: `Seal the ${what}` }).click();
}
