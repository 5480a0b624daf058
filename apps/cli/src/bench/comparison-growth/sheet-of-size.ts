import type { Sheet } from "@evenhand/shared/sheet";

/**
 * A sheet of so many items: this one's, evenly thinned where fewer are wanted, over and over under other names where
 * more are.
 */
export const sheetOfSize = (sheet: Sheet, wanted: number): Sheet => {
  const own = sheet.items.length;
  const items = Array.from({ length: wanted }, (_, index) => {
    const item = wanted < own ? sheet.items[Math.floor((index * own) / wanted)] : sheet.items[index % own];
    const copy = wanted < own ? 0 : Math.floor(index / own);
    return item === undefined || copy === 0 ? item : { ...item, id: `${item.id}.copy-${copy}` };
  });
  return { ...sheet, items: items.filter((item) => item !== undefined) };
};
