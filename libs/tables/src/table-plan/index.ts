import type { GradeScale } from "@evenhand/shared/report";
import type { Row } from "../grid/index.ts";
import { scaleInHeading, scaleOfHeadings } from "../legends/index.ts";
import { namesPlaces } from "../table-columns/index.ts";
import type { Column } from "../table-columns/index.ts";
import type { Table } from "../table-shape/index.ts";

export const textAt = (row: Row, { index }: Column): string => row.cells[index]?.text.trim() ?? "";

/** What a table's columns say for all of its rows. */
export type Plan = {
  readonly columns: readonly Column[];
  readonly labels: readonly Column[];
  readonly rowsArePlaces: boolean;
  /** Heading of the column of names, where it says something itself: `Tire tread` over LF and RF. */
  readonly over: string;
  readonly scale?: GradeScale | undefined;
  /** Columns in which an x crosses something out, since something else ticks. */
  readonly crossed: ReadonlySet<number>;
};

const TICKS = /^[✓✔☑√✅]$|^(ok|yes|y)$/i;

/** Where one corner is ticked, an x under another crosses out. */
const crossedColumns = (columns: readonly Column[], rows: readonly Row[]): Set<number> => {
  const ticked = columns.filter(({ index }) =>
    rows.some((row) => TICKS.test(row.cells[index]?.text.trim() ?? "")),
  );
  const atPlaces = ticked.some(({ role }) => role === "at");
  return new Set(
    columns
      .filter((column) => ticked.includes(column) || (atPlaces && column.role === "at"))
      .map(({ index }) => index),
  );
};

/** What the columns of one table beside others say for each of its rows. */
export const planOf = (columns: readonly Column[], table: Table): Plan => {
  const labels = columns.filter(({ role }) => role === "label");
  const last = labels.at(-1);
  const texts = last === undefined ? [] : table.rows.map((row) => textAt(row, last));
  const grades = columns.flatMap(({ grade }) => (grade === undefined ? [] : [grade]));
  const headed = columns.map(({ heading }) => scaleInHeading(heading)).find((scale) => scale !== undefined);
  return {
    columns,
    labels,
    rowsArePlaces: namesPlaces(texts),
    over: last === undefined ? "" : last.heading.replaceAll(/\s*[([].*?[)\]]/g, ""),
    scale: scaleOfHeadings(grades) ?? headed,
    crossed: crossedColumns(columns, table.rows),
  };
};
