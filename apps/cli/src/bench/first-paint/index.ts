import type { Browser } from "playwright-core";
import { withDatabase } from "../database.ts";
import { withBrowser } from "../driven-browser.ts";
import { benchRow, type BenchOptions, type BenchRow } from "../row.ts";
import { withGround, type Ground } from "../served/ground.ts";
import { type FirstPaint, paintOnSlowPhone, slowPhone } from "./slow-phone.ts";

const RUNS = 5;

async function paintOnce(browser: Browser, { service, comparison }: Ground): Promise<FirstPaint> {
  const { address } = service.served;
  const context = await browser.newContext({ viewport: slowPhone.viewport });
  const [name = "", value = ""] = service.cookie.split("=");
  await context.addCookies([{ name, value, url: address }]);
  try {
    return await paintOnSlowPhone(
      context,
      `${address}/comparisons/${comparison}`,
      "What is wrong, worst first",
    );
  } finally {
    await context.close();
  }
}

/** When a buyer on a weak line sees the first of the comparison, against what its bytes alone take on that line. */
export const rows = ({ print }: BenchOptions): Promise<BenchRow[]> =>
  withDatabase((client, url) =>
    withGround(client, url, (ground) =>
      withBrowser(async (browser) => {
        const paints: FirstPaint[] = [];
        for (let run = 0; run < RUNS; run += 1) paints.push(await paintOnce(browser, ground));
        const ratios = paints.map(({ painted, bytes }) => ({
          painted,
          bytes,
          ratio: painted / ((1000 * bytes) / slowPhone.bytesPerSecond),
        }));
        const middle = ratios.toSorted((a, b) => a.ratio - b.ratio)[Math.floor(RUNS / 2)];
        if (middle === undefined) throw new Error("nothing was painted");
        print(
          `first content after ${middle.painted.toFixed(0)} ms; ${(middle.bytes / 1000).toFixed(0)} kB in all, ` +
            `${((1000 * middle.bytes) / slowPhone.bytesPerSecond).toFixed(0)} ms on that line`,
        );
        return [
          benchRow({
            work: "first paint of the comparison page on a slow phone",
            against: "its own bytes at that bandwidth",
            value: middle.ratio,
            goal: 1.4,
            better: "lower",
          }),
        ];
      }),
    ),
  );
