import type { Entry } from "@evenhand/shared/comparison";
import type { HandOverFigure } from "@evenhand/shared/hand-over";
import type { Report } from "@evenhand/shared/report";
import type { UnitSymbol } from "@evenhand/shared/unit";
import { convert, dimensionOf } from "@evenhand/measurement/unit";

const meanOf = ({ findings }: Report, item: string, unit: UnitSymbol): number | null => {
  const answer = findings.find((each) => each.item === item)?.answer;
  if (answer?.kind !== "reading" || dimensionOf(answer.unit) !== dimensionOf(unit)) return null;
  const sum = answer.values.reduce((total, { value }) => total + convert(value, answer.unit, unit), 0);
  return sum / answer.values.length;
};

const VERDICTS: Readonly<Partial<Record<Entry["outcome"], HandOverFigure["verdict"]>>> = {
  agree: "within",
  consistent: "within",
  doubtful: "perhaps",
  differ: "beyond",
};

/** One figure of both reports, and what the engine made of the two. */
export const handOverFigure = (
  item: string,
  unit: UnitSymbol,
  reports: Readonly<Record<"collection" | "delivery", Report>>,
  entries: readonly Entry[],
): HandOverFigure => {
  const collection = meanOf(reports.collection, item, unit);
  const delivery = meanOf(reports.delivery, item, unit);
  const outcome = entries.find((entry) => entry.item === item)?.outcome;
  const read = collection !== null && delivery !== null && outcome !== undefined;
  return { collection, delivery, unit, verdict: (read && VERDICTS[outcome]) || "not-read" };
};
