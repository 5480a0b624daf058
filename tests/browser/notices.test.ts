import { expect, test } from "vitest";
import { useService } from "../api/setup/service.ts";
import { useBrowser } from "./setup/browser.ts";

const service = useService();
const browser = useBrowser();

test("what it is built from is a link away for everybody, with the licenses of site and service", async () => {
  const page = await browser().newPage({ baseURL: service().url });
  await page.goto("/sign-in");
  await page.getByRole("link", { name: "What it is built with, and the licenses" }).click();
  await page.waitForURL("**/notices.txt");
  const text = await page.locator("body").innerText();
  for (const part of [
    /^react \d/m,
    /^@fontsource-variable\/inter .*\(OFL-1\.1\)/m,
    /^fastify \d/m,
    /^pg \d/m,
  ])
    expect(text).toMatch(part);
  expect(text).toContain("SIL OPEN FONT LICENSE");
  await page.close();
});
