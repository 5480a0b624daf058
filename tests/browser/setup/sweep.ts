import type { Page } from "playwright-core";
import type { Person } from "../../api/setup/person.ts";
import { goWithin, shortenLists, violationsInLooks } from "./accessibility.ts";
import { desk } from "./pages.ts";
import type { Screen } from "./screens.ts";

/**
 * What is found on screens as they stand at one moment: everybody keeps one page, and goes from screen to screen in it as a person does.
 *
 * @param open a page of its own for somebody
 * @param also what else is looked for, before long lists are cut
 */
export async function violationsOnScreens(
  screens: readonly Screen[],
  open: (person: Person) => Promise<Page>,
  also: (page: Page, screen: Screen) => Promise<readonly string[]> = () => Promise.resolve([]),
): Promise<string[]> {
  const pages = new Map<Person, Page>();
  const found: string[] = [];
  for (const screen of screens) {
    const page = pages.get(screen.by) ?? (await open(screen.by));
    pages.set(screen.by, page);
    await page.setViewportSize(desk.viewport);
    await goWithin(page, screen.address);
    await screen.before?.(page);
    found.push(...(await also(page, screen)));
    await shortenLists(page);
    found.push(...(await violationsInLooks(page, screen.name)));
  }
  for (const page of pages.values()) await page.context().close();
  return found;
}
