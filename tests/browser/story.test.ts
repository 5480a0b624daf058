import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { query } from "../api/setup/database.ts";
import { useService } from "../api/setup/service.ts";
import { linkIn } from "../api/setup/letters.ts";
import { emailOf, makeWorld, password } from "../api/setup/world.ts";
import { useBrowser } from "./setup/browser.ts";
import { answerForEveryMatter, approve, summarize } from "./setup/approving.ts";
import { addInstrument, choose, notSeen, openSection, read, seal, signIn } from "./setup/steps.ts";

const service = useService();
const browser = useBrowser();

const builtAs = {
  Body: "sedan",
  Construction: "body on frame",
  Gearbox: "manual",
  "Driven wheels": "rear",
  "Fuel system": "carburetor",
  "System voltage": "12 V",
  "Front brakes": "drum",
  "Rear brakes": "drum",
  "Wheel side": "left-hand drive",
};

async function enterAndState(dealer: Page): Promise<void> {
  await dealer.getByRole("link", { name: "Enter a car" }).first().click();
  await dealer.getByLabel("Make").fill("Uthwick");
  await dealer.getByLabel("Model", { exact: true }).fill("Alder");
  await dealer.getByLabel("VIN or chassis number").fill("A7K214883");
  await dealer.getByLabel("Asking price").fill("54,500");
  await dealer.getByLabel("Currency of the price").selectOption("USD");
  await dealer.getByRole("button", { name: "Enter the car" }).click();
  expect(await dealer.getByText("This is needed").count()).toBe(12);
  await dealer.getByLabel("Model year").fill("1958");
  await dealer.getByLabel("Doors").fill("4");
  await dealer.getByLabel("Cylinders").fill("6");
  for (const [label, chosen] of Object.entries(builtAs))
    await dealer.getByLabel(label, { exact: true }).selectOption({ label: chosen });
  await dealer.getByRole("button", { name: "Enter the car" }).click();
  await dealer.getByRole("heading", { name: "1958 Uthwick Alder" }).waitFor();
  await dealer.getByRole("button", { name: "Start the statement" }).click();
  await addInstrument(dealer, "tread gauge", "0.5", "0.3");
  await read(dealer, "Wheels and tires", "wheels.tread-depth", /Left front/i, [8, 8, 8]);
  await choose(dealer, "Instruments and electrics", "electrics.horn", /answer/i, "works");
  await choose(dealer, "Interior", "interior.headliner", /answer/i, "light wear");
  await seal(dealer, "statement");
  await dealer.getByRole("heading", { name: "Statement, version 1" }).waitFor();
  await dealer.getByRole("status").getByText("The statement is sealed as version 1").waitFor();
}

async function orderInspection(buyer: Page): Promise<void> {
  await buyer.getByRole("link", { name: "Cars", exact: true }).click();
  await buyer.getByRole("link", { name: "1958 Uthwick Alder" }).click();
  await buyer.getByText(/The rest is silence/).waitFor();
  await buyer.getByRole("radio", { name: "Ines's firm" }).check();
  await buyer.getByRole("button", { name: "Order the inspection" }).click();
  await buyer.getByRole("heading", { name: "Ines's firm has not answered yet" }).waitFor();
}

/** On a phone: the places that part are named, and the inspector stands by one of them after a second look. */
async function lookAgain(inspector: Page): Promise<void> {
  await openSection(inspector, "Visit");
  await inspector.setViewportSize({ width: 360, height: 780 });
  await inspector.getByText("Everything on this device has reached the service").waitFor();
  await inspector.getByRole("button", { name: "Name the places" }).click();
  await inspector.getByText("Looked at again: 0 of 2").waitFor();
  expect(await inspector.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  await inspector.getByRole("button", { name: /^tread depth, left front$/i }).click();
  await inspector.getByText("This place was named for a second look").waitFor();
  await inspector.getByRole("button", { name: "Looked again: it stands" }).click();
  await inspector.getByText("Looked at again; the first answer is kept").waitFor();
  await inspector.setViewportSize({ width: 1280, height: 900 });
}

async function inspect(inspector: Page): Promise<void> {
  await inspector.getByRole("link", { name: "Answer about the visit" }).click();
  await inspector.getByText("named once you accept").waitFor();
  await inspector.getByRole("checkbox", { name: /^I have no interest/ }).check();
  await inspector.getByRole("button", { name: "Accept the visit" }).click();
  await inspector.getByRole("button", { name: "Begin the report" }).click();
  await inspector.getByRole("heading", { name: "Inspection: 1958 Uthwick Alder" }).waitFor();
  await inspector.getByRole("link", { name: "Back to the visit" }).waitFor();
  await addInstrument(inspector, "my gauge", "0.5", "0.3");
  await read(inspector, "Wheels and tires", "wheels.tread-depth", /Left front/i, [2, 2, 2]);
  await choose(inspector, "Instruments and electrics", "electrics.horn", /answer/i, "does not work");
  await notSeen(inspector, "Interior", "interior.headliner", /answer/i, "covered");
  await lookAgain(inspector);
  await seal(inspector, "report");
  const sealed = inspector.getByRole("status");
  await sealed.getByText("Your report is sealed as version 1").waitFor();
  await sealed.getByRole("link", { name: "Read it against the statement" }).click();
  await inspector.getByRole("heading", { name: "1958 Uthwick Alder", exact: true }).waitFor();
}

async function readAndRelease(buyer: Page): Promise<void> {
  await buyer.reload();
  await buyer.getByRole("link", { name: "Read the comparison" }).click();
  await buyer.getByRole("heading", { name: "What to do next" }).waitFor();
  await buyer.getByRole("tab", { name: /^All lines/ }).click();
  const tread = buyer
    .getByRole("listitem")
    .filter({ hasText: "Tread depth" })
    .filter({ hasText: "left front" });
  expect(await tread.first().textContent()).toMatch(/differ/);
  await tread.getByRole("button", { name: /tread depth/i }).click();
  await buyer
    .getByText(/Stated 8.*found 2/)
    .first()
    .waitFor();
  await buyer.getByText(/^the same both times: 2/).waitFor();
  await buyer.getByRole("button", { name: "Choose items for the dealer" }).click();
  await buyer.getByRole("checkbox", { name: "Lay before the dealer: horn" }).check();
  await buyer.getByRole("button", { name: "Lay before the dealer" }).click();
  const laid = buyer.getByRole("status").filter({ hasText: "1 item was laid before the dealer." });
  await laid.waitFor();
  expect(await laid.evaluate((notice) => notice === document.activeElement)).toBe(true);
}

async function answer(dealer: Page): Promise<void> {
  await dealer.getByRole("link", { name: "Cases", exact: true }).click();
  await dealer.getByRole("link", { name: "Answer", exact: true }).click();
  // Called by what was laid before them, under the matter it comes to.
  await dealer
    .getByRole("heading", { name: "Lamps, horn or wipers do not work as they should", level: 2 })
    .waitFor();
  await dealer.getByRole("heading", { name: "Horn", exact: true, level: 3 }).waitFor();
  expect(await dealer.getByText("Tread depth").count()).toBe(0);
  await dealer.getByLabel("Your answer in words").fill("A wire had come off. It is on again.");
  await dealer.getByRole("button", { name: "Accept what was found" }).click();
  await dealer.getByText("accepted by the dealer").first().waitFor();
}

/** The letter to a dealer who is signed out leads through signing in to what was laid before them, and so does the notice. */
async function followLetter(): Promise<void> {
  const [letter] = await query<{ body: string }>(
    service().databaseUrl,
    "SELECT body FROM mail WHERE recipient = $1 AND subject LIKE 'A buyer lays items%'",
    [emailOf("Delia")],
  );
  const page = await (await browser().newContext()).newPage();
  await page.goto(linkIn(letter?.body ?? ""));
  await page.getByLabel("E-mail address").fill(emailOf("Delia"));
  await page.getByLabel("Password", { exact: true }).fill(password);
  await page.getByRole("button", { name: "Sign in" }).click();
  await page.getByRole("heading", { name: "Horn", exact: true, level: 3 }).waitFor();
  await page.getByRole("link", { name: "1 new notice", exact: true }).click();
  await page.getByText("unread", { exact: true }).waitFor();
  await page
    .getByRole("link", { name: /^A buyer lays items of an inspection of the 1958 Uthwick Alder/ })
    .click();
  await page.getByRole("heading", { name: "Horn", exact: true, level: 3 }).waitFor();
  await page.getByRole("link", { name: "1 new notice", exact: true }).waitFor({ state: "detached" });
  await page.context().close();
}

async function stateAgain(dealer: Page): Promise<void> {
  await dealer.getByRole("link", { name: "Cars", exact: true }).click();
  // The page before has a link of that name too.
  await dealer.getByRole("heading", { name: "Your cars" }).waitFor();
  await dealer.getByRole("link", { name: "1958 Uthwick Alder" }).click();
  await dealer.getByRole("button", { name: "Make a new version" }).click();
  await choose(dealer, "Instruments and electrics", "electrics.horn", /answer/i, "does not work");
  await seal(dealer, "statement");
  await dealer.getByRole("heading", { name: "Statement, version 2" }).waitFor();
}

test("a car goes from statement to approval through all four people", async () => {
  const { url, databaseUrl } = service();
  await makeWorld(service());
  const operator = await signIn(browser(), url, "Opal");
  await operator.getByText("Nothing waits for you.").waitFor();
  const dealer = await signIn(browser(), url, "Delia");
  await enterAndState(dealer);
  const buyer = await signIn(browser(), url, "Bea");
  await orderInspection(buyer);
  await inspect(await signIn(browser(), url, "Ines"));
  await readAndRelease(buyer);
  const comparison = buyer.url();
  await followLetter();
  await answer(dealer);

  const summary = await summarize(buyer, "1958 Uthwick Alder");
  await answerForEveryMatter(buyer);
  expect(await approve(buyer)).toBe(201);
  await buyer.getByRole("heading", { name: "You approved this summary" }).waitFor();
  const approved = buyer.getByRole("status").filter({ hasText: "You approved this summary" });
  expect(await approved.evaluate((notice) => notice === document.activeElement)).toBe(true);
  const stored = await query<{ decided: string; made: string }>(
    databaseUrl,
    `SELECT d.hash AS decided, s.hash AS made
       FROM decision d JOIN summary s ON s.id = d.summary_id WHERE s.id = $1 AND d.decision = 'approve'`,
    [summary],
  );
  expect(stored).toHaveLength(1);
  expect(stored[0]?.decided).toBe(stored[0]?.made);
  await buyer
    .getByText(stored[0]?.decided ?? "no hash")
    .first()
    .waitFor();

  await buyer.goto(comparison);
  await summarize(buyer, "1958 Uthwick Alder");
  await answerForEveryMatter(buyer);
  await stateAgain(dealer);
  expect(await approve(buyer)).toBe(409);
  await buyer.getByText("Something moved since this summary was made").first().waitFor();
  await buyer.getByText("The statement: 1 then, 2 now").first().waitFor();
});
