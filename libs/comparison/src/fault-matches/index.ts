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

const compareText = (a: string, b: string): number => (a === b ? 0 : a < b ? -1 : 1);

const byKind = (a: string, b: string, { kindOrder }: FaultFrame): number =>
  (kindOrder.get(a) ?? kindOrder.size) - (kindOrder.get(b) ?? kindOrder.size) || compareText(a, b);

/** Order of faults by the sheet: kind, spot, extent; what the sheet cannot tell apart, by name and then as written. */
const bySheet =
  (faults: readonly Fault[], frame: FaultFrame) =>
  (first: number, second: number): number => {
    const [a, b] = [faults[first], faults[second]];
    if (a === undefined || b === undefined) return 0;
    return (
      byKind(a.kind, b.kind, frame) ||
      spotOrder(a, frame) - spotOrder(b, frame) ||
      compareText(a.spot ?? "", b.spot ?? "") ||
      (extentOf(a, frame) ?? -1) - (extentOf(b, frame) ?? -1) ||
      first - second
    );
  };

const indexesBySheet = (faults: readonly Fault[], frame: FaultFrame): number[] => {
  const indexes: number[] = [];
  for (let index = 0; index < faults.length; index += 1) indexes.push(index);
  return indexes.length < 2 ? indexes : indexes.sort(bySheet(faults, frame));
};

const pairCost = (a: Fault, b: Fault, frame: FaultFrame): number =>
  spotDistance(a, b, frame) + extentDistance(a, b, frame);

const costsOf = (a: readonly Fault[], b: readonly Fault[], frame: FaultFrame): number[][] =>
  a.map((faultA, rankA) => {
    const row = b.map((faultB, rankB) => {
      // Symmetric in the two sides, so that exchanging them matches the same faults.
      return pairCost(faultA, faultB, frame) + TIE * (rankA - rankB) ** 2 + TIE * 1e-3 * (rankA + rankB);
    });
    for (let rank = 0; rank < a.length; rank += 1) row.push(NO_MATCH);
    return row;
  });

/** The faults of one kind on both sides, each in the sheet's order. */
type OfKind = {
  readonly faultsA: readonly Fault[];
  readonly a: number[];
  readonly faultsB: readonly Fault[];
  readonly b: number[];
};

/** The partner in B of each of A's faults of a kind, as a place in `b`; undefined where it has none. */
const partnersOf = ({ faultsA, a, faultsB, b }: OfKind, frame: FaultFrame): (number | undefined)[] => {
  const first = a.flatMap((index) => faultsA[index] ?? []);
  const second = b.flatMap((index) => faultsB[index] ?? []);
  const [onlyA, onlyB] = [first[0], second[0]];
  if (onlyA === undefined || onlyB === undefined) return [];
  if (first.length === 1 && second.length === 1) return pairCost(onlyA, onlyB, frame) < NO_MATCH ? [0] : [];
  const columns = leastCostAssignment(costsOf(first, second, frame));
  return columns.map((column) => (column < b.length ? column : undefined));
};

const matchKind = (ofKind: OfKind, frame: FaultFrame, matches: FaultMatch[]): void => {
  const { a, b } = ofKind;
  const partners = partnersOf(ofKind, frame);
  for (const [place, index] of a.entries()) {
    const partner = b[partners[place] ?? -1];
    matches.push(partner === undefined ? { a: index } : { a: index, b: partner });
  }
  for (const [place, index] of b.entries()) if (!partners.includes(place)) matches.push({ b: index });
};

/** The faults at the head of a list that are of one kind. */
const takeKind = (
  faults: readonly Fault[],
  order: readonly number[],
  from: number,
  kind: string,
): number[] => {
  let end = from;
  while (end < order.length && faults[order[end] ?? -1]?.kind === kind) end += 1;
  return order.slice(from, end);
};

/** The kind that comes first at the heads of two lists in the sheet's order. */
const firstKind = (a: Fault | undefined, b: Fault | undefined, frame: FaultFrame): string | undefined => {
  if (a === undefined || b === undefined) return (a ?? b)?.kind;
  return byKind(a.kind, b.kind, frame) <= 0 ? a.kind : b.kind;
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
  const matches: FaultMatch[] = [];
  const [orderA, orderB] = [indexesBySheet(a, frame), indexesBySheet(b, frame)];
  let [fromA, fromB] = [0, 0];
  for (;;) {
    const kind = firstKind(a[orderA[fromA] ?? -1], b[orderB[fromB] ?? -1], frame);
    if (kind === undefined) return matches;
    const [ofA, ofB] = [takeKind(a, orderA, fromA, kind), takeKind(b, orderB, fromB, kind)];
    matchKind({ faultsA: a, a: ofA, faultsB: b, b: ofB }, frame, matches);
    fromA += ofA.length;
    fromB += ofB.length;
  }
};
