import { ENTERED_LINES, type LandedChange, type LandedCostEntries } from "@evenhand/shared/landed-cost";

const isSame = (before: object | string | null, after: object | string | null): boolean => {
  if (before === null || after === null || typeof before === "string" || typeof after === "string")
    return before === after;
  return canonical(before) === canonical(after);
};

/** In one order of keys, whatever order it came in. */
const canonical = (value: unknown): string =>
  JSON.stringify(value, (_, one: unknown) =>
    typeof one === "object" && one !== null && !Array.isArray(one)
      ? Object.fromEntries(Object.entries(one).toSorted(([a], [b]) => (a < b ? -1 : 1)))
      : one,
  );

type Rates = LandedCostEntries["rates"];
const pairOf = ({ from, to }: Rates[number]): string => `${from} ${to}`;

/** Rates between the same two currencies are set beside each other in the order they were entered. */
const rateChanges = (before: Rates, after: Rates): LandedChange[] => {
  const [old, now] = [Map.groupBy(before, pairOf), Map.groupBy(after, pairOf)];
  return [...new Set([...now.keys(), ...old.keys()])].flatMap((pair) => {
    const [was = [], is = []] = [old.get(pair), now.get(pair)];
    return Array.from({ length: Math.max(was.length, is.length) }, (_, at) => {
      const [one, other] = [was[at] ?? null, is[at] ?? null];
      const { from, to } = one ?? other ?? { from: "", to: "" };
      return { of: "rate" as const, from, to, before: one, after: other };
    });
  });
};

/**
 * What of a car's landed cost a buyer entered otherwise than before, in the order in which it is read: lines, trip, limit, the
 * total's currency, rates of exchange. What stayed as it was is left out.
 *
 * @param before `null` before anything was entered: what is entered is all new
 * @example landedCostChanges(null, { ...entries, limit }) // [{ of: "limit", before: null, after: limit }]
 */
export function landedCostChanges(
  before: LandedCostEntries | null,
  after: LandedCostEntries,
): LandedChange[] {
  const lines = ENTERED_LINES.map((line): LandedChange => ({
    of: "line",
    line,
    before: before?.lines[line] ?? null,
    after: after.lines[line] ?? null,
  }));
  const all: LandedChange[] = [
    ...lines,
    { of: "trip", before: before?.trip ?? null, after: after.trip },
    { of: "limit", before: before?.limit ?? null, after: after.limit },
    { of: "currency", before: before?.currency ?? null, after: after.currency },
    ...rateChanges(before?.rates ?? [], after.rates),
  ];
  return all.filter((change) => !isSame(change.before, change.after));
}
