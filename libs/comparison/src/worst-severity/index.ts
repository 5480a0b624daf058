import { isBadCall, worseSeverity } from "@evenhand/shared/severity";
import type { Severity } from "@evenhand/shared/severity";
import type { Consequence } from "@evenhand/shared/sheet";
import type { CompiledItem } from "@evenhand/sheet/compile-sheet";

const BY_CONSEQUENCE: Readonly<Record<Consequence, Severity>> = {
  safety: "danger",
  identity: "worth",
  structure: "worth",
  mechanical: "repair",
  appearance: "small",
  papers: "repair",
};

/** Numbers a title hangs on: without them nobody should pay. */
const HALTING = /^identity\.(vin|title-number)$/;

/** By item and position; the sheet is read once for all the comparisons made on it. */
const kept = new WeakMap<CompiledItem, Map<string, Severity>>();

const worstOf = (severities: Iterable<Severity>): Severity | null => {
  let worst: Severity | null = null;
  for (const severity of severities) worst = worseSeverity(worst, severity);
  return worst;
};

const ofFaults = ({ item, faultKinds }: CompiledItem, position: string): Severity | null =>
  worstOf([
    ...(item.faults?.severities ?? [])
      .filter(({ positions }) => positions === undefined || positions.includes(position))
      .map(({ severity }) => severity),
    ...Array.from(faultKinds.values(), ({ severity }) => severity),
  ]);

const ofAnswer = (compiled: CompiledItem, position: string): Severity | null => {
  const { item, options } = compiled;
  switch (item.answer) {
    case "reading": {
      const { limits = [], alarms = [] } = item.reading ?? {};
      return worstOf(
        [...limits, ...alarms]
          .filter(({ positions }) => positions === undefined || positions.includes(position))
          .map(({ severity }) => severity),
      );
    }
    case "grade":
      return item.grade?.spent ?? item.grade?.severity ?? null;
    case "working":
      return item.working?.at?.[position] ?? item.working?.severity ?? null;
    case "presence":
      return item.presence?.severity ?? null;
    case "choice":
      return worstOf(Array.from(options.values(), ({ call }) => call).filter(isBadCall));
    case "faults":
      return ofFaults(compiled, position);
    case "color":
    case "code":
      return HALTING.test(item.id) ? "halt" : null;
  }
};

/**
 * How grave it can be that a place is not as it was claimed to be: the worst its answers can say. What an unseen claim covers, and
 * what two codes that differ put in question.
 *
 * @example worstSeverity(compiledHorn, "") // "danger"
 */
export const worstSeverity = (compiled: CompiledItem, position: string): Severity => {
  const ofItem = kept.get(compiled) ?? new Map<string, Severity>();
  const known = ofItem.get(position);
  if (known !== undefined) return known;
  const worst = ofAnswer(compiled, position) ?? BY_CONSEQUENCE[compiled.item.consequence];
  kept.set(compiled, ofItem.set(position, worst));
  return worst;
};
