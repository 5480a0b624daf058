import type { Correction } from "@evenhand/shared/comparison";
import type { UnitSymbol } from "@evenhand/shared/unit";
import { convertDifference } from "@evenhand/measurement/unit";
import { formatValue } from "@evenhand/wording/format-figure";
import { clauseMessages } from "./messages.ts";

type Part = Correction["parts"][number]["of"];

const pairsOf = ({ parts }: Correction, of: Part): string =>
  String(parts.find((part) => part.of === of)?.pairs ?? 0);

const idOf = ({ parts }: Correction) => {
  const has = (of: Part): boolean => parts.some((part) => part.of === of);
  if (has("check-standard")) return has("inspector") ? "inspector-and-check-standard" : "check-standard";
  if (!has("inspector")) return "gauge";
  return has("gauge") ? "inspector-and-gauge" : "inspector";
};

/**
 * Why a reading was corrected, and by how much, in a unit: "this gauge reads 0.30⁄32 in high over 34 past pairs of reports".
 *
 * @param uncertainty of what is read, in that unit: to its digits the figure is given
 */
export const whyCorrected = (
  correction: Correction,
  from: UnitSymbol,
  unit: UnitSymbol,
  uncertainty: number,
): string => {
  const effect = convertDifference(correction.effect, from, unit);
  const size = formatValue(Math.abs(effect), uncertainty, unit);
  const isNone = size === formatValue(0, uncertainty, unit);
  const off = clauseMessages.say("off", { way: isNone ? "true" : effect > 0 ? "high" : "low", size });
  const [pairs, hand] = [pairsOf(correction, "gauge"), pairsOf(correction, "inspector")];
  switch (idOf(correction)) {
    case "gauge":
      return clauseMessages.say("why.gauge", { off, pairs });
    case "inspector":
      return clauseMessages.say("why.inspector", { off, pairs: hand });
    case "inspector-and-gauge":
      return clauseMessages.say("why.inspector-and-gauge", { off, hand, pairs });
    case "check-standard":
      return clauseMessages.say("why.check-standard", { off });
    case "inspector-and-check-standard":
      return clauseMessages.say("why.inspector-and-check-standard", { off, hand });
  }
};
