import { isBadCall, severityRank, worseSeverity } from "@evenhand/shared/severity";
import type { Severity } from "@evenhand/shared/severity";
import type { CompiledItem } from "@evenhand/sheet/compile-sheet";

/** By item and position; the sheet is read once for all the comparisons made on it. */
const kept = new WeakMap<CompiledItem, Map<string, Severity>>();

const worstOf = (severities: readonly Severity[]): Severity | null => {
  let worst: Severity | null = null;
  for (const severity of severities) worst = worseSeverity(worst, severity);
  return worst;
};

const mildestOf = (severities: readonly Severity[]): Severity | undefined =>
  severities.toSorted((a, b) => severityRank(b) - severityRank(a))[0];

const ofFaults = ({ item, faultKinds }: CompiledItem, position: string): Severity[] => [
  ...(item.faults?.severities ?? [])
    .filter(({ positions }) => positions === undefined || positions.includes(position))
    .map(({ severity }) => severity),
  ...Array.from(faultKinds.values(), ({ severity }) => severity),
];

const defined = (...severities: readonly (Severity | undefined)[]): Severity[] =>
  severities.filter((severity) => severity !== undefined);

/** Every severity an answer at this place can have by itself; none for codes, colors and plain dimensions. */
const severitiesOf = (compiled: CompiledItem, position: string): Severity[] => {
  const { item } = compiled;
  switch (item.answer) {
    case "reading": {
      const { limits = [], alarms = [] } = item.reading ?? {};
      return [...limits, ...alarms].map(({ severity, at }) => at?.[position] ?? severity);
    }
    case "grade":
      return defined(item.grade?.spent, item.grade?.severity);
    case "working": {
      const at = item.working?.at?.[position];
      return at === undefined ? defined(item.working?.severity, item.working?.intermittent) : [at];
    }
    case "presence":
      return defined(item.presence?.severity);
    case "choice":
      return (item.choice?.options ?? []).map(({ call, at }) => at?.[position] ?? call).filter(isBadCall);
    case "faults":
      return ofFaults(compiled, position);
    case "color":
    case "code":
      return [];
  }
};

/**
 * How grave it can be that a place is not as it was claimed to be: the worst its answers can say, and the item's own severity where
 * none is bad by itself (a code, a dimension). What an unseen claim covers.
 *
 * @example worstSeverity(compiledHorn, "") // "danger"
 */
export const worstSeverity = (compiled: CompiledItem, position: string): Severity => {
  const ofItem = kept.get(compiled) ?? new Map<string, Severity>();
  const known = ofItem.get(position);
  if (known !== undefined) return known;
  const worst = worstOf(severitiesOf(compiled, position)) ?? compiled.item.severity;
  kept.set(compiled, ofItem.set(position, worst));
  return worst;
};

/**
 * How grave it is that two answers part of which neither is bad by itself, or that nothing judges the one there is: as the item
 * says, and never graver than the least that a bad answer there would be.
 *
 * @example partedSeverity(compiledLining, "left-front") // "repair"
 */
export const partedSeverity = (compiled: CompiledItem, position: string): Severity => {
  const least = mildestOf(severitiesOf(compiled, position));
  const { severity } = compiled.item;
  return least === undefined || severityRank(severity) > severityRank(least) ? severity : least;
};
