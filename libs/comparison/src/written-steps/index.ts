import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import type { UnitSymbol } from "@evenhand/shared/unit";
import { writtenStep } from "@evenhand/measurement/written-step";

/** The step a reading was written in, in its own unit; 0 for what is no reading. */
export type WrittenSteps = (finding: Finding) => number;

/** What one item was read at in one unit, and the step of it once somebody asked. */
type Written = { readonly unit: UnitSymbol; readonly values: number[]; step: number | undefined };

/** Nearly every item is read in one unit. */
const inUnit = (units: readonly Written[] | undefined, unit: UnitSymbol): Written | undefined =>
  units?.find((written) => written.unit === unit);

/** What is written of an item in a unit, begun where nothing is yet. */
const writtenIn = (written: Map<string, Written[]>, item: string, unit: UnitSymbol): Written => {
  const units = written.get(item);
  const known = inUnit(units, unit);
  if (known !== undefined) return known;
  const begun: Written = { unit, values: [], step: undefined };
  if (units === undefined) written.set(item, [begun]);
  else units.push(begun);
  return begun;
};

/**
 * The step each reading of a report was written in: that of all places of its item in that unit, for one round figure tells little.
 *
 * @example writtenSteps(statement)(compressionOfCylinder2) // 5 (psi)
 */
export const writtenSteps = ({ findings }: Pick<Report, "findings">): WrittenSteps => {
  const written = new Map<string, Written[]>();
  let last: Written | undefined;
  let lastItem: string | undefined;
  for (let index = 0; index < findings.length; index += 1) {
    const { item, answer } = findings[index] ?? {};
    if (item === undefined || answer?.kind !== "reading") continue;
    // Readings of one item mostly stand together.
    if (last === undefined || item !== lastItem || answer.unit !== last.unit) {
      last = writtenIn(written, item, answer.unit);
      lastItem = item;
    }
    for (const { value } of answer.values) last.values.push(value);
  }
  return ({ item, answer }) => {
    if (answer.kind !== "reading") return 0;
    const known = inUnit(written.get(item), answer.unit);
    if (known === undefined) return 0;
    known.step ??= writtenStep(known.values);
    return known.step;
  };
};
