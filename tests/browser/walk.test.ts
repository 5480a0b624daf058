import { expect, test } from "vitest";
import { scopeOf, walkOf } from "../../apps/web/src/features/reports/walk.ts";
import { useService } from "../api/setup/service.ts";
import { useBrowser } from "./setup/browser.ts";
import { emptyInspection, index, keyOf } from "./setup/empty-inspection.ts";
import { keepPicture, openPage, phone } from "./setup/pages.ts";

const site = process.env["SITE_FOLDER"];
const service = useService(site === undefined ? {} : { environment: { SITE_FOLDER: site } });
const browser = useBrowser();
test("the inspector's own doubt, in words, leaves the road as not seen and unsafe, and stands beside every line of it", async () => {
  const { inspector, id, address } = await emptyInspection(service());
  const page = await openPage(browser(), inspector, phone);
  await page.goto(`${address}?stage=road`);
  await page.getByRole("button", { name: "I have read these: begin" }).click();
  const leave = page.getByRole("button", { name: /^Stay off the road: \d+ lines not seen, unsafe$/ });
  await leave.waitFor();
  expect(await leave.isDisabled()).toBe(true);
  const doubt = "The rear axle sits askew, and nobody could say why.";
  await page.getByLabel("Your own doubt about the road, in words").fill(doubt);
  await keepPicture(page, "walk-road-doubt");
  await leave.click();
  await page.getByText("Stay off the road: your own doubt closes it").waitFor();
  await keepPicture(page, "walk-road-doubted");
  // At this width too the word of the button stands in it whole.
  const undo = page.getByRole("button", { name: "Undo" });
  expect(
    await undo.evaluate(
      (button) =>
        [button, ...button.querySelectorAll("*")].filter(
          (part) => part.scrollWidth > part.clientWidth + 1 && part.clientWidth > 0,
        ).length,
    ),
  ).toBe(0);
  await page.getByText("Everything is saved with the service").waitFor();
  const { report } = await inspector.does("reports.get", { path: { id } });
  const road = walkOf(index, report.vehicle.form, scopeOf("first-look", null)).find(
    ({ stage }) => stage === "road",
  );
  const keys = new Set(road?.lines.map(({ key }) => key));
  const left = report.findings.filter((finding) => keys.has(keyOf(finding)));
  expect(left).toHaveLength(keys.size);
  expect(new Set(left.map(({ answer, note }) => JSON.stringify([answer, note])))).toEqual(
    new Set([JSON.stringify([{ kind: "not-seen", reason: "unsafe" }, doubt])]),
  );
});
