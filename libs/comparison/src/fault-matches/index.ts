import type { Fault } from "@evenhand/shared/answer";
import type { FaultKind } from "@evenhand/shared/sheet";
import type { CompiledDrawing, CompiledItem } from "@evenhand/sheet/compile-sheet";
import { convert } from "@evenhand/measurement/unit";
import { leastCostAssignment } from "../assignment/index.ts";
import { familyOf } from "../fault-stages/index.ts";

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

const spotDistance = (a: Fault, b: Fault, { drawing }: FaultFrame): number => {
  if (a.spot === b.spot) return 0;
  if (a.spot === undefined || b.spot === undefined) return SPOT_NOT_NAMED;
  return drawing?.distance(a.spot, b.spot) ?? UNKNOWN_DISTANCE;
};

const extentDistance = (a: Fault, b: Fault, frame: FaultFrame): number => {
  const extentA = extentOf(a, frame);
  const extentB = extentOf(b, frame);
  if (extentA === extentB) return 0;
  if (extentA === undefined || extentB === undefined) return EXTENT_WEIGHT / 2;
  return (EXTENT_WEIGHT * Math.abs(extentA - extentB)) / (extentA + extentB);
};

/** Stages of one thing (bubbles, corrosion) are rather matched with their own. */
const OTHER_STAGE = 0.3;

/** A hole is never the rust that was shown beside it. */
const isApart = (a: Fault, b: Fault, { kinds }: FaultFrame): boolean =>
  a.kind !== b.kind &&
  (kinds.get(a.kind)?.neverTrifling === true || kinds.get(b.kind)?.neverTrifling === true);

const pairCost = (a: Fault, b: Fault, frame: FaultFrame): number =>
  spotDistance(a, b, frame) +
  extentDistance(a, b, frame) +
  (a.kind === b.kind ? 0 : isApart(a, b, frame) ? 2 * NO_MATCH : OTHER_STAGE);

/** A fault and its index in the answer, with what of its kind is asked again and again. */
type Placed = {
  readonly fault: Fault;
  readonly index: number;
  readonly family: string;
  readonly rank: number;
};

const kindRank = (kind: string, { kindOrder }: FaultFrame): number => kindOrder.get(kind) ?? kindOrder.size;

/** Before every cell where no spot is named. */
const spotRank = ({ spot }: Fault, { drawing }: FaultFrame): number =>
  drawing?.cellOrder.get(spot ?? "") ?? -1;

const extentRank = (fault: Fault, frame: FaultFrame): number => extentOf(fault, frame) ?? -1;

const byPlace = (a: Placed, b: Placed, frame: FaultFrame): number =>
  a.rank - b.rank ||
  spotRank(a.fault, frame) - spotRank(b.fault, frame) ||
  extentRank(a.fault, frame) - extentRank(b.fault, frame) ||
  a.index - b.index;

const sorted = (placed: Placed[], frame: FaultFrame): Placed[] => placed.sort((a, b) => byPlace(a, b, frame));

/** Faults in the sheet's order: kind, spot, extent; what the sheet cannot tell apart, as written. */
const bySheet = (faults: readonly Fault[], frame: FaultFrame): Placed[] => {
  const placed = faults.map((fault, index): Placed => ({
    fault,
    index,
    family: familyOf(fault.kind, frame),
    rank: kindRank(fault.kind, frame),
  }));
  const [first, second] = placed;
  if (first === undefined || second === undefined) return placed;
  // Two are by far the most frequent case of several.
  if (placed.length === 2) return byPlace(first, second, frame) > 0 ? [second, first] : placed;
  return sorted(placed, frame);
};

/**
 * One row a fault of A: what each of B's would cost, and then what going without would. The ties are symmetric in the two
 * sides, so that exchanging them matches the same faults.
 */
const costsOf = (a: readonly Placed[], b: readonly Placed[], frame: FaultFrame): number[][] => {
  const without = a.map(() => NO_MATCH);
  return a.map((one, rankA) => [
    ...b.map((other, rankB) => pairCost(one.fault, other.fault, frame) + TIE * (rankA - rankB) ** 2),
    ...without,
  ]);
};

const onlyOneSide = (a: readonly Placed[], b: readonly Placed[], matches: FaultMatch[]): void => {
  for (const { index } of a) matches.push({ a: index });
  for (const { index } of b) matches.push({ b: index });
};

/** By far the most frequent matches, kept once each; nobody may write to them. */
const NONE: readonly FaultMatch[] = Object.freeze([]);
const ONLY_A: readonly FaultMatch[] = Object.freeze([{ a: 0 }]);
const ONLY_B: readonly FaultMatch[] = Object.freeze([{ b: 0 }]);
const SAME: readonly FaultMatch[] = Object.freeze([{ a: 0, b: 0 }]);
const APART: readonly FaultMatch[] = Object.freeze([{ a: 0 }, { b: 0 }]);
const APART_B_FIRST: readonly FaultMatch[] = Object.freeze([{ b: 0 }, { a: 0 }]);

/** Adds the matches of the faults of one family. */
const matchFamily = (
  a: readonly Placed[],
  b: readonly Placed[],
  frame: FaultFrame,
  matches: FaultMatch[],
): void => {
  const [firstA] = a;
  const [firstB] = b;
  if (firstA === undefined || firstB === undefined) return onlyOneSide(a, b, matches);
  // One of each is matched as the assignment would match it.
  if (a.length === 1 && b.length === 1) {
    if (pairCost(firstA.fault, firstB.fault, frame) > NO_MATCH) return onlyOneSide(a, b, matches);
    matches.push({ a: firstA.index, b: firstB.index });
    return undefined;
  }
  const columns = leastCostAssignment(costsOf(a, b, frame));
  for (const [rank, { index }] of a.entries()) {
    const other = b[columns[rank] ?? b.length];
    matches.push(other === undefined ? { a: index } : { a: index, b: other.index });
  }
  for (const [rank, { index }] of b.entries()) if (!columns.includes(rank)) matches.push({ b: index });
  return undefined;
};

/** By far the most frequent case of two sides, with the outcome the assignment would have. */
const matchOne = (a: Fault, b: Fault, frame: FaultFrame): readonly FaultMatch[] => {
  if (familyOf(a.kind, frame) === familyOf(b.kind, frame)) {
    return pairCost(a, b, frame) <= NO_MATCH ? SAME : APART;
  }
  return kindRank(a.kind, frame) <= kindRank(b.kind, frame) ? APART : APART_B_FIRST;
};

/** The families of two sorted sides, each once, in the order of the item's kinds. */
const familiesIn = (a: readonly Placed[], b: readonly Placed[]): string[] => {
  const families: string[] = [];
  let [nextA, nextB] = [0, 0];
  while (nextA < a.length || nextB < b.length) {
    const [one, other] = [a[nextA], b[nextB]];
    const isFirst = one !== undefined && (other === undefined || one.rank <= other.rank);
    const next = isFirst ? one : other;
    if (isFirst) nextA += 1;
    else nextB += 1;
    if (next !== undefined && !families.includes(next.family)) families.push(next.family);
  }
  return families;
};

const ofFamily = (placed: readonly Placed[], family: string): Placed[] =>
  placed.filter((one) => one.family === family);

/**
 * Which faults of two answers are the same ones: within a family of kinds, the assignment with the least total cost, a pair
 * costing the distance between its cells and up to half a cell for unlike extents, a fault without a match one
 * cell's cost on either side. Ties go by the sheet's order, never by the order of writing.
 *
 * @returns every fault of both sides once, in the order of the item's kinds; within a family matches and A's
 *   left-overs first
 * @example
 * matchFaults([{ kind: "dent", spot: "upper-front" }], [{ kind: "dent", spot: "upper-center" }], frame)
 * // [{ a: 0, b: 0 }]
 */
export const matchFaults = (
  a: readonly Fault[],
  b: readonly Fault[],
  frame: FaultFrame,
): readonly FaultMatch[] => {
  const onlyA = a[0];
  const onlyB = b[0];
  if (a.length === 1 && b.length === 1 && onlyA !== undefined && onlyB !== undefined) {
    return matchOne(onlyA, onlyB, frame);
  }
  // One fault or none in all has nothing to be sorted or matched.
  if (a.length + b.length < 2) return a.length === 1 ? ONLY_A : b.length === 1 ? ONLY_B : NONE;
  const placedA = bySheet(a, frame);
  const placedB = bySheet(b, frame);
  const matches: FaultMatch[] = [];
  if (a.length === 0 || b.length === 0) {
    onlyOneSide(placedA, placedB, matches);
    return matches;
  }
  for (const family of familiesIn(placedA, placedB)) {
    matchFamily(ofFamily(placedA, family), ofFamily(placedB, family), frame, matches);
  }
  return matches;
};
