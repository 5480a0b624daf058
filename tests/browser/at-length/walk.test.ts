import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { scopeOf, walkOf, type WalkStage } from "../../../apps/web/src/features/reports/walk.ts";
import { useService } from "../../api/setup/service.ts";
import { useBrowser } from "../setup/browser.ts";
import { emptyInspection, index, keyOf } from "../setup/empty-inspection.ts";
import { faultsOnTheWay } from "../setup/focus.ts";
import { desk, keepPicture, openPage, phone } from "../setup/pages.ts";
import { same, Walker } from "../setup/walker.ts";

const site = process.env["SITE_FOLDER"];
const service = useService(site === undefined ? {} : { environment: { SITE_FOLDER: site } });
const browser = useBrowser();

/** The key of the line that is open, or nothing at the end of a stage. */
const openKey = async (page: Page): Promise<string | undefined> =>
  page.evaluate(() => document.querySelector('li[data-open="true"]')?.id.replace("place-", ""));

async function walkStage(walker: Walker, stage: WalkStage): Promise<void> {
  const { page } = walker;
  await page.getByText(/of \d+ answered$/).waitFor();
  if (stage.cautions.length > 0) {
    await keepPicture(page, `walk-${stage.stage}-gate`, false);
    await walker.tap(page.getByRole("button", { name: "I have read these: begin" }));
  }
  await page.locator('li[data-open="true"]').waitFor();
  await keepPicture(page, `walk-${stage.stage}`);
  while (stage.lines.some(({ key }) => !walker.said.has(key))) {
    await page.locator('li[data-open="true"]').waitFor();
    const key = await openKey(page);
    const stop = stage.stops.find(({ lines }) => lines.some((line) => line.key === key));
    const place = stop?.lines.find((line) => line.key === key);
    if (stop === undefined || place === undefined) throw new Error(`${key} is not of this stage`);
    await walker.step(stage, stop, place);
  }
}

test("a first look is filled on a phone by stage and place with one and a half presses a line at most", async () => {
  const { inspector, id, found, address } = await emptyInspection(service());
  const walk = walkOf(index, found.vehicle.form, scopeOf("first-look", null));
  const lines = walk.flatMap((stage) => stage.lines);
  const page = await openPage(browser(), inspector, { ...phone, hasTouch: true });
  const wanted = new Map(found.findings.map((finding) => [keyOf(finding), finding.answer] as const));
  const walker = new Walker(page, index, wanted);
  await page.goto(address);
  const started = Date.now();
  for (const [at, stage] of walk.entries()) {
    await walkStage(walker, stage);
    if (at < walk.length - 1) await walker.tap(page.getByRole("button", { name: /^Next stage:/ }));
  }
  const perLine = walker.presses / lines.length;
  console.log(
    `${walker.presses} presses for ${lines.length} lines: ${perLine.toFixed(2)} a line, in ${Math.round((Date.now() - started) / 1000)} s`,
  );
  await page.getByText("Everything is saved with the service").waitFor();
  await page.getByText(`${lines.length} of ${lines.length} answered`).waitFor();
  const { report } = await inspector.does("reports.get", { path: { id } });
  const stored = new Map(report.findings.map((finding) => [keyOf(finding), finding.answer] as const));
  expect(lines.filter(({ key }) => !same(stored.get(key), wanted.get(key))).map(({ key }) => key)).toEqual(
    [],
  );
  expect(report.cautionsRead?.map(({ stage }) => stage).toSorted()).toEqual(
    walk
      .filter(({ cautions }) => cautions.length > 0)
      .map(({ stage }) => stage)
      .toSorted(),
  );
  expect(perLine).toBeLessThanOrEqual(1.5);
  await page.goto(`${address}?stage=lift`);
  await page.getByText(/^Cautions of this stage, read at/).waitFor();
  expect(await page.getByRole("button", { name: "I have read these: begin" }).count()).toBe(0);
  // Upward through the lines, past the progress that stays at the head.
  await page.getByRole("button", { name: /^Next stage:/ }).focus();
  expect(await faultsOnTheWay(page, "Shift+Tab", 30)).toEqual([]);
  const wide = await openPage(browser(), inspector, desk);
  for (const { stage } of process.env["PICTURES"] === undefined ? [] : walk) {
    await wide.goto(`${address}?stage=${stage}`);
    await wide.getByText("answered").first().waitFor();
    await keepPicture(wide, `walk-${stage}`);
  }
});
