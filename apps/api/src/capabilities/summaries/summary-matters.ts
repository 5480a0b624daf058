import { matterState } from "@evenhand/case/matter-state";
import type { Matter } from "@evenhand/shared/matter";
import { matterId } from "@evenhand/shared/matter-id";
import type { Summary } from "@evenhand/shared/summary";

/** All matters as they stand, each with what became of what was laid before the dealer. */
export const summaryMatters = (
  matters: readonly Matter[],
  releases: Summary["releases"],
): Summary["matters"] =>
  matters.map((matter) => ({
    id: matterId(matter),
    severity: matter.severity,
    certainty: matter.certainty,
    headline: matter.headline,
    found: matter.found,
    next: matter.next.words,
    lines: matter.lines.length,
    laid: matter.lines.filter((line) => releases.some(({ entry }) => entry === line)).length,
    state: matterState(matter.lines, releases),
  }));
