import { SEVERITIES } from "@evenhand/shared/terms";
import type { Outcome, Standing } from "@evenhand/shared/outcome";
import type { Severity } from "@evenhand/shared/severity";
import { text, whole, type RawSearch } from "../../service/search";
import { outcomeOrder, standings } from "../../entities/comparison/terms";
import { oneOf } from "../../service/one-of";

/** The state of the page lies in its address, so that a view of it can be sent to somebody. */
export interface ComparisonSearch {
  readonly view?: "items" | "whole" | "checks";
  readonly order?: "pressing" | "sheet";
  readonly outcome?: readonly Outcome[];
  readonly standing?: Standing;
  readonly severity?: Severity;
  readonly section?: string;
  readonly station?: string;
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
  view: oneOf(["items", "whole", "checks"], raw["view"]),
  order: oneOf(["pressing", "sheet"], raw["order"]),
  outcome: outcomesOf(raw["outcome"]),
  standing: oneOf(standings, raw["standing"]),
  severity: oneOf(SEVERITIES, raw["severity"]),
  section: text(raw["section"]),
  station: text(raw["station"]),
  q: text(raw["q"]),
  open: whole(raw["open"]),
});
