import type { BrowserContext } from "playwright-core";
import { median } from "../comparison-speed/blocks.ts";
import { withDatabase } from "../database.ts";
import { withBrowser } from "../driven-browser.ts";
import { benchRow, type BenchOptions, type BenchRow } from "../row.ts";
import { withGround, type Ground } from "../served/ground.ts";

const RUNS = 7;

/** What opening a page took of the main thread, in milliseconds of processor time, and how many elements it then had. */
type Opening = { readonly work: number; readonly nodes: number };

const withContext = <T>(ground: Ground, work: (context: BrowserContext) => Promise<T>): Promise<T> =>
  withBrowser(async (browser) => {
    const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
    const [name = "", value = ""] = ground.service.cookie.split("=");
    await context.addCookies([{ name, value, url: ground.service.served.address }]);
    return work(context);
  });

/** Opens an address anew and waits until `shown` is a heading on it and nothing more is asked for. */
async function openOnce(context: BrowserContext, address: string, shown: string): Promise<Opening> {
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  // The thread's own time: what else the machine does is no work of the page.
  await session.send("Performance.enable", { timeDomain: "threadTicks" });
  await page.goto(address);
  await page.getByRole("heading", { name: shown }).first().waitFor();
  await page.waitForLoadState("networkidle");
  const { metrics } = await session.send("Performance.getMetrics");
  const work = 1000 * (metrics.find(({ name }) => name === "TaskDuration")?.value ?? Number.NaN);
  const nodes = await page.locator("*").count();
  await page.close();
  return { work, nodes };
}

async function measure(ground: Ground): Promise<{ cars: Opening[]; answers: Opening[] }> {
  const { address } = ground.service.served;
  const [cars, answers]: [Opening[], Opening[]] = [[], []];
  await withContext(ground, async (context) => {
    // They take turns, so that a slow stretch of the machine meets both; the first of each warms up.
    for (let run = 0; run <= RUNS; run += 1) {
      const list = await openOnce(context, `${address}/cars`, "Cars");
      const page = await openOnce(
        context,
        `${address}/comparisons/${ground.comparison}`,
        "What is wrong, worst first",
      );
      if (run > 0) cars.push(list);
      if (run > 0) answers.push(page);
    }
  });
  return { cars, answers };
}

/** Main-thread work of opening a comparison against that of the cars list, and how large the page is. */
export const rows = ({ print }: BenchOptions): Promise<BenchRow[]> =>
  withDatabase((client, url) =>
    withGround(client, url, async (ground) => {
      const { cars, answers } = await measure(ground);
      const [list, page] = [median(cars.map(({ work }) => work)), median(answers.map(({ work }) => work))];
      const nodes = Math.max(...answers.map((one) => one.nodes));
      print(
        `opening the cars list ${list.toFixed(0)} ms, the comparison ${page.toFixed(0)} ms, ${nodes} elements`,
      );
      return [
        benchRow({
          work: "opening the comparison, main-thread work",
          against: "the cars list, same run",
          value: page / list,
          goal: 1.5,
          better: "lower",
        }),
        benchRow({
          work: "elements of the comparison's page",
          against: "a count",
          value: nodes,
          goal: 2500,
          better: "lower",
        }),
      ];
    }),
  );
