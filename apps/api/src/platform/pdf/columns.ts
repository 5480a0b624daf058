import { heightOf, type Line } from "./lines.ts";
import { between, whole } from "./pages.ts";

const COLUMNS = 2;
/** How finely it is looked for the least height, in points. */
const STEP = 4;

export const columnWidth = (whole.width - (COLUMNS - 1) * between) / COLUMNS;

type Group = Line[];
type Beside = { readonly beside: readonly Group[]; readonly rest: Group[] };

const isEmpty = ({ pieces }: Line): boolean => pieces.length === 0;

/** What stands at the head of a column begins without a gap. */
const beginning = (group: Group): Line[] => {
  const first = group.findIndex((line) => !isEmpty(line));
  return first < 0 ? [] : group.slice(first);
};

const shifted = (line: Line, by: number): Line => ({
  ...line,
  pieces: line.pieces.map((piece) => ({ ...piece, x: piece.x + by })),
});

/** As many groups as a column of this height takes; none, where the first is too high. */
function column(groups: readonly Group[], height: number): { lines: Line[]; taken: number } {
  const lines: Line[] = [];
  let taken = 0;
  for (const group of groups) {
    const next = lines.length === 0 ? beginning(group) : group;
    if (heightOf(lines) + heightOf(next) > height) break;
    lines.push(...next);
    taken += 1;
  }
  return { lines, taken };
}

function filled(groups: readonly Group[], height: number): Beside {
  let rest = [...groups];
  const beside = Array.from({ length: COLUMNS }, (_, at) => {
    const { lines, taken } = column(rest, height);
    rest = rest.slice(taken);
    return lines.map((line) => shifted(line, at * (columnWidth + between)));
  });
  return { beside, rest };
}

/**
 * Groups of lines down one column and then down the next, no higher than `height`; of one height where all have room, and what has
 * no room as the rest.
 */
export function inColumns(groups: readonly Group[], height: number): Beside {
  const most = filled(groups, height);
  if (most.rest.length > 0) return most;
  const least = heightOf(groups.flat()) / COLUMNS;
  for (let tried = least; tried < height; tried += STEP) {
    const level = filled(groups, tried);
    if (level.rest.length === 0) return level;
  }
  return most;
}
