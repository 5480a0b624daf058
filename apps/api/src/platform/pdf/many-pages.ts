import type { Pages } from "@evenhand/paper/blocks";
import { linesOf } from "./blocks.ts";
import { columnWidth, inColumns } from "./columns.ts";
import { groupsOf, heightOf, type Line } from "./lines.ts";
import { page, placed, type Placed, room, size, whole } from "./pages.ts";

/** Pages that fill up from the first on, and how much of the last is used. */
type Filling = { readonly pages: Placed[][]; used: number };

function place(filling: Filling, lines: readonly Line[]): void {
  filling.pages.at(-1)?.push(...placed(lines, page.margin + filling.used));
  filling.used += heightOf(lines);
}

function turn(filling: Filling, next?: Line): void {
  filling.pages.push([]);
  filling.used = 0;
  place(filling, next?.again ?? []);
}

const fits = ({ used }: Filling, height: number): boolean => used === 0 || used + height <= room;

/** Lines of the whole width; what is higher than a page goes over its end line by line. */
function fill(filling: Filling, lines: readonly Line[]): void {
  for (const group of groupsOf(lines)) {
    const height = heightOf(group);
    if (!fits(filling, height) && height <= room) turn(filling, group[0]);
    for (const line of group) {
      if (!fits(filling, line.height)) turn(filling, line);
      place(filling, [line]);
    }
  }
}

function fillColumns(filling: Filling, lines: readonly Line[]): void {
  let groups = groupsOf(lines);
  while (groups.length > 0) {
    if (filling.used > 0) filling.used += size;
    const { beside, rest } = inColumns(groups, room - filling.used);
    if (rest.length === groups.length && filling.used > 0) {
      turn(filling);
      continue;
    }
    for (const column of beside) filling.pages.at(-1)?.push(...placed(column, page.margin + filling.used));
    filling.used += Math.max(...beside.map(heightOf));
    groups = rest;
    if (groups.length > 0) turn(filling);
  }
}

/** Over as many pages as it takes. */
export function manyPages({ blocks }: Pages): Placed[][] {
  const filling: Filling = { pages: [[]], used: 0 };
  let flat: Exclude<Pages["blocks"][number], { kind: "columns" }>[] = [];
  const flush = (): void => {
    fill(filling, linesOf(flat, { ...whole, size }));
    flat = [];
  };
  for (const block of blocks) {
    if (block.kind !== "columns") {
      flat.push(block);
      continue;
    }
    flush();
    fillColumns(filling, linesOf(block.blocks, { ...whole, width: columnWidth, size }));
  }
  flush();
  return filling.pages.filter((lines) => lines.some(({ pieces }) => pieces.length > 0));
}
