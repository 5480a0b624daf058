import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { command } from "../../api/setup/command.ts";
import { letterTo, linkIn } from "../../api/setup/letters.ts";
import { useService } from "../../api/setup/service.ts";
import { makePerson } from "../../api/setup/world.ts";
import { useBrowser } from "../setup/browser.ts";
import { openPage } from "../setup/pages.ts";

const service = useService({ environment: { JOBS: "on" } });
const browser = useBrowser();
const password = "a long enough password";

/** Follows the link of a letter as somebody without a session, and joins; ends on their first screen. */
async function join(email: string, name: string): Promise<Page> {
  const page = await (await browser().newContext()).newPage();
  page.setDefaultTimeout(60_000);
  await page.goto(linkIn(await letterTo(service().mailFolder, email)));
  await page.getByText(`The invitation is for ${email}.`).waitFor();
  await page.getByLabel("Your name").fill(name);
  await page.getByLabel("A password", { exact: true }).fill(password);
  await page.getByRole("button", { name: "Accept the invitation" }).click();
  await page.getByLabel("E-mail address").fill(email);
  await page.getByLabel("Password", { exact: true }).fill(password);
  await page.getByRole("button", { name: "Sign in" }).click();
  await page.getByRole("heading", { name: `Good day, ${name}` }).waitFor();
  return page;
}

test("a member joins by the link in the letter, which an administrator had sent from the page", async () => {
  const delia = await openPage(browser(), await makePerson(service(), "dealer", "Delia"));
  await delia.goto("/organization");
  await delia.getByLabel("E-mail address").fill("nils@example.com");
  await delia.getByRole("button", { name: "Send the invitation" }).click();
  await delia.getByText("The invitation is on its way by mail").waitFor();
  const nils = await join("nils@example.com", "Nils");
  await nils.goto(`${service().url}/organization`);
  await nils.getByRole("main").getByText("nils@example.com").waitFor();
  expect(await nils.getByRole("heading", { name: "Delia's firm" }).count()).toBe(1);
});

test("the first operator joins by the link in the letter that the command sends", async () => {
  const said = await command(["invite-operator", "opal@example.com"], {
    DATABASE_URL: service().databaseUrl,
    PORT: new URL(service().url).port,
    LOG_LEVEL: "fatal",
  });
  expect(said).toContain(`Its link leads to ${service().url}`);
  const opal = await join("opal@example.com", "Opal");
  await opal.goto(`${service().url}/admissions`);
  await opal.getByRole("heading", { level: 1 }).waitFor();
  expect(await opal.getByRole("link", { name: "Queues" }).count()).toBe(1);
});
