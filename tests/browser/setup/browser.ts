import { fileURLToPath } from "node:url";
import { chromium, type Browser } from "playwright-core";
import { afterEach, beforeAll } from "vitest";

/** Unpacked by `npm test` and its kin before any test runs. */
const executablePath = fileURLToPath(
  new URL("../../../node_modules/.evenhand/browser/chromium", import.meta.url),
);

/** A root account has no sandbox to give; the rest keeps the browser from talking to anybody but the service. */
const args = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

const launchBrowser = (): Promise<Browser> => chromium.launch({ executablePath, args, headless: true });

let common: Promise<Browser> | undefined;

/** One browser a worker, which ends with it; what a file's tests left open in it is closed after each. */
export function useBrowser(): () => Browser {
  let browser: Browser | undefined;
  beforeAll(async () => {
    browser = await (common ??= launchBrowser());
    // A browser that broke in one file is none for the next.
    if (!browser.isConnected()) browser = await (common = launchBrowser());
  });
  afterEach(async () => {
    for (const context of browser?.contexts() ?? []) await context.close();
  });
  return () => {
    if (browser === undefined) throw new Error("The browser is up from the first test on.");
    return browser;
  };
}
