import { fileURLToPath } from "node:url";
import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import {
  calendarBody,
  lastingSessions,
  move,
  newClock,
  revisionOf,
  siteBody,
} from "../api/setup/booking-story.ts";
import { caseOn } from "../api/setup/homes.ts";
import type { Person } from "../api/setup/person.ts";
import { useService } from "../api/setup/service.ts";
import {
  acceptOrder,
  header,
  headliner,
  horn,
  inspected,
  order,
  publish,
  seal,
  write,
} from "../api/setup/story.ts";
import { photograph } from "../api/setup/pictures.ts";
import { makeWorld, type World } from "../api/setup/world.ts";
import { answerForEveryMatter, approve, summarize } from "./setup/approving.ts";
import { useBrowser } from "./setup/browser.ts";
import { prepareAll } from "./setup/hand-over-scene.ts";
import { desk, keepPicture, openPage, phone } from "./setup/pages.ts";

const clock = newClock();
const service = useService({ clock });
const browser = useBrowser();
const car = "1958 Uthwick Alder";

const pages = new Map<Person, Page>();

/** The page of a person at the hour the service has: everybody keeps their browser from day to day. */
async function pageOf(person: Person): Promise<Page> {
  const known = pages.get(person);
  if (known !== undefined) {
    await known.clock.setSystemTime(clock.now());
    return known;
  }
  const page = await openPage(browser(), person, desk, clock.now());
  pages.set(person, page);
  return page;
}

/** Does something on a page of somebody's own. */
async function as(person: Person, address: string, does: (page: Page) => Promise<void>): Promise<void> {
  const page = await pageOf(person);
  await page.goto(address);
  await does(page);
}

/** The operator admits an inspector who applied. */
async function admitted({ inspector, operator }: World): Promise<void> {
  await inspector.does("calendars.create", { body: calendarBody(inspector) });
  await as(operator, "/admissions", async (page) => {
    await page.getByText("Decide on Ines Arkwright").click();
    await page.getByRole("radio", { name: "Admit" }).check();
    await page.getByLabel("Reason").fill("Identity, insurance and qualification seen.");
    await page.getByRole("button", { name: "Record the decision" }).click();
    await page.getByText("Nobody waits for admission.").waitFor();
  });
}

/** A published car that an inspector has looked at: the horn is dead, and the headliner spent. */
async function comparedCar({ dealer, buyer, inspector }: World) {
  const { vehicle, statement } = await publish(dealer);
  const id = await order(buyer, inspector, vehicle, statement);
  await acceptOrder(inspector, id);
  const report = (await inspector.does("reports.inspect", { path: { id }, body: header })).id;
  const findings = inspected.filter(({ item }) => item !== "interior.headliner");
  const revision = await write(inspector, report, [...findings, headliner("spent")]);
  return { vehicle, comparison: (await seal(inspector, report, revision)).comparison ?? "" };
}

/** The horn with its whole matter, from the answer; the headliner as a single line. */
const lay = (buyer: Person, comparison: string): Promise<void> =>
  as(buyer, `/comparisons/${comparison}`, async (page) => {
    const matter = page.getByRole("listitem").filter({ has: page.getByRole("heading", { name: /horn/i }) });
    await matter.getByRole("button", { name: /^Lay before the dealer: .*horn/i }).click();
    await matter.getByText(/sees what they stated, what was found/).waitFor();
    await keepPicture(page, "lay-matter-before");
    await matter.getByRole("button", { name: "Lay this item before the dealer" }).click();
    await matter.getByText(/One item of .* lies before .* now/).waitFor();
    await matter.getByText(/laid before the dealer · the dealer’s answer is due/i).waitFor();
    await keepPicture(page, "lay-matter-after");
    await page.getByRole("tab", { name: /lines|items/i }).click();
    await page.getByRole("button", { name: "Choose items for the dealer" }).click();
    await page.getByRole("checkbox", { name: "Lay before the dealer: headliner" }).check();
    await page.getByRole("button", { name: "Lay before the dealer", exact: true }).click();
    await page.getByText("1 item was laid before the dealer.").waitFor();
  });

/** One move on one line, with words, and what is seen of it then. */
async function settle(
  person: Person,
  line: "Horn" | "Headliner",
  press: string,
  then: string,
  fill: (line: Locator) => Promise<void> = async () => {},
): Promise<void> {
  await as(person, "/released", async (page) => {
    const one = page.locator('[id^="release-"]').filter({ has: page.getByRole("heading", { name: line }) });
    await one.getByLabel("Your answer in words").fill(`About the ${line.toLowerCase()}: ${press}.`);
    await fill(one);
    await one.getByRole("button", { name: press, exact: true }).click();
    await one.getByText(then, { exact: true }).first().waitFor();
    await keepPicture(page, `settle-${line.toLowerCase()}-${press.toLowerCase().replaceAll(/\W+/g, "-")}`);
  });
}

const withDocument = async (line: Locator): Promise<void> => {
  await line.getByText("Add evidence").click();
  await line.getByLabel("Document, by its name").fill("Bill of the trim shop");
};
/** A photograph of what speaks against the finding: looked at by the service before it can be sent. */
const withPhotograph = async (line: Locator): Promise<void> => {
  await line.getByText("Add evidence").click();
  const buffer = await photograph(90);
  await line
    .getByLabel("Add photographs")
    .setInputFiles([{ name: "horn.jpg", mimeType: "image/jpeg", buffer }]);
  await line.getByText("The service is looking at it", { exact: true }).waitFor();
  expect(await line.getByRole("button", { name: "Contest it", exact: true }).isDisabled()).toBe(true);
  await prepareAll(service());
  await line.getByRole("img", { name: "Photograph 1, not sent yet" }).waitFor();
  await keepPicture(line.page(), "settle-photograph");
};
/** Whoever is asked to believe it sees it. */
const seeingPhotograph = async (line: Locator): Promise<void> => {
  const shown = line.getByRole("img", { name: "Photograph sent with this answer" });
  await expect
    .poll(() => shown.evaluate((image: HTMLImageElement) => image.naturalWidth))
    .toBeGreaterThan(100);
};
const withRepair = async (line: Locator): Promise<void> => {
  await line.getByText("Offer something instead").click();
  await line.getByLabel("What you offer").selectOption("Repair, with proof");
};

/** The buyer books the other look on the page; inspector and dealer agree to it. */
async function bookLook({ buyer, inspector, dealer }: World, vehicle: string): Promise<string> {
  const page = await pageOf(buyer);
  await page.goto(`/released?vehicle=${vehicle}`);
  await page.getByRole("link", { name: "Find an hour" }).first().click();
  await page
    .getByRole("button", { name: /Ines Arkwright, \$/ })
    .first()
    .click();
  await page.getByRole("button", { name: "Hold this hour for 10 minutes" }).click();
  await page.getByText(/You hold this hour until/).waitFor();
  await page.getByRole("checkbox", { name: /I have read the terms/ }).check();
  await page.getByRole("checkbox", { name: /I order and pay/ }).check();
  await page.getByRole("button", { name: "Request it" }).click();
  await page.getByText(/is asked and answers by/).waitFor();
  const id = new URL(page.url()).pathname.split("/").at(-1) ?? "";
  await move(service(), inspector, "appointments.accept", id, { independent: true });
  const { plan } = await dealer.does("appointments.get", { path: { id } });
  const permissions = plan.toAllow.map((each) => ({ ...each, allowed: true }));
  await move(service(), dealer, "appointments.confirm", id, { access: true, permissions });
  return id;
}

/** The inspector hears the horn this time. Gives the comparison with what is sealed then. */
async function lookAgain({ inspector }: World, visit: string): Promise<string> {
  const { start, visits } = await inspector.does("appointments.get", { path: { id: visit } });
  clock.set(new Date(Date.parse(start) + 60_000));
  expect(await revisionOf(service(), visit)).toBeGreaterThan(1);
  await move(service(), inspector, "appointments.start", visit);
  const path = { id: visits[0]?.order ?? "" };
  const { id } = await inspector.does("reports.inspect", { path, body: header });
  clock.set(new Date(clock.now().getTime() + 30 * 60_000));
  const revision = await write(inspector, id, [horn("yes")]);
  return (await seal(inspector, id, revision)).comparison ?? "";
}

async function approveCar(buyer: Person, comparison: string): Promise<void> {
  await as(buyer, `/comparisons/${comparison}`, async (page) => {
    await summarize(page, car);
    await answerForEveryMatter(page);
    expect(await approve(page)).toBe(201);
    await page.getByRole("heading", { name: "You approved this summary" }).waitFor();
  });
}

/** The buyer invites a carrier. Gives the address of the link. */
async function inviteCarrier(buyer: Person, caseId: string): Promise<string> {
  let address = "";
  await as(buyer, `/cases/${caseId}`, async (page) => {
    await page.getByLabel("Carrier, as on its paper").fill("Long Valley Haulage");
    await page.getByLabel("Deadline for a claim, as the terms say it").fill("In writing, within seven days");
    await page.getByLabel("Where that stands").fill("Its conditions, paragraph 9");
    await page.getByRole("button", { name: "Make the link" }).click();
    const link = page.getByText(/\/carry\//);
    await link.waitFor();
    address = ((await link.textContent()) ?? "").trim();
  });
  return address;
}

const placeOn = (page: Page, name: string): Locator =>
  page.getByRole("listitem", { name, exact: true }).first();

/** The figures and the light, and one door looked at. */
async function fillSheet(page: Page, miles: number, where: string): Promise<void> {
  await page.getByLabel("Where the car stands (address)").fill(where);
  await placeOn(page, "light").getByRole("radio", { name: "daylight" }).check();
  await placeOn(page, "surface").getByRole("radio", { name: "clean and dry" }).check();
  await placeOn(page, "odometer reading").locator('input[inputmode="decimal"]').first().fill(String(miles));
  await placeOn(page, "fuel level").getByRole("radio", { name: "a quarter" }).check();
  await placeOn(page, "keys handed over").locator('input[inputmode="decimal"]').first().fill("2");
  await placeOn(page, "hood").getByRole("button", { name: "No damage" }).click();
}

/** By the phone's camera: what it gives is sent at once, and worked on meanwhile. */
async function photographPlace(page: Page, place: string, picture: string): Promise<void> {
  const file = fileURLToPath(new URL(`../../fixtures/demo/pictures/${picture}.jpg`, import.meta.url));
  const sent = page.waitForResponse((answer) => /\/pictures\?/.test(answer.url()));
  await placeOn(page, place).locator("input[type=file]").setInputFiles(file);
  expect((await sent).status()).toBe(201);
  await placeOn(page, place)
    .getByRole("button", { name: `Take away the photograph: ${place}` })
    .waitFor();
}

async function sign(page: Page, paper: string, driver: string, other: [label: string, name: string]) {
  await page.getByLabel("What stands on it").selectOption(paper);
  await page.getByLabel("Driver's name, typed by the driver").fill(driver);
  await page.getByLabel(other[0]).fill(other[1]);
  await page.getByRole("button", { name: "Sign, both" }).click();
  await page.getByText("Both names are under it").waitFor();
}

async function carrierPage(address: string): Promise<Page> {
  const page = await (await browser().newContext(phone)).newPage();
  await page.clock.setSystemTime(clock.now());
  page.setDefaultTimeout(60_000);
  await page.goto(address);
  await page.getByRole("heading", { level: 1 }).waitFor();
  return page;
}

/** The driver, on a phone and with nothing but the link: what left is whole, what arrived has a dent. */
async function carry(address: string): Promise<void> {
  const door = "left front door";
  const left = await carrierPage(address);
  await fillSheet(left, 61_240, "Larkspur yard, gate 2");
  await placeOn(left, door).getByRole("button", { name: "No damage" }).click();
  await photographPlace(left, door, "larksong-collection-2");
  await left.getByRole("button", { name: "Look at it before signing" }).click();
  const seller: [string, string] = ["Name of who hands the car over, typed by them", "Delia Ashcombe"];
  await sign(left, "nothing was found to note", "Marlow Penn", seller);
  await left.context().close();

  clock.set(new Date(clock.now().getTime() + 2 * 86_400_000));
  const arrived = await carrierPage(address);
  await fillSheet(arrived, 61_241, "14 Orchard Row");
  const dented = placeOn(arrived, door);
  await dented.getByRole("button", { name: "Note damage" }).click();
  await dented.getByRole("button", { name: "Add a fault" }).click();
  await dented.getByLabel("Which fault").selectOption("dent");
  await dented.getByLabel("Extent").fill("80");
  await photographPlace(arrived, door, "larksong-delivery-2");
  await arrived.getByRole("button", { name: "Look at it before signing" }).click();
  await arrived.getByRole("heading", { name: "Not on the collection report" }).waitFor();
  const receiver: [string, string] = ["Name of who takes the car, typed by them", "Bea Thorne"];
  await sign(arrived, "what was found is noted on it", "Marlow Penn", receiver);
  await keepPicture(arrived, "carry-delivered");
  await arrived.context().close();
}

const claim = (buyer: Person, caseId: string): Promise<void> =>
  as(buyer, `/cases/${caseId}`, async (page) => {
    await page.getByRole("link", { name: "Reports and claim" }).click();
    await page.getByRole("heading", { name: "Not on the collection report" }).waitFor();
    await page
      .getByText(/left front door/)
      .first()
      .waitFor();
    for (const when of ["when the car left", "when it arrived"]) {
      const name = `panel damage, left front door, as photographed ${when}`;
      const shown = page.getByRole("img", { name }).first();
      await shown.waitFor();
      await expect
        .poll(() => shown.evaluate((image: HTMLImageElement) => image.naturalWidth))
        .toBeGreaterThan(100);
    }
    await page
      .getByText(/In writing, within seven days/)
      .first()
      .waitFor();
    await page
      .getByLabel("What you notified, to whom and how")
      .fill("Written to the carrier, with both papers.");
    await page.getByRole("button", { name: "Open a claim" }).click();
    await page.getByRole("button", { name: "Close the claim" }).waitFor();
    await keepPicture(page, "hand-over-claim");
  });

test("what differs is contested, looked at again, put right, approved and carried, by five hands", async () => {
  const world = await makeWorld(service());
  await lastingSessions(service());
  const { dealer, buyer, inspector } = world;
  await dealer.does("sites.create", { body: siteBody(dealer) });
  await admitted(world);
  const { vehicle, comparison } = await comparedCar(world);
  await lay(buyer, comparison);
  await settle(dealer, "Horn", "Contest it", "contested by the dealer", withPhotograph);
  await settle(dealer, "Headliner", "Make this offer", "the dealer offers a remedy", withRepair);
  await settle(buyer, "Horn", "Ask the inspector", "put to the inspector", seeingPhotograph);
  await settle(buyer, "Headliner", "Take the offer", "remedy taken, not done yet");
  await settle(inspector, "Horn", "Agree to look again", "to be looked at again", seeingPhotograph);
  await settle(
    dealer,
    "Headliner",
    "It is done; here is the proof",
    "remedy shown, not confirmed yet",
    withDocument,
  );
  await settle(buyer, "Headliner", "Confirm that it is done", "settled by remedy");
  const again = await lookAgain(world, await bookLook(world, vehicle));
  await as(dealer, "/released", (page) => page.getByText("the statement stands").first().waitFor());
  await approveCar(buyer, again);
  const caseId = (await caseOn(buyer, vehicle))?.id ?? "";
  await carry(await inviteCarrier(buyer, caseId));
  await prepareAll(service());
  await claim(buyer, caseId);
  const { items } = await buyer.does("handOvers.ofCase", { path: { id: caseId } });
  expect(items).toMatchObject([{ carrier: "Long Valley Haulage", state: "claim-open" }]);
});
