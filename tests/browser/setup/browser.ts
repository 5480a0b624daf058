import chromium from "@sparticuz/chromium";
import { chromium as driver, type Browser } from "playwright-core";
import { afterAll, beforeAll } from "vitest";

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

export async function launchBrowser(): Promise<Browser> {
  chromium.setGraphicsMode = false;
  return driver.launch({ executablePath: await chromium.executablePath(), args, headless: true });
}

/** One browser a file, closed afterwards. */
export function useBrowser(): () => Browser {
  let browser: Browser | undefined;
  beforeAll(async () => {
    browser = await launchBrowser();
  });
  afterAll(() => browser?.close());
  return () => {
    if (browser === undefined) throw new Error("The browser is up from the first test on.");
    return browser;
  };
}
