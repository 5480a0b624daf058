import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import { writtenStep } from "@evenhand/measurement/written-step";

/** The step a reading was written in, in its own unit; 0 for what is no reading. */
export type WrittenSteps = (finding: Finding) => number;

/** What one item was read at in one unit, and the step of it once somebody asked. */
type Written = { readonly values: number[]; step?: number };

/**
 * The step each reading of a report was written in: that of all places of its item in that unit, for one round figure tells little.
 *
 * @example writtenSteps(statement)(compressionOfCylinder2) // 5 (psi)
 */
export const writtenSteps = ({ findings }: Pick<Report, "findings">): WrittenSteps => {
  const written = new Map<string, Map<string, Written>>();
  for (const { item, answer } of findings) {
    if (answer.kind !== "reading") continue;
    const units = written.get(item) ?? new Map<string, Written>();
    const known = units.get(answer.unit) ?? { values: [] };
    for (const { value } of answer.values) known.values.push(value);
    units.set(answer.unit, known);
    written.set(item, units);
  }
  return ({ item, answer }) => {
    if (answer.kind !== "reading") return 0;
    const known = written.get(item)?.get(answer.unit);
    if (known === undefined) return 0;
    known.step ??= writtenStep(known.values);
    return known.step;
  };
};
