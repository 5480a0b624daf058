import type { Block, OnePage } from "@evenhand/paper/blocks";
import { linesOf } from "./blocks.ts";
import { gap, heightOf, type Line, type Room } from "./lines.ts";

/** As wide as A4 and as high as Letter, in points: at its own size it fits on both. */
export const page = { width: 595.28, height: 792, margin: 30, foot: 17 } as const;
export const whole: Omit<Room, "size"> = { x: page.margin, width: page.width - 2 * page.margin };
export const room = page.height - 2 * page.margin - page.foot;

/** Lines with the height at which each stands, from the top of the page. */
export type Placed = Line & { readonly y: number };

/** Of the letters that are read, in points. */
export const size = 8.6;
/** From one column to the next. */
export const between = 16;

/** Lines below each other. */
export const placed = (lines: readonly Line[], from: number): Placed[] => {
  let y = from;
  return lines.map((line) => {
    const at = { ...line, y };
    y += line.height;
    return at;
  });
};

/** The fullest telling that is low enough, found by halving: each is lower than the one before it, or hardly higher. */
function fitting(tellings: readonly (readonly Block[])[], column: Room, most: number): Line[] {
  const tried = (at: number): Line[] => linesOf(tellings[at] ?? [], column);
  let [low, high] = [0, tellings.length - 1];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (heightOf(tried(middle)) <= most) high = middle;
    else low = middle + 1;
  }
  const lines = tried(low);
  if (heightOf(lines) > most) throw new Error(`The tersest telling is higher than ${most} points.`);
  return lines;
}

/**
 * One page: its head, its columns beside each other, its end at the foot.
 *
 * @throws {Error} where the tersest telling does not fit
 */
export function onePage({ head, columns, end }: OnePage): Placed[] {
  const top = linesOf(head, { ...whole, size });
  const bottom = [gap(size * 0.4, { ruled: true }), ...linesOf(end, { ...whole, size })];
  const left = room - heightOf(top) - heightOf(bottom);
  const under = page.margin + heightOf(top);
  const width = whole.width - between * (columns.length - 1);
  let x = whole.x;
  const beside = columns.flatMap(({ share, from }) => {
    const column = { x, width: width * share, size };
    x += column.width + between;
    return placed(fitting(from, column, left), under);
  });
  return [...placed(top, page.margin), ...beside, ...placed(bottom, page.margin + room - heightOf(bottom))];
}
