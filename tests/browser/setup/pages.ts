import { mkdirSync } from "node:fs";
import { join } from "node:path";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import type { Person } from "../../api/setup/person.ts";
import { signedIn } from "./signed-in.ts";

export const phone = { viewport: { width: 360, height: 780 } };
export const desk = { viewport: { width: 1440, height: 1000 } };
/** The buyer reads in New York what stands in Denver. */
export const east = { timezoneId: "America/New_York" };

/** With PICTURES, the folder of docs/pictures or another, steps are also kept as pictures. */
const pictures = process.env["PICTURES"];

/** Keeps the page as a picture, where pictures are asked for. */
export async function keepPicture(page: Page, name: string, whole = true): Promise<void> {
  if (pictures === undefined) return;
  mkdirSync(pictures, { recursive: true });
  await page.evaluate(async () => {
    window.scrollTo(0, 0);
    await document.fonts.ready;
    // The page hears of another color scheme a frame or two later.
    for (let frame = 0; frame < 5; frame += 1) await new Promise(requestAnimationFrame);
  });
  const width = page.viewportSize()?.width ?? 0;
  // A change of colors glides: halfway through it an empty box looks filled.
  await page.screenshot({
    path: join(pictures, `${name}-${width}.png`),
    fullPage: whole,
    animations: "disabled",
  });
}

/** A page of its own for somebody signed in; with `at`, at an hour of its own. */
export async function openPage(
  browser: Browser,
  person: Person,
  options: BrowserContextOptions = {},
  at?: Date,
): Promise<Page> {
  const context = await signedIn(browser, person, options);
  const page = await context.newPage();
  if (at !== undefined) await page.clock.setSystemTime(at);
  page.setDefaultTimeout(30_000);
  return page;
}
