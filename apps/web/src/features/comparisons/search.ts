import { SEVERITIES } from "@evenhand/shared/terms";
import type { Outcome, Standing } from "@evenhand/shared/outcome";
import type { Mark } from "@evenhand/shared/comparison";
import type { Severity } from "@evenhand/shared/severity";
import { text, whole, type RawSearch } from "../../service/search";
import { marks, outcomeOrder, standings } from "../../entities/comparison/terms";
import { oneOf } from "../../service/one-of";

const VIEWS = ["answer", "items", "whole", "checks"] as const;
export type View = (typeof VIEWS)[number];

/** The state of the page lies in its address, so that a view of it can be sent to somebody. */
export interface ComparisonSearch {
  /** Left out: the answer, or the lines where the address speaks of lines. */
  readonly view?: View;
  readonly order?: "pressing" | "sheet";
  readonly outcome?: readonly Outcome[];
  readonly standing?: Standing;
  readonly severity?: Severity;
  readonly section?: string;
  readonly station?: string;
  readonly mark?: Mark;
  /** Place of a matter among all of the answer's, from 0. */
  readonly matter?: number;
  readonly q?: string;
  /** Index of the line that is open. */
  readonly open?: number;
}

const outcomesOf = (said: unknown): readonly Outcome[] | undefined => {
  const list = Array.isArray(said)
    ? said.map((one) => oneOf(outcomeOrder, one)).filter((one) => one !== undefined)
    : [];
  return list.length > 0 ? list : undefined;
};

export const comparisonSearch = (raw: RawSearch): ComparisonSearch => ({
  view: oneOf(VIEWS, raw["view"]),
  order: oneOf(["pressing", "sheet"], raw["order"]),
  outcome: outcomesOf(raw["outcome"]),
  standing: oneOf(standings, raw["standing"]),
  severity: oneOf(SEVERITIES, raw["severity"]),
  section: text(raw["section"]),
  station: text(raw["station"]),
  mark: oneOf(marks, raw["mark"]),
  matter: whole(raw["matter"]),
  q: text(raw["q"]),
  open: whole(raw["open"]),
});

/** What the page shows first: the answer, unless the address names a view, or speaks of lines as filters, an order or one open line do. */
export const viewOf = ({ view, ...ofLines }: ComparisonSearch): View =>
  view ?? (Object.values(ofLines).some((one) => one !== undefined) ? "items" : "answer");
