import type { Page } from "playwright-core";

export const wide = { width: 1440, height: 900 };
export const narrow = { width: 360, height: 740 };

export type TabKey = "Tab" | "Shift+Tab";

/** Presses Tab until the focus is on what is named so; gives up where a person would have long given up. */
export async function tabTo(page: Page, name: RegExp, key: TabKey = "Tab", most = 160): Promise<void> {
  for (let count = 0; count < most; count += 1) {
    await page.keyboard.press(key);
    const focused = await page.evaluate(() => {
      const element = document.activeElement === document.body ? null : document.activeElement;
      const isField = element instanceof HTMLInputElement || element instanceof HTMLTextAreaElement;
      const labels = isField ? [...(element.labels ?? [])].map((one) => one.textContent) : [];
      return [element?.getAttribute("aria-label") ?? "", ...labels, element?.textContent ?? ""].join(" ");
    });
    if (name.test(focused)) return;
  }
  throw new Error(`Nothing called ${String(name)} was reached in ${most} presses of ${key}.`);
}

/**
 * What is wrong with how the focus is seen: no sign of it, out of the window, or under something at its middle or just under its
 * upper edge. Empty where nothing is; `undefined` where nothing has the focus.
 */
export const focusFaults = (page: Page): Promise<string[] | undefined> =>
  page.evaluate(async () => {
    await new Promise((done) => requestAnimationFrame(done));
    const element = document.activeElement;
    if (!element || element === document.body) return undefined;
    // A choice is seen as its label; the first line stands for a link that wraps.
    const label =
      element instanceof HTMLInputElement && /radio|checkbox/.test(element.type) && element.labels?.[0];
    const shown = label || element;
    const named = `${element.tagName} “${(element.getAttribute("aria-label") ?? shown.textContent).trim().slice(0, 40)}”`;
    const styles = [getComputedStyle(element), getComputedStyle(element, "::after")];
    const outlined = styles.some(
      ({ outlineStyle, outlineWidth }) => outlineStyle !== "none" && outlineWidth !== "0px",
    );
    const box = shown.getClientRects()[0];
    if (!box) return [`${named} is not shown`];
    const heights = box.height > innerHeight ? [box.top + 3] : [box.top + 3, box.top + box.height / 2];
    const hidden = heights.flatMap((y) => {
      const hit = document.elementFromPoint(box.left + box.width / 2, y);
      if (hit && (shown.contains(hit) || hit.contains(shown))) return [];
      return [
        `${named} is ${hit ? `under ${hit.tagName}.${hit.className}` : "out of the window"} at ${Math.round(y)}`,
      ];
    });
    return outlined ? hidden : [`${named} shows no focus`, ...hidden];
  });

/** Goes on through the page with one key, a number of stops at most or to its end, and says what was wrong with the focus. */
export async function faultsOnTheWay(
  page: Page,
  key: TabKey,
  most = Number.POSITIVE_INFINITY,
): Promise<string[]> {
  const faults: string[] = [];
  for (let count = 0; count < most; count += 1) {
    await page.keyboard.press(key);
    const found = await focusFaults(page);
    if (found === undefined) break;
    faults.push(...found);
  }
  return faults;
}
