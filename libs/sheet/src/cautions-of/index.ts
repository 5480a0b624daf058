import type { Caution, Sheet } from "@evenhand/shared/sheet";

/**
 * The cautions of some items, each once and in the sheet's own words and order, so that the same line stands wherever the work is
 * listed.
 *
 * @param items ids; one the sheet does not have carries none
 * @example cautionsOf(sheetVersion1, ["engine.oil"]).map(({ id }) => id) // ["fans-and-belts", "prop-hood"]
 */
export const cautionsOf = (
  { cautions, items: known }: Pick<Sheet, "cautions" | "items">,
  items: readonly string[],
): Caution[] => {
  const asked = new Set(items);
  const carried = new Set(known.filter(({ id }) => asked.has(id)).flatMap((item) => item.cautions));
  return cautions.filter(({ id }) => carried.has(id));
};
