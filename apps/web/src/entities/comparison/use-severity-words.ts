import { isFoundBad } from "@evenhand/comparison/found-bad";
import type { Entry } from "@evenhand/shared/comparison";
import { useText } from "../../strings/text";

type Graded = Pick<Entry, "severity" | "calls" | "standing">;

/** How grave what was found is, or what could be wrong where it was not seen; `null` where nothing is wrong or unknown. */
export const useSeverityWords = (): ((entry: Graded) => string | null) => {
  const t = useText();
  return (entry) => {
    if (entry.severity === null) return null;
    return isFoundBad(entry) ? t(`severity.${entry.severity}`) : t(`at-stake.${entry.severity}`);
  };
};
