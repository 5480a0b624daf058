import { fileURLToPath } from "node:url";
import { chromium, type Browser } from "playwright-core";

/** Unpacked by `npm run bench` before anything is measured. */
const executablePath = fileURLToPath(
  new URL("../../../../node_modules/.evenhand/browser/chromium", import.meta.url),
);

/** A browser for one measurement, gone afterwards. */
export async function withBrowser<T>(work: (browser: Browser) => Promise<T>): Promise<T> {
  const browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu"] });
  try {
    return await work(browser);
  } finally {
    await browser.close();
  }
}
