import type { Page } from "playwright-core";
import { expect } from "vitest";
import { violationsInLooks } from "./accessibility.ts";
import { rawIdsIn } from "./raw-ids.ts";

/** A screen keeps axe's rules, fits a phone, and shows nobody an id. */
export async function holds(page: Page, name: string): Promise<void> {
  expect(rawIdsIn(await page.locator("body").innerText())).toEqual([]);
  expect(await violationsInLooks(page, name)).toEqual([]);
}
