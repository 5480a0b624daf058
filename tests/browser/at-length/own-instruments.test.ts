import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import type { Person } from "../../api/setup/person.ts";
import { useService } from "../../api/setup/service.ts";
import { joinPerson, makePerson } from "../../api/setup/world.ts";
import { violationsInLooks } from "../setup/accessibility.ts";
import { useBrowser } from "../setup/browser.ts";
import { desk, keepPicture, openPage, phone } from "../setup/pages.ts";

const site = process.env["SITE_FOLDER"];
const service = useService(site === undefined ? {} : { environment: { SITE_FOLDER: site } });
const browser = useBrowser();

const tread = {
  id: "brass-tread-gauge",
  name: "Brass tread gauge",
  kind: "tread depth gauge",
  resolution: { value: 0.5, unit: "1/32in" },
  accuracy: { absolute: { value: 0.3, unit: "1/32in" }, share: 0.003 },
  calibrated: "2026-02-11",
  retired: false,
};

const stored = (person: Person) => person.does("firmInstruments.get", { path: { id: person.organization } });
const put = (person: Person, revision: number, ...instruments: unknown[]) =>
  person.does("firmInstruments.put", {
    path: { id: person.organization },
    revision,
    body: { instruments },
  });

async function ownInstruments(person: Person, view = desk): Promise<Page> {
  const page = await openPage(browser(), person, view);
  await page.goto("/instruments");
  await page.getByRole("heading", { level: 2, name: "In use" }).waitFor();
  return page;
}
const press = (page: Page, name: string) => page.getByRole("button", { name, exact: true }).click();

test("an administrator adds an instrument, changes it, retires it and takes it out", async () => {
  const inspector = await makePerson(service(), "inspector", "Ottoline Varga-Reyes");
  const page = await openPage(browser(), inspector, desk);
  await page.goto("/");
  await press(page, "Ottoline Varga-Reyes");
  await page.getByRole("link", { name: "Our instruments" }).click();
  await page.getByText("No instrument is in use.").waitFor();
  await press(page, "Add an instrument");
  await page.getByLabel("Name, as you call it").fill(tread.name);
  await page.getByLabel("What it is").selectOption(tread.kind);
  await page.getByLabel("Smallest step it shows").fill("0.5");
  await page.getByLabel("Accuracy ±", { exact: true }).fill("0.3");
  await page.getByLabel("Accuracy ± of the reading").fill("0.3");
  await page.getByLabel("Calibrated on").fill(tread.calibrated);
  await press(page, "Save");
  await page.getByText("Brass tread gauge is saved.").waitFor();
  expect((await stored(inspector)).instruments).toEqual([tread]);

  await press(page, "Change Brass tread gauge");
  await page.getByLabel("Name, as you call it").fill("Brass gauge");
  await press(page, "Save");
  await page.getByText("Brass gauge is saved.").waitFor();
  const changed = { ...tread, name: "Brass gauge" };
  expect((await stored(inspector)).instruments).toEqual([changed]);

  await press(page, "Retire Brass gauge");
  await page.getByText("Brass gauge is retired. That is saved.").waitFor();
  expect((await stored(inspector)).instruments).toEqual([{ ...changed, retired: true }]);
  await press(page, "Remove Brass gauge");
  await page.getByText("Brass gauge is removed. That is saved.").waitFor();
  expect((await stored(inspector)).instruments).toEqual([]);
});

test("what somebody else saved meanwhile stays, is shown, and nothing is called saved", async () => {
  const inspector = await makePerson(service(), "inspector", "Ottoline Varga-Reyes");
  await put(inspector, 0, tread);
  const page = await ownInstruments(inspector);
  const other = { ...tread, id: "second", name: "Second gauge" };
  await put(inspector, 1, tread, other);
  await press(page, "Retire Brass tread gauge");
  await page.getByRole("button", { name: "Change Second gauge" }).waitFor();
  await page.getByText(/Read it again/i).waitFor();
  expect(await page.getByText("That is saved.").count()).toBe(0);
  expect((await stored(inspector)).instruments).toEqual([tread, other]);
  await press(page, "Retire Brass tread gauge");
  await page.getByText("Brass tread gauge is retired. That is saved.").waitFor();
  expect((await stored(inspector)).instruments).toEqual([{ ...tread, retired: true }, other]);
});

test("a member reads them, and is offered nothing to press", async () => {
  const inspector = await makePerson(service(), "inspector", "Ottoline Varga-Reyes");
  await put(inspector, 0, tread, { ...tread, id: "old", name: "Old gauge", retired: true });
  const member = await joinPerson(service(), inspector.organization, "Ivo Marsh-Dell");
  const page = await ownInstruments(member);
  await page.getByText("Old gauge").waitFor();
  expect(await page.getByRole("button", { name: /Add|Change|Retire|Use|Remove/ }).count()).toBe(0);
});

test.each([
  ["desk", desk],
  ["phone", phone],
] as const)("holds for everybody at the width of a %s", async (name, view) => {
  const inspector = await makePerson(service(), "inspector", "Ottoline Varga-Reyes");
  await put(inspector, 0, tread, { ...tread, id: "old", name: "Old gauge", retired: true });
  const page = await ownInstruments(inspector, view);
  await keepPicture(page, `own-instruments-${name}`);
  await press(page, "Change Brass tread gauge");
  await page.getByLabel("Name, as you call it").waitFor();
  await keepPicture(page, `own-instruments-form-${name}`);
  expect(await violationsInLooks(page, `own-instruments-${name}`)).toEqual([]);
});
