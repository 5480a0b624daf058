import type { BrowserContext, CDPSession, Page } from "playwright-core";

/** A phone on a weak line: 1.6 Mbit/s down, 150 ms there and back, a quarter of this processor (common practice, no source). */
export const slowPhone = {
  bytesPerSecond: 1_600_000 / 8,
  roundTrip: 150,
  processorSlower: 4,
  viewport: { width: 360, height: 780 },
} as const;

export type FirstPaint = {
  /** Milliseconds from the request to the first content on the screen. */
  readonly painted: number;
  /** Bytes over the line, heads and bodies as they were sent, of everything the page loads. */
  readonly bytes: number;
};

async function slowDown(session: CDPSession): Promise<void> {
  await session.send("Network.enable");
  await session.send("Network.setCacheDisabled", { cacheDisabled: true });
  await session.send("Network.emulateNetworkConditions", {
    offline: false,
    latency: slowPhone.roundTrip,
    downloadThroughput: slowPhone.bytesPerSecond,
    uploadThroughput: slowPhone.bytesPerSecond / 2,
  });
  await session.send("Emulation.setCPUThrottlingRate", { rate: slowPhone.processorSlower });
}

const firstContent = (page: Page): Promise<number | null> =>
  page.evaluate(() => performance.getEntriesByName("first-contentful-paint")[0]?.startTime ?? null);

/** Opens an address as that phone would, with nothing kept from before, and waits until `shown` is on the page. */
export async function paintOnSlowPhone(
  context: BrowserContext,
  address: string,
  shown: string,
): Promise<FirstPaint> {
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await slowDown(session);
  let bytes = 0;
  session.on("Network.loadingFinished", ({ encodedDataLength }) => {
    bytes += encodedDataLength;
  });
  await page.goto(address, { waitUntil: "networkidle" });
  await page.getByText(shown).first().waitFor();
  // The letters come last; a phone this slow may seem to rest before it asks for them.
  await page.evaluate("document.fonts.ready.then(() => true)");
  const painted = await firstContent(page);
  await page.close();
  if (painted === null) throw new Error("The browser tells no first paint.");
  return { painted, bytes };
}
