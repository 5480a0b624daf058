import { applicablePlaces } from "@evenhand/sheet/expand";
import type { VehicleForm } from "@evenhand/shared/report";
import { severityRank } from "@evenhand/shared/severity";
import type { Item, Sheet } from "@evenhand/shared/sheet";
import type { Remark } from "../draft-statement/index.ts";

/**
 * Items a walkaround says nothing of, gravest first: the buyer's list of questions. Circumstances of a visit and what only an inspector
 * answers are left out, and so is what the car cannot have.
 */
export const unmentioned = (sheet: Sheet, form: VehicleForm, remarks: readonly Remark[]): Item[] => {
  const said = new Set(remarks.map(({ item }) => item));
  const asked = new Set(applicablePlaces(sheet, form).map(({ item }) => item));
  return [...asked]
    .filter(
      (item) =>
        !said.has(item.id) &&
        item.circumstance !== true &&
        item.section !== "visit" &&
        item.sameAs === undefined,
    )
    .toSorted((a, b) => severityRank(a.severity) - severityRank(b.severity));
};
