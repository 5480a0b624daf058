import type { BrowserContext, Page } from "playwright-core";
import { expect, test } from "vitest";
import { useService } from "../api/setup/service.ts";
import { draftStatement, makeVehicle } from "../api/setup/story.ts";
import { makeWorld } from "../api/setup/world.ts";
import { useBrowser } from "./setup/browser.ts";
import { signedIn } from "./setup/signed-in.ts";

const service = useService();
const browser = useBrowser();

/** A dealer with a draft of a few findings. */
async function draft() {
  const { dealer } = await makeWorld(service());
  const { id } = await draftStatement(dealer, await makeVehicle(dealer));
  return { dealer, id };
}

async function openHorn(context: BrowserContext, id: string): Promise<Page> {
  const page = await context.newPage();
  await page.goto(`/reports/${id}?section=electrics&open=electrics.horn%40`);
  await page.getByRole("radio", { name: "works", exact: true }).first().waitFor();
  return page;
}

const hornOf = (page: Page) => page.locator('[id="place-electrics.horn@"]');
const choose = (page: Page, answer: string) =>
  hornOf(page).getByRole("radio", { name: answer, exact: true }).check();

test("what was answered without a signal survives a killed tab and is sent when the signal returns", async () => {
  const { dealer, id } = await draft();
  const context = await signedIn(browser(), dealer);
  const page = await openHorn(context, id);
  await context.setOffline(true);
  await choose(page, "works now and then");
  await page.getByText(/No connection. 1 finding is kept on this device/).waitFor();
  await page.close();
  await context.setOffline(false);
  const again = await openHorn(context, id);
  await again.getByText("Everything is saved with the service").waitFor();
  const { report } = await dealer.does("reports.get", { path: { id } });
  expect(report.findings.find(({ item }) => item === "electrics.horn")?.answer).toEqual({
    kind: "working",
    value: "intermittent",
  });
});

test("a finding changed on two devices shows both versions, and the person says which stands", async () => {
  const { dealer, id } = await draft();
  const [phone, desk] = [await signedIn(browser(), dealer), await signedIn(browser(), dealer)];
  const [there, here] = [await openHorn(phone, id), await openHorn(desk, id)];
  await phone.setOffline(true);
  await choose(there, "works now and then");
  await there.getByText(/No connection/).waitFor();
  await choose(here, "does not work");
  const stored = async () => {
    const { report } = await dealer.does("reports.get", { path: { id } });
    return report.findings.find(({ item }) => item === "electrics.horn")?.answer;
  };
  await expect.poll(stored, { timeout: 20_000 }).toEqual({ kind: "working", value: "no" });
  await phone.setOffline(false);
  await there.getByText("This finding was changed on another device too").waitFor();
  const conflict = there.getByRole("alert");
  expect(await conflict.textContent()).toMatch(/works now and then.*does not work/);
  await conflict.getByRole("button", { name: "Keep this one" }).click();
  await there.getByText("Everything is saved with the service").waitFor();
  await expect.poll(stored).toEqual({ kind: "working", value: "intermittent" });
});

const lineOf = (page: Page) => page.locator('[id="place-wheels.tread-depth@left-rear"]');

test("a reading that cannot be read stays, is marked and said, survives a killed tab, and keeps the seal", async () => {
  const { dealer, id } = await draft();
  const context = await signedIn(browser(), dealer);
  const stored = async () => {
    const { report } = await dealer.does("reports.get", { path: { id } });
    const here = report.findings.find(
      ({ item, position }) => item === "wheels.tread-depth" && position === "left-rear",
    );
    return here?.answer;
  };
  const open = async (): Promise<Page> => {
    const page = await context.newPage();
    await page.goto(`/reports/${id}?section=wheels&open=wheels.tread-depth%40left-rear`);
    await lineOf(page)
      .getByLabel(/inner groove/i)
      .waitFor();
    return page;
  };
  const page = await open();
  const [inner, center] = [lineOf(page).getByLabel(/inner groove/i), lineOf(page).getByLabel(/cent(er|re)/i)];
  await inner.fill("900");
  await center.fill("9");
  expect(await lineOf(page).getByRole("alert").textContent()).toMatch(/It should lie between/);
  await expect.poll(stored).toMatchObject({ values: [{ value: 9 }] });
  await inner.fill("abc");
  expect(await lineOf(page).getByRole("alert").textContent()).toMatch(/This is not a number/);
  await page.getByText("1 line needs you").waitFor();
  await page.close();
  const again = await open();
  expect(
    await lineOf(again)
      .getByLabel(/inner groove/i)
      .inputValue(),
  ).toBe("abc");
  await lineOf(again).getByText("cannot be read: abc", { exact: false }).waitFor();
  await again.goto(`/reports/${id}`);
  await again.getByText("1 line holds something that cannot be read", { exact: false }).waitFor();
  await again.getByRole("checkbox", { name: /what we state about this car/ }).check();
  expect(await again.getByRole("button", { name: "Seal the statement" }).isDisabled()).toBe(true);
  await again.goto(`/reports/${id}?section=wheels&open=wheels.tread-depth%40left-rear`);
  await lineOf(again)
    .getByLabel(/inner groove/i)
    .fill("8");
  await expect.poll(stored).toMatchObject({ values: [{ value: 8 }, { value: 9 }] });
  await again.getByText("Everything is saved with the service").waitFor();
});

test("what this device could not keep is said at the field and keeps the seal, until it is kept", async () => {
  const { dealer, id } = await draft();
  const context = await signedIn(browser(), dealer);
  const page = await openHorn(context, id);
  await page.getByText("Everything is saved with the service").waitFor();
  await page.evaluate(() => {
    const { prototype } = IDBObjectStore;
    const put = Object.getOwnPropertyDescriptor(prototype, "put");
    Object.defineProperty(prototype, "put", {
      ...put,
      value: () => {
        throw new DOMException("no room", "QuotaExceededError");
      },
    });
    const makeRoom = () => put && Object.defineProperty(prototype, "put", put);
    Object.assign(globalThis, { makeRoom });
  });
  await choose(page, "works now and then");
  await page.getByText(/1 finding could not be kept on this device/).waitFor();
  const refusal = hornOf(page).getByRole("alert");
  expect(await refusal.textContent()).toMatch(/This device could not keep this finding/);
  expect(await hornOf(page).getByRole("radio", { name: "works now and then", exact: true }).isChecked()).toBe(
    true,
  );
  expect(await page.getByText("Everything is saved").count()).toBe(0);
  await page.evaluate(() => {
    const room: unknown = Reflect.get(globalThis, "makeRoom");
    if (typeof room === "function") room();
  });
  await refusal.getByRole("button", { name: "Keep it again" }).click();
  await refusal.waitFor({ state: "detached" });
  await page.getByText("Everything is saved with the service").waitFor();
  const { report } = await dealer.does("reports.get", { path: { id } });
  expect(report.findings.find(({ item }) => item === "electrics.horn")?.answer).toMatchObject({
    value: "intermittent",
  });
});

test("a fault begins with its kind, and what is cleared or removed comes back", async () => {
  const { dealer, id } = await draft();
  const context = await signedIn(browser(), dealer);
  const page = await context.newPage();
  await page.goto(`/reports/${id}?section=body&open=body.faults%40hood`);
  const line = page.locator('[id="place-body.faults@hood"]');
  await line.getByRole("button", { name: "Add a fault" }).click();
  expect(await line.getByText("not answered").count()).toBe(1);
  await line.getByLabel("Which fault").selectOption({ label: "scratch" });
  await line.getByLabel("Extent").fill("12");
  await line.getByText(/scratch, 12/).waitFor();
  await line.getByRole("button", { name: "Remove scratch" }).click();
  await line.getByText("not answered").waitFor();
  await line.getByRole("button", { name: "Undo" }).click();
  await line.getByText(/scratch, 12/).waitFor();
  await line.getByRole("button", { name: "Clear" }).click();
  await line.getByText("not answered").waitFor();
  await line.getByRole("button", { name: "Undo" }).click();
  await line.getByText(/scratch, 12/).waitFor();
});
