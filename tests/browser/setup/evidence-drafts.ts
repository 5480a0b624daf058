import type { BrowserContext, Page } from "playwright-core";
import { Arrivals } from "../../../apps/api/src/capabilities/evidence/arrivals.ts";
import type { Person } from "../../api/setup/person.ts";
import type { Service } from "../../api/setup/service.ts";
import { draftStatement, makeVehicle } from "../../api/setup/story.ts";
import { makeWorld } from "../../api/setup/world.ts";

/** A dealer with a draft of a few findings. */
export async function draft(service: Service) {
  const { dealer } = await makeWorld(service);
  const { id } = await draftStatement(dealer, await makeVehicle(dealer));
  return { dealer, id };
}

export async function openHorn(context: BrowserContext, id: string): Promise<Page> {
  const page = await context.newPage();
  page.setDefaultTimeout(60_000);
  await page.goto(`/reports/${id}?section=electrics&open=electrics.horn%40`);
  await page.getByRole("button", { name: "Choose files" }).waitFor();
  return page;
}

export const choose = (page: Page, files: readonly { name: string; mimeType: string; buffer: Buffer }[]) =>
  page.locator('input[data-of="files"]').setInputFiles([...files]);
export const jpeg = (name: string, buffer: Buffer) => ({ name, mimeType: "image/jpeg", buffer });
export const filesOf = async (person: Person, id: string) =>
  (await person.does("evidence.ofReport", { path: { id } })).items;
/** A worker takes all that has arrived. */
export async function work(service: Service, person: Person, id: string): Promise<void> {
  for (const { id: file, state } of await filesOf(person, id))
    if (state === "pending") await service.app.get(Arrivals, { strict: false }).take(file);
}

/** So many bytes a second leave this page from now on. */
export async function throttle(page: Page, bytes: number): Promise<void> {
  const line = await page.context().newCDPSession(page);
  await line.send("Network.emulateNetworkConditions", {
    offline: false,
    latency: 20,
    downloadThroughput: -1,
    uploadThroughput: bytes,
  });
}
