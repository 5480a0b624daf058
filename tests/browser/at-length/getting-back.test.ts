import type { Page } from "playwright-core";
import { beforeEach, expect, test } from "vitest";
import { letterTo, linkIn } from "../../api/setup/letters.ts";
import type { Person } from "../../api/setup/person.ts";
import { useService } from "../../api/setup/service.ts";
import { emailOf, joinPerson, makePerson, password } from "../../api/setup/world.ts";
import { loadWhole, violationsInLooks } from "../setup/accessibility.ts";
import { useBrowser } from "../setup/browser.ts";
import { openPage } from "../setup/pages.ts";
import { signIn } from "../setup/steps.ts";

const service = useService({ environment: { JOBS: "on" } });
const browser = useBrowser();
const next = "a new and longer password";
let delia: Person;
beforeEach(async () => {
  delia = await makePerson(service(), "dealer", "Delia");
});

const strangersPage = async (): Promise<Page> => {
  const page = await (await browser().newContext({ baseURL: service().url })).newPage();
  page.setDefaultTimeout(60_000);
  return page;
};

async function enter(page: Page, given: string): Promise<void> {
  await page.getByLabel("E-mail address").fill(emailOf("Delia"));
  await page.getByLabel("Password", { exact: true }).fill(given);
  await page.getByRole("button", { name: "Sign in" }).click();
}

test("who forgot the password chooses a new one by the link in the letter, and signs in with it", async () => {
  const before = await signIn(browser(), service().url, "Delia");
  const page = await strangersPage();
  await page.goto("/sign-in");
  await page.getByRole("link", { name: "Forgot the password?" }).click();
  // The page before has a field of the same name.
  await page.getByRole("heading", { name: "A new password by mail" }).waitFor();
  await page.getByLabel("E-mail address").fill(emailOf("Delia"));
  await page.getByRole("button", { name: "Send the letter" }).click();
  await page.getByText("If an account has this address, a letter goes to it").waitFor();
  const link = linkIn(await letterTo(service().mailFolder, emailOf("Delia"), /new-password/));
  await page.goto(link);
  await page.getByLabel("New password", { exact: true }).fill(next);
  await page.getByRole("button", { name: "Set the new password" }).click();
  await page.getByRole("heading", { name: "The new password holds" }).waitFor();
  await page.getByRole("link", { name: "Sign in" }).click();
  await enter(page, next);
  await page.getByRole("heading", { name: "Good day, Delia" }).waitFor();
  await before.goto("/cars");
  await before.getByRole("heading", { name: "Sign in" }).waitFor();
  await page.goto(link);
  await page.getByText("The link was used, has run out, or never was").waitFor();
  expect(await page.getByLabel("New password", { exact: true }).count()).toBe(0);
});

test("how news comes by mail is chosen on the page, and stands when it is opened again", async () => {
  const page = await openPage(browser(), delia);
  await page.goto("/account");
  const news = page.locator("section", { has: page.getByRole("heading", { name: "News by mail" }) });
  expect(await news.getByRole("radio", { name: /^At once/ }).isChecked()).toBe(true);
  await news.getByRole("radio", { name: /^Once a day/ }).check();
  await news.getByRole("button", { name: "Save the choice" }).click();
  await news.getByText("Saved: from now on news comes in one letter a day.").waitFor();
  await page.reload();
  await news.getByRole("radio", { name: /^Once a day/, checked: true }).waitFor();
});

test("a password is changed on the page; a wrong current one is said at its field", async () => {
  const page = await openPage(browser(), delia);
  await page.goto("/account");
  const change = page.locator("section", { has: page.getByRole("heading", { name: "Change the password" }) });
  await change.getByLabel("Current password").fill("not the password");
  await change.getByLabel("New password", { exact: true }).fill(next);
  await change.getByRole("button", { name: "Change the password" }).click();
  await change.getByText("This is not your password").waitFor();
  expect(await change.getByLabel("Current password").getAttribute("aria-invalid")).toBe("true");
  await change.getByLabel("Current password").fill(password);
  await change.getByRole("button", { name: "Change the password" }).click();
  await change.getByText("The password was changed").waitFor();
  const other = await strangersPage();
  await other.goto("/sign-in");
  await enter(other, next);
  await other.getByRole("heading", { name: "Good day, Delia" }).waitFor();
  await other.goto("/sessions");
  await other.getByRole("button", { name: "Sign out everywhere" }).click();
  await other.getByRole("heading", { name: "Sign in" }).waitFor();
  await page.goto("/cars");
  await page.getByRole("heading", { name: "Sign in" }).waitFor();
});

test("an administrator raises, lowers and removes a member, and takes an invitation back", async () => {
  await joinPerson(service(), delia.organization, "Mona");
  const page = await openPage(browser(), delia);
  await page.goto("/organization");
  await page.getByRole("button", { name: "Make administrator: Mona" }).click();
  await page.getByRole("button", { name: "Make member: Mona" }).click();
  await page.getByRole("button", { name: "Make administrator: Mona" }).waitFor();
  await page.getByRole("button", { name: "Make member: Delia" }).click();
  await page.getByText("would have no administrator left").waitFor();
  await page.getByRole("button", { name: "Remove Mona from Delia's firm" }).click();
  await page.getByText("They can be invited again").waitFor();
  await page.getByRole("button", { name: "Remove Mona", exact: true }).click();
  await page.getByText(emailOf("Mona")).waitFor({ state: "detached" });
  await page.getByLabel("E-mail address").fill("nils@example.com");
  await page.getByRole("button", { name: "Send the invitation" }).click();
  await page.getByRole("button", { name: "Take back the invitation to nils@example.com" }).click();
  await page.getByText("No invitation is open.").waitFor();
  expect(await page.getByRole("button", { name: /^Remove/ }).count()).toBe(0);
});

test("an account is closed on the page, and signs in no more", async () => {
  const mona = await joinPerson(service(), delia.organization, "Mona");
  const page = await openPage(browser(), mona);
  await page.goto("/account");
  await page.getByLabel("Your password, to close the account").fill(password);
  await page.getByRole("checkbox", { name: "I want to close my account for good." }).check();
  await page.getByRole("button", { name: "Close the account" }).click();
  await page.getByRole("heading", { name: "Sign in" }).waitFor();
  await page.getByLabel("E-mail address").fill(emailOf("Mona"));
  await page.getByLabel("Password", { exact: true }).fill(password);
  await page.getByRole("button", { name: "Sign in" }).click();
  await page.getByText("Address and password do not go together").first().waitFor();
  expect(new URL(page.url()).pathname).toBe("/sign-in");
});

test("every one of these pages keeps axe's rules and the page's width", async () => {
  await joinPerson(service(), delia.organization, "Mona");
  const body = { email: "nils@example.com", organization: delia.organization, role: "member" };
  await delia.does("invitations.create", { body });
  const invitation = linkIn(await letterTo(service().mailFolder, "nils@example.com"));
  await delia.does("passwordResets.request", { body: { email: emailOf("Delia") } });
  const reset = linkIn(await letterTo(service().mailFolder, emailOf("Delia"), /new-password/));
  const page = await openPage(browser(), delia);
  const screens: readonly [string, string][] = [
    ["account", "/account"],
    ["sessions", "/sessions"],
    ["organization", "/organization"],
    ["forgotten-password", "/forgotten-password"],
    ["new-password", new URL(reset).pathname],
    ["new-password-spent", "/new-password/never-was"],
    ["invitation", new URL(invitation).pathname],
  ];
  for (const [name, address] of screens) {
    await loadWhole(page, address);
    if (name === "organization") await page.getByRole("button", { name: /^Remove Mona from/ }).click();
    expect(await violationsInLooks(page, name)).toEqual([]);
  }
});
