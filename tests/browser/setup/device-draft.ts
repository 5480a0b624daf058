import type { Browser, Page } from "playwright-core";
import type { Service } from "../../api/setup/service.ts";
import { header, makeVehicle, stated, write } from "../../api/setup/story.ts";
import { joinPerson, makeWorld } from "../../api/setup/world.ts";
import { signedIn } from "./signed-in.ts";

/** A dealer with a draft of a few findings, open at the horn; and another dealer. */
export async function openDraft(service: Service, browser: Browser) {
  const { dealer, otherDealer } = await makeWorld(service);
  const vehicle = await makeVehicle(dealer);
  const { id } = await dealer.does("reports.state", { path: { id: vehicle }, body: header });
  await write(dealer, id, stated);
  const context = await signedIn(browser, dealer);
  const page = await context.newPage();
  await page.goto(addressOf(id));
  await hornOf(page).waitFor();
  // Read by somebody whose session stays.
  const colleague = await joinPerson(service, dealer.organization, "Colin");
  const stands = async () => {
    const { report } = await colleague.does("reports.get", { path: { id } });
    return report.findings.find(({ item }) => item === "electrics.horn")?.answer;
  };
  return { dealer, otherDealer, id, context, page, stands };
}
export const addressOf = (id: string) => `/reports/${id}?section=electrics&open=electrics.horn%40`;
export const hornOf = (page: Page) => page.locator('[id="place-electrics.horn@"]');
export const choose = (page: Page, answer: string) =>
  hornOf(page).getByRole("radio", { name: answer, exact: true }).check();
