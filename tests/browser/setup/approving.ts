import type { Page } from "playwright-core";

/** Chooses to approve, and answers for every open matter in turn. */
export async function answerForEveryMatter(buyer: Page): Promise<void> {
  await buyer.getByRole("radio", { name: /^Approve/ }).check();
  const asked = buyer.getByText(/^\d+ of \d+: what will you do about it\?$/);
  const words = buyer.getByLabel("In your own words");
  for (let at = 1; (await asked.count()) > 0; at += 1) {
    await buyer.getByText(new RegExp(`^${at} of \\d+: `)).waitFor();
    if ((await words.count()) > 0) await words.fill(`I know of number ${at}, and a mechanic looks at it.`);
    await buyer.getByRole("button", { name: "It is looked at again first" }).click();
  }
}

/** From a comparison to its summary. Gives the summary's id. */
export async function summarize(buyer: Page, car: string): Promise<string> {
  await buyer.getByRole("button", { name: "Make the summary" }).click();
  await buyer.getByRole("heading", { name: `Summary: ${car}` }).waitFor();
  return new URL(buyer.url()).pathname.split("/").at(-1) ?? "";
}

/** Presses the button and gives the status the service answered with. */
export async function approve(buyer: Page): Promise<number> {
  const answered = buyer.waitForResponse((response) => response.url().endsWith("/decision"));
  await buyer.getByRole("button", { name: "Approve this summary" }).click();
  return (await answered).status();
}
