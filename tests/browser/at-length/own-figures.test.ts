import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { query } from "../../api/setup/database.ts";
import type { Person } from "../../api/setup/person.ts";
import { useService } from "../../api/setup/service.ts";
import { joinPerson, makePerson } from "../../api/setup/world.ts";
import { violationsInLooks } from "../setup/accessibility.ts";
import { useBrowser } from "../setup/browser.ts";
import { compareDemoCar, demoPeople } from "../setup/demo-car.ts";
import { desk, keepPicture, openPage, phone } from "../setup/pages.ts";

const site = process.env["SITE_FOLDER"];
const service = useService(site === undefined ? {} : { environment: { SITE_FOLDER: site } });
const browser = useBrowser();

const USUAL = "A part is usually made at most this long before the car";
const uthwick = {
  make: "Uthwick",
  model: "Larksong",
  fromYear: 1977,
  toYear: 1981,
  source: "Shop manual of 1979, page 12",
  data: {
    axleRatios: [3.08, 3.36, 3.7],
    oilPressureIdle: 15,
    timing: 6,
    dateForms: { block: { form: "M d y", from: 1955, to: 1979 } },
    lowVolumeParts: ["intake"],
  },
};

async function ownFigures(person: Person): Promise<Page> {
  const page = await openPage(browser(), person, desk);
  await page.goto("/handbook/own");
  await page.getByRole("heading", { level: 1, name: "Our figures" }).waitFor();
  return page;
}
const save = (page: Page) => page.getByRole("button", { name: "Save", exact: true }).click();
const stored = (person: Person) => person.does("firmHandbook.get", { path: { id: person.organization } });
const put = (person: Person, revision: number, body: unknown) =>
  person.does("firmHandbook.put", { path: { id: person.organization }, revision, body });

async function addUthwick(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Add a make" }).click();
  await page.keyboard.type("Uthwick");
  await page.getByLabel("Model", { exact: true }).fill("Larksong");
  await page.getByLabel("From model year").fill("1977");
  await page.getByLabel("To model year").fill("1981");
  await save(page);
  await page.getByText("Nothing was saved: 2 places need another look.").waitFor();
  await page.getByText("This entry gives no figure").waitFor();
  await page.getByLabel("Source").fill(uthwick.source);
  await page.getByLabel("Axle ratios", { exact: true }).fill("3.08, 3.36, 3.70");
  await page.getByLabel("Least oil pressure at idle, hot").fill("15");
  await page.getByLabel("Timing at idle").fill("6");
  await page.getByRole("button", { name: "Add a date code" }).click();
  const date = page.getByRole("group", { name: "Date code 1" });
  await date.getByLabel("Part").selectOption("Engine block");
  await date.getByLabel("Form").fill("M d y");
  await date.getByLabel("Made from").fill("1955");
  await date.getByLabel("Made until").fill("1979");
  await page.getByRole("checkbox", { name: "Intake manifold" }).check();
}

test("an administrator sets a figure, is told what is wrong, and enters a make with its source", async () => {
  const inspector = await makePerson(service(), "inspector", "Ottoline Varga-Reyes");
  const page = await openPage(browser(), inspector, desk);
  await page.goto("/handbook");
  await page.getByRole("link", { name: "Our figures" }).click();
  await page.getByRole("heading", { level: 1, name: "Our figures" }).waitFor();
  await page.getByLabel(USUAL).fill("400");
  await save(page);
  await page.getByText("Outside what may be set: 0 to 365 days.").waitFor();
  await page.getByText("Nothing was saved: one place needs another look.").waitFor();
  expect(await page.getByLabel(USUAL).evaluate((field) => field === document.activeElement)).toBe(true);
  await keepPicture(page, "own-wrong");
  expect((await stored(inspector)).revision).toBe(0);
  await page.getByLabel(USUAL).fill("45");
  await addUthwick(page);
  await keepPicture(page, "own-typed");
  await save(page);
  await page.getByText("Saved.", { exact: true }).waitFor();
  await keepPicture(page, "own-saved");
  expect(await stored(inspector)).toEqual({
    revision: 1,
    handbook: { limits: { "date-correct.usual-days": 45 }, makers: [uthwick] },
  });
  await page.reload();
  expect(await page.getByLabel(USUAL).inputValue()).toBe("45");
  const make = page.getByRole("article", { name: "Uthwick Larksong 1977–1981" });
  await make.getByText("Shop manual of 1979, page 12").waitFor();
  await make.getByText("Engine block: M d y, 1955 to 1979").waitFor();
});

test("a make is removed, kept after all, changed and taken out, by keyboard", async () => {
  const dealer = await makePerson(service(), "dealer", "Rafe Tolliver-Ash");
  await put(dealer, 0, { limits: { "gap.taper": 2 }, makers: [uthwick] });
  const page = await ownFigures(dealer);
  await page.getByRole("button", { name: /^Remove Uthwick/ }).press("Enter");
  await page.getByText(/is taken out when you save/).waitFor();
  await page.keyboard.press("Enter");
  await page.getByRole("button", { name: /^Change Uthwick/ }).press("Enter");
  await page.keyboard.type("Pell");
  await page.getByRole("button", { name: "Done" }).press("Enter");
  await page.getByLabel("Taper of a gap").fill("");
  await save(page);
  await page.getByText("Saved.", { exact: true }).waitFor();
  const { handbook } = await stored(dealer);
  expect(handbook.limits).toEqual({});
  expect(handbook.makers.map(({ make }) => make)).toEqual([expect.stringContaining("Pell")]);
  await page.getByRole("button", { name: /^Remove / }).press("Enter");
  await save(page);
  await page.getByText("No make is entered yet.").waitFor();
  expect((await stored(dealer)).handbook.makers).toEqual([]);
});

test("two who save at once are told, and nothing typed is lost", async () => {
  const inspector = await makePerson(service(), "inspector", "Casimir Holt-Adeyemi");
  const page = await ownFigures(inspector);
  await page.getByLabel(USUAL).fill("45");
  await put(inspector, 0, { limits: { "gap.taper": 2 }, makers: [] });
  await save(page);
  await page.getByText("Somebody else of your firm saved meanwhile").waitFor();
  await page.getByText(/: yours 45 days, theirs as the handbook/).waitFor();
  await page.getByText(/: yours as the handbook, theirs 2.mm/).waitFor();
  const told = page.getByRole("alert").filter({ hasText: "saved meanwhile" });
  expect(await told.evaluate((notice) => notice.parentElement === document.activeElement)).toBe(true);
  await keepPicture(page, "own-conflict");
  expect(await page.getByLabel(USUAL).inputValue()).toBe("45");
  expect((await stored(inspector)).handbook.limits).toEqual({ "gap.taper": 2 });
  await page.getByRole("button", { name: "Save mine in place of theirs" }).click();
  await page.getByText("Saved.", { exact: true }).waitFor();
  expect(await stored(inspector)).toEqual({
    revision: 2,
    handbook: { limits: { "date-correct.usual-days": 45 }, makers: [] },
  });
  await page.getByLabel(USUAL).fill("50");
  await put(inspector, 2, { limits: { "gap.taper": 4 }, makers: [] });
  await save(page);
  await page.getByRole("button", { name: "Take theirs and drop mine" }).click();
  expect(await page.getByLabel("Taper of a gap").inputValue()).toBe("4");
  expect(await page.getByLabel(USUAL).inputValue()).toBe("");
});

test("a member reads, somebody of two firms chooses, and a buyer has no figures", async () => {
  const admin = await makePerson(service(), "inspector", "Perpetua Lindqvist-Rao");
  await put(admin, 0, { limits: { "gap.taper": 2 }, makers: [uthwick] });
  const member = await joinPerson(service(), admin.organization, "Ansel Ferreira-Boyd");
  const both = await joinPerson(service(), admin.organization, "Isaura Penhallow-Diaz");
  const other = await makePerson(service(), "dealer", "Wilhelmina Strand-Okoro");
  const reading = await ownFigures(member);
  await reading.getByText("You can read the figures of Perpetua Lindqvist-Rao's firm.").waitFor();
  await reading.getByText("3.08, 3.36, 3.7").waitFor();
  expect(await reading.getByRole("button", { name: /Save|Add|Change|Remove/ }).count()).toBe(0);
  await reading.getByLabel("Only what is set").check();
  await reading.getByText("2 mm", { exact: true }).waitFor();
  expect(await reading.getByText("as the handbook", { exact: true }).count()).toBe(0);
  await keepPicture(reading, "own-read");
  await query(service().databaseUrl, "INSERT INTO membership VALUES ($1, $2, 'admin', now())", [
    both.account,
    other.organization,
  ]);
  const choosing = await ownFigures(both);
  await choosing.getByLabel("Firm").selectOption("Wilhelmina Strand-Okoro's firm");
  await choosing.getByText("No make is entered yet.").waitFor();
  await choosing.getByLabel(USUAL).fill("45");
  expect(await choosing.getByLabel("Firm").isDisabled()).toBe(true);
  await save(choosing);
  await choosing.getByText("Saved.", { exact: true }).waitFor();
  await choosing.getByLabel("Firm").selectOption("Perpetua Lindqvist-Rao's firm");
  await choosing.getByText("You can read the figures of Perpetua Lindqvist-Rao's firm.").waitFor();
  expect((await stored(other)).handbook.limits).toEqual({ "date-correct.usual-days": 45 });
  expect((await stored(admin)).revision).toBe(1);
  const buyer = await makePerson(service(), "buyer", "Maribel Okonjo-Strand");
  const none = await ownFigures(buyer);
  await none.getByText("Only dealers and inspection firms have figures of their own").waitFor();
});

test("a buyer reads by whose figures a rule judged, and where the figures of the make come from", async () => {
  const people = await demoPeople(service());
  await put(people.inspector, 0, { limits: { "tire-age.caution-years": 3 }, makers: [uthwick] });
  const { comparison } = await compareDemoCar(people, "larksong");
  const page = await openPage(browser(), people.buyer, phone);
  await page.goto(`/comparisons/${comparison}?view=checks`);
  await page.getByText(/^One limit is Kestrelmere Motor Surveys’s own/).waitFor();
  await page.getByText(/entered by Kestrelmere Motor Surveys: Shop manual of 1979, page 12\./).waitFor();
  const judged = page.getByText(/Judged by the firm's own figure: caution from this age, 3 years\./);
  expect(await judged.count()).toBeGreaterThan(0);
  await keepPicture(page, "own-judged");
});

test("it keeps the rules of WCAG 2.2 AA that axe can check, and fits a phone", async () => {
  const admin = await makePerson(service(), "inspector", "Lucasta Merriweather-Nunez");
  await put(admin, 0, { limits: { "gap.taper": 2, "vacuum.low": 16 }, makers: [uthwick] });
  const member = await joinPerson(service(), admin.organization, "Evander Quill-Abara");
  const found: string[] = [];
  const look = async (page: Page, name: string) => {
    await page.waitForLoadState("networkidle");
    found.push(...(await violationsInLooks(page, name)));
  };
  const page = await ownFigures(admin);
  await look(page, "own");
  await page.getByRole("button", { name: /^Change Uthwick/ }).click();
  await page.getByLabel("Source").fill("");
  await page.getByLabel("Taper of a gap").fill("wide");
  await save(page);
  await look(page, "own-open");
  await look(await ownFigures(member), "own-member");
  expect(found).toEqual([]);
});
