import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import type { Person } from "../../api/setup/person.ts";
import { useService } from "../../api/setup/service.ts";
import { violationsOn } from "../setup/accessibility.ts";
import { bookingScene } from "../setup/booking-scene.ts";
import { useBrowser } from "../setup/browser.ts";
import { keepPicture, openPage, phone } from "../setup/pages.ts";

const service = useService();
const browser = useBrowser();
const seen: string[] = [];

/** Long lists are cut to their first lines before checking; every line is made the same way. */
const cutLists = (page: Page) =>
  page.evaluate(() => {
    for (const list of document.querySelectorAll("ul, ol, tbody"))
      for (const line of [...list.children].slice(6)) line.remove();
  });

/** What axe finds on the page as it stands and whether it fits its window; kept as a picture with PICTURES. */
async function look(page: Page, name: string): Promise<void> {
  await page.locator("h1").first().waitFor();
  await keepPicture(page, name, false);
  await cutLists(page);
  seen.push(...(await violationsOn(page, name)));
}

const pageOf = (person: Person, options = {}): Promise<Page> => openPage(browser(), person, options);

test("a dealer gives out a link, a reader with no account opens it, and it ends when it is revoked", async () => {
  const { dealer, vehicle } = await bookingScene(service());
  const page = await pageOf(dealer);
  await page.goto(`/cars/${vehicle}`);
  await page.getByRole("link", { name: "Publishing and site" }).click();
  await page.getByText(/Published: buyers find the car/).waitFor();
  await page.getByLabel("For whom").fill("A friend of the buyer");
  await page.getByRole("button", { name: "Make a link" }).click();
  await page.getByText("Copy the link now; it is not shown again").waitFor();
  const address = await page
    .getByText(/\/shared\//)
    .or(page.locator('input[value*="/shared/"]'))
    .first()
    .evaluate((element) =>
      element instanceof HTMLInputElement ? element.value : (element.textContent ?? ""),
    );
  const reader = await (await browser().newContext(phone)).newPage();
  await reader.goto(address.trim());
  await reader.getByText("Nobody has checked it here.", { exact: false }).waitFor();
  await look(page, "publishing");
  await look(reader, "shared");
  await page.goto(`/cars/${vehicle}/listing`);
  await page.getByRole("button", { name: /Revoke/ }).click();
  await page.getByText(/revoked/).waitFor();
  await reader.goto(address.trim());
  await reader.getByRole("heading", { name: "This link does not hold" }).waitFor();
  expect(seen).toEqual([]);
});

test("a buyer asks about an item, the dealer's answer becomes a finding of a new statement version", async () => {
  const { buyer, dealer, vehicle } = await bookingScene(service());
  const page = await pageOf(buyer, phone);
  await page.goto(`/cars/${vehicle}`);
  await page.getByRole("link", { name: "Ask the dealer" }).click();
  await page.getByLabel("Which item").fill("horn");
  await page.getByRole("radio", { name: "Horn" }).check();
  await page.getByLabel("Your question").fill("Does it sound every time?");
  await look(page, "ask");
  await page.goto(`/cars/${vehicle}/ask`);
  await page.getByLabel("Which item").fill("horn");
  await page.getByRole("radio", { name: "Horn" }).check();
  await page.getByLabel("Your question").fill("Does it sound every time?");
  await page.getByRole("button", { name: "Ask", exact: true }).click();
  await page.getByText("The dealer has not answered yet.").waitFor();
  const address = page.url();
  const desk = await pageOf(dealer);
  await desk.goto(address);
  await desk.getByRole("radio", { name: "works now and then" }).check();
  await desk.getByRole("button", { name: "Answer", exact: true }).click();
  await desk.getByText(/In statement version 2/).waitFor();
  await look(desk, "question-answered");
  await page.reload();
  await page.getByText("works now and then").first().waitFor();
  await page.goto("/questions");
  await page.getByRole("link", { name: /horn/i }).first().waitFor();
  await look(page, "questions");
  expect(seen).toEqual([]);
});

test("a complaint is received, opened for a reason that is shown, and answered", async () => {
  const { buyer, operator } = await bookingScene(service());
  const page = await pageOf(buyer, phone);
  await page.goto("/complaints");
  await page.getByLabel("What it is about").selectOption({ label: "something else" });
  await page.getByLabel("What happened").fill("The gate was shut at the agreed hour.");
  await look(page, "complaints");
  await page.goto("/complaints");
  await page.getByLabel("What it is about").selectOption({ label: "something else" });
  await page.getByLabel("What happened").fill("The gate was shut at the agreed hour.");
  await page.getByRole("button", { name: "Send it" }).click();
  await page.getByText("It was sent. The answer will appear here.").waitFor();
  const desk = await pageOf(operator);
  await desk.goto("/complaints");
  await desk.getByRole("link", { name: "Complaint", exact: true }).first().waitFor();
  await look(desk, "complaints-operator");
  await desk.goto("/complaints");
  await desk.getByRole("link", { name: "Complaint", exact: true }).first().click();
  await desk.getByText("closed until it is opened").first().waitFor();
  await desk.getByLabel("Why you must read it").fill("To answer the complaint.");
  await desk.getByRole("button", { name: "Open it" }).click();
  await desk.getByText("The gate was shut at the agreed hour.").waitFor();
  await desk.getByLabel("Your answer").fill("The yard was told to keep its hours.");
  await desk.getByRole("button", { name: "Send the answer" }).click();
  await desk.getByText("The yard was told to keep its hours.").first().waitFor();
  await look(desk, "complaint-answered");
  expect(seen).toEqual([]);
});
