import type { BriefItem } from "@evenhand/shared/booking";
import type { Depth, Item } from "@evenhand/shared/sheet";
import { askedAt } from "../asked-at/index.ts";

/**
 * An item as the brief of a visit holds it: what the depth asks of it (`core`), or all of it where it was chosen beside that;
 * `null` where it is not looked at. Chosen, an item is looked at whole; a depth alone may take only some of its positions.
 *
 * @example
 * briefItem(lamps, "first-look", new Set()); // { item: "electrics.lamps", core: true, minutes: 2, needs: [], positions: ["left-front-turn", …] }
 * briefItem(lamps, "first-look", new Set(["electrics.lamps"])); // { item: "electrics.lamps", core: false, minutes: 8, needs: [] }
 */
export function briefItem(item: Item, depth: Depth, chosen: ReadonlySet<string>): BriefItem | null {
  const { id, minutes, needs } = item;
  const asked = askedAt(item, depth);
  if (chosen.has(id) && (asked === null || asked.positions !== undefined))
    return { item: id, core: false, minutes, needs };
  if (asked === null) return null;
  const { positions } = asked;
  const whole = { item: id, core: true, minutes: asked.minutes, needs };
  return positions === undefined ? whole : { ...whole, positions: [...positions] };
}
