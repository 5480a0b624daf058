import type { Drawing, Words } from "@evenhand/shared/sheet";
import { words } from "./draft.ts";

type Line = [id: string, name: string];

/** Cells of a grid, row by row from the top; one step of the grid is one unit of distance. */
function grid(id: string, named: Words, rows: Line[], columns: Line[]): Drawing {
  return {
    id,
    words: named,
    cells: rows.flatMap(([row, rowName], y) =>
      columns.map(([column, columnName], x) => ({
        id: `${row}-${column}`,
        words: words(`${rowName} ${columnName}`),
        x,
        y,
      })),
    ),
  };
}

const cell = (id: string, name: string, x: number, y: number) => ({ id, words: words(name), x, y });
const heights: Line[] = [
  ["upper", "upper"],
  ["middle", "middle"],
  ["lower", "lower"],
];
const lengths: Line[] = [
  ["front", "front"],
  ["center", "center"],
  ["rear", "rear"],
];

/** Drawings whose cells name the spot of a fault. */
export const drawings: Drawing[] = [
  grid("panel", words("panel"), heights, lengths),
  grid("glass", words("glass"), heights, [
    ["left", "left"],
    ["center", "center"],
    ["right", "right"],
  ]),
  grid("quarter-floor", words("quarter of the floor"), lengths, [
    ["outer", "outer"],
    ["inner", "inner"],
  ]),
  {
    id: "length",
    words: words("along its length"),
    cells: [cell("front", "front", 0, 0), cell("middle", "middle", 1, 0), cell("rear", "rear", 2, 0)],
  },
  {
    id: "tire",
    words: words("tire", "tyre"),
    cells: [
      cell("inner-sidewall", "inner sidewall", 0, 0),
      cell("inner-shoulder", "inner shoulder", 1, 0),
      cell("tread", "tread", 2, 0),
      cell("outer-shoulder", "outer shoulder", 3, 0),
      cell("outer-sidewall", "outer sidewall", 4, 0),
    ],
  },
  {
    id: "wheel",
    words: words("wheel"),
    cells: [cell("hub", "hub", 0, 0), cell("face", "face", 1, 0), cell("rim", "rim", 2, 0)],
  },
  {
    id: "seat",
    words: words("seat"),
    cells: [
      cell("headrest", "headrest", 0, 0),
      cell("backrest", "backrest", 0, 1),
      cell("bolster", "bolster", 1, 1.5),
      cell("cushion", "cushion", 0, 2),
    ],
  },
];
