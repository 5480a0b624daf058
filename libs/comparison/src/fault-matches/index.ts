import type { Fault } from "@evenhand/shared/answer";
import type { FaultKind } from "@evenhand/shared/sheet";
import type { CompiledDrawing, CompiledItem } from "@evenhand/sheet/compile-sheet";
import { convert } from "@evenhand/measurement/unit";
import { leastCostAssignment } from "../assignment/index.ts";

/** What of the sheet places two faults: the item's kinds in order, with their units, and its drawing. */
export type FaultFrame = {
  readonly kinds: ReadonlyMap<string, FaultKind>;
  readonly kindOrder: ReadonlyMap<string, number>;
  readonly drawing: CompiledDrawing | undefined;
};

/** A fault of each side, by its index in `found`; one of them absent where it has no match. */
export type FaultMatch = { readonly a?: number; readonly b?: number };

/**
 * What two faults without a match cost together: more than neighboring cells, cornerwise too, with the unlikest
 * extents (√2 + ½), and less than two cells apart.
 */
const NO_MATCH = 1.95;
/** The distance of spots of which the drawing shows none or only one. */
const UNKNOWN_DISTANCE = 2;
/** What a difference of extents can add at most, and half of it where only one side gives an extent. */
const EXTENT_WEIGHT = 0.5;
/** Where only one side names the spot, it may be the same. */
const SPOT_NOT_NAMED = 0.5;
/** Far under any difference of costs; only decides between equal ones. */
const TIE = 1e-6;

/** The frame of an item, made once for many comparisons. */
export const frameOf = ({
  faultKinds,
  drawing,
}: Pick<CompiledItem, "faultKinds" | "drawing">): FaultFrame => ({
  kinds: faultKinds,
  kindOrder: new Map(Array.from(faultKinds.keys(), (kind, order) => [kind, order])),
  drawing,
});

/** Extent in the unit of its kind; `undefined` where none was given. */
export const extentOf = (fault: Fault, frame: FaultFrame): number | undefined => {
  const unit = frame.kinds.get(fault.kind)?.unit;
  if (fault.extent === undefined || unit === undefined) return undefined;
  return convert(fault.extent.value, fault.extent.unit, unit);
};

const spotDistance = (a: Fault, b: Fault, frame: FaultFrame): number => {
  if (a.spot === b.spot) return 0;
  if (a.spot === undefined || b.spot === undefined) return SPOT_NOT_NAMED;
  return frame.drawing?.distance(a.spot, b.spot) ?? UNKNOWN_DISTANCE;
};

const extentDistance = (a: Fault, b: Fault, frame: FaultFrame): number => {
  const [extentA, extentB] = [extentOf(a, frame), extentOf(b, frame)];
  if (extentA === undefined && extentB === undefined) return 0;
  if (extentA === undefined || extentB === undefined) return EXTENT_WEIGHT / 2;
  const sum = extentA + extentB;
  return sum === 0 ? 0 : (EXTENT_WEIGHT * Math.abs(extentA - extentB)) / sum;
};

const spotOrder = (fault: Fault, frame: FaultFrame): number =>
  fault.spot === undefined ? -1 : (frame.drawing?.cellOrder.get(fault.spot) ?? Number.MAX_SAFE_INTEGER);

/** Order of faults by the sheet: kind, spot, extent; what the sheet cannot tell apart, by name and then as written. */
const bySheet =
  (faults: readonly Fault[], frame: FaultFrame) =>
  (first: number, second: number): number => {
    const [a, b] = [faults[first], faults[second]];
    if (a === undefined || b === undefined) return 0;
    return (
      (frame.kindOrder.get(a.kind) ?? frame.kindOrder.size) -
        (frame.kindOrder.get(b.kind) ?? frame.kindOrder.size) ||
      compareText(a.kind, b.kind) ||
      spotOrder(a, frame) - spotOrder(b, frame) ||
      compareText(a.spot ?? "", b.spot ?? "") ||
      (extentOf(a, frame) ?? -1) - (extentOf(b, frame) ?? -1) ||
      first - second
    );
  };

const compareText = (a: string, b: string): number => (a === b ? 0 : a < b ? -1 : 1);

const indexesBySheet = (faults: readonly Fault[], frame: FaultFrame): number[] =>
  Array.from(faults, (_, index) => index).sort(bySheet(faults, frame));

const costsOf = (a: readonly Fault[], b: readonly Fault[], frame: FaultFrame): number[][] =>
  a.map((faultA, rankA) => {
    const row = b.map((faultB, rankB) => {
      const cost = spotDistance(faultA, faultB, frame) + extentDistance(faultA, faultB, frame);
      // Symmetric in the two sides, so that exchanging them matches the same faults.
      return cost + TIE * (rankA - rankB) ** 2 + TIE * 1e-3 * (rankA + rankB);
    });
    for (let rank = 0; rank < a.length; rank += 1) row.push(NO_MATCH);
    return row;
  });

const pick = (faults: readonly Fault[], indexes: readonly number[]): Fault[] =>
  indexes.flatMap((index) => faults[index] ?? []);

const matchKind = (
  faultsA: readonly Fault[],
  a: number[],
  faultsB: readonly Fault[],
  b: number[],
  frame: FaultFrame,
) => {
  const columns = leastCostAssignment(costsOf(pick(faultsA, a), pick(faultsB, b), frame));
  const partner = new Map<number, number>();
  for (const [rank, column] of columns.entries()) {
    const [indexA, indexB] = [a[rank], b[column]];
    if (indexA !== undefined && indexB !== undefined) partner.set(indexA, indexB);
  }
  const taken = new Set(partner.values());
  const matches: FaultMatch[] = a.map((index) => {
    const other = partner.get(index);
    return other === undefined ? { a: index } : { a: index, b: other };
  });
  for (const index of b) if (!taken.has(index)) matches.push({ b: index });
  return matches;
};

/**
 * Which faults of two answers are the same ones: within a kind, the assignment with the least total cost, a pair
 * costing the distance between its cells and up to half a cell for unlike extents, a fault without a match one
 * cell's cost on either side. Ties go by the sheet's order, never by the order of writing.
 *
 * @returns every fault of both sides once, in the order of the item's kinds; within a kind matches and A's left-overs
 *   first
 * @example
 * matchFaults([{ kind: "dent", spot: "upper-front" }], [{ kind: "dent", spot: "upper-center" }], frame)
 * // [{ a: 0, b: 0 }]
 */
export const matchFaults = (a: readonly Fault[], b: readonly Fault[], frame: FaultFrame): FaultMatch[] => {
  const [orderA, orderB] = [indexesBySheet(a, frame), indexesBySheet(b, frame)];
  const kinds = new Set<string>();
  for (const fault of [...a, ...b]) kinds.add(fault.kind);
  const rank = (kind: string) => frame.kindOrder.get(kind) ?? frame.kindOrder.size;
  return Array.from(kinds)
    .sort((first, second) => rank(first) - rank(second) || compareText(first, second))
    .flatMap((kind) => {
      const ofKind = (faults: readonly Fault[], order: number[]) =>
        order.filter((index) => faults[index]?.kind === kind);
      return matchKind(a, ofKind(a, orderA), b, ofKind(b, orderB), frame);
    });
};
