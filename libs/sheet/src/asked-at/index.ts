import { DEPTHS } from "@evenhand/shared/sheet";
import type { Depth, Item } from "@evenhand/shared/sheet";

/** What is asked of an item: its minutes, and its positions where it is not all of them. */
export type Asked = { readonly minutes: number; readonly positions?: readonly string[] };

const reaches = (depth: Depth, asked: Depth): boolean => DEPTHS.indexOf(asked) <= DEPTHS.indexOf(depth);

/**
 * Whether anybody is asked for it on a visit: what only a seller can claim is not, nor what another item asks already.
 *
 * @example isAskedOnVisit({ sameAs: "road.braking" }) // false
 */
export const isAskedOnVisit = ({ asked, sameAs }: Pick<Item, "asked" | "sameAs">): boolean =>
  asked !== "statement" && sameAs === undefined;

/**
 * What a visit of this depth asks of an item: all of it, the part a lesser depth takes already, or nothing (`null`). Minutes are
 * those of one person alone, all asked positions together.
 *
 * @example
 * askedAt(lamps, "first-look"); // { minutes: 2, positions: ["left-front-turn", "right-front-turn", "left-stop", …] }
 * askedAt(lamps, "half-day"); // { minutes: 8 }
 */
export function askedAt(item: Item, depth: Depth): Asked | null {
  if (!isAskedOnVisit(item)) return null;
  if (reaches(depth, item.depth)) return { minutes: item.minutes };
  const { sooner } = item;
  return sooner !== undefined && reaches(depth, sooner.depth)
    ? { minutes: sooner.minutes, positions: sooner.positions }
    : null;
}
