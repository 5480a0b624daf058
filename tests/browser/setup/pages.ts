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

/** Waits until the page looks as it will: a change of colors is heard of a frame or two later, and then glides. */
export const settle = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    await document.fonts.ready;
    for (let frame = 0; frame < 5; frame += 1) await new Promise(requestAnimationFrame);
    for (const each of document.getAnimations()) if (each instanceof CSSTransition) each.finish();
  });

/** Keeps the page as a picture, where pictures are asked for. */
export async function keepPicture(page: Page, name: string, whole = true): Promise<void> {
  if (pictures === undefined) return;
  mkdirSync(pictures, { recursive: true });
  await page.evaluate(() => window.scrollTo(0, 0));
  await settle(page);
  const width = page.viewportSize()?.width ?? 0;
  // Halfway through a change of colors an empty box looks filled.
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
  page.setDefaultTimeout(60_000);
  return page;
}
