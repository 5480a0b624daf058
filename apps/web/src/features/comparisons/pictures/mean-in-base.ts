import { convert } from "@evenhand/measurement/unit";
import type { Finding } from "@evenhand/shared/finding";
import type { Item } from "@evenhand/shared/sheet";

/** Mean of a finding's readings in the item's base unit, for pictures. */
export const meanInBase = (finding: Finding | null, item: Item | undefined): number | null => {
  if (finding?.answer.kind !== "reading" || !item?.reading) return null;
  const { values, unit } = finding.answer;
  const sum = values.reduce((total, { value }) => total + value, 0);
  return convert(sum / values.length, unit, item.reading.unit);
};
