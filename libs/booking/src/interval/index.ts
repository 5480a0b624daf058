/**
 * Half-open stretches of time, `[start, end)`, in whole epoch milliseconds, and their algebra.
 *
 * A list is *normal* when it is sorted, holds no empty stretch, and no two stretches overlap or touch. `normalize`
 * makes a list normal; every other function wants normal lists and gives normal lists, in one pass over each.
 */
export type Interval = { readonly start: number; readonly end: number };

const byStart = (a: Interval, b: Interval): number => a.start - b.start;

/**
 * Sorts, drops what is empty, and joins what overlaps or touches.
 *
 * @example normalize([{ start: 5, end: 9 }, { start: 1, end: 5 }, { start: 3, end: 3 }]) // [{ start: 1, end: 9 }]
 */
export function normalize(intervals: readonly Interval[]): Interval[] {
  const sorted = intervals.filter(({ start, end }) => start < end).sort(byStart);
  const normal: Interval[] = [];
  let last: { start: number; end: number } | undefined;
  for (const { start, end } of sorted) {
    if (last !== undefined && start <= last.end) {
      if (end > last.end) last.end = end;
    } else {
      last = { start, end };
      normal.push(last);
    }
  }
  return normal;
}

/**
 * Everything in `a`, in `b`, or in both.
 *
 * @example union([{ start: 0, end: 2 }], [{ start: 2, end: 4 }]) // [{ start: 0, end: 4 }]
 */
export const union = (a: readonly Interval[], b: readonly Interval[]): Interval[] => normalize([...a, ...b]);

/**
 * What `a` and `b` share.
 *
 * @example intersect([{ start: 0, end: 5 }], [{ start: 3, end: 9 }]) // [{ start: 3, end: 5 }]
 */
export function intersect(a: readonly Interval[], b: readonly Interval[]): Interval[] {
  const shared: Interval[] = [];
  let i = 0;
  let j = 0;
  while (i < a.length && j < b.length) {
    const one = a[i]!;
    const other = b[j]!;
    const start = Math.max(one.start, other.start);
    const end = Math.min(one.end, other.end);
    if (start < end) shared.push({ start, end });
    if (one.end < other.end) i += 1;
    else j += 1;
  }
  return shared;
}

/**
 * What of `a` is not in `b`. `b` need only be sorted by start.
 *
 * @example subtract([{ start: 0, end: 9 }], [{ start: 3, end: 5 }]) // [{ start: 0, end: 3 }, { start: 5, end: 9 }]
 */
export function subtract(a: readonly Interval[], b: readonly Interval[]): Interval[] {
  const left: Interval[] = [];
  let j = 0;
  for (const { start, end } of a) {
    let from = start;
    while (j < b.length && b[j]!.end <= from) j += 1;
    for (let k = j; k < b.length && b[k]!.start < end; k += 1) {
      if (b[k]!.start > from) left.push({ start: from, end: b[k]!.start });
      from = Math.max(from, b[k]!.end);
    }
    if (from < end) left.push({ start: from, end });
  }
  return left;
}

/** Index of the last stretch that starts at or before `at`; −1 where there is none. */
function lastStartingBy(intervals: readonly Interval[], at: number): number {
  let low = 0;
  let high = intervals.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (intervals[middle]!.start <= at) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}

/**
 * The stretch that holds the instant; `undefined` where none does.
 *
 * @example findHolding([{ start: 0, end: 5 }], 5) // undefined
 */
export function findHolding(intervals: readonly Interval[], at: number): Interval | undefined {
  const found = intervals[lastStartingBy(intervals, at)];
  return found !== undefined && at < found.end ? found : undefined;
}

/**
 * Does one stretch of the list hold the whole of `part`?
 *
 * @example holds([{ start: 0, end: 5 }], { start: 2, end: 5 }) // true
 */
export function holds(intervals: readonly Interval[], part: Interval): boolean {
  const found = findHolding(intervals, part.start);
  return found !== undefined && part.end <= found.end;
}

/** Do two stretches share an instant? Touching is not sharing. */
export const overlap = (a: Interval, b: Interval): boolean => a.start < b.end && b.start < a.end;

/**
 * The starts `s` at which `[s + from, s + to)` lies within one stretch of the list. Whole milliseconds: the last start
 * that still fits is counted in, so a stretch exactly as long as the part gives one start.
 *
 * @example startsWithin([{ start: 0, end: 10 }], 2, 5) // [{ start: -2, end: 6 }]
 */
export function startsWithin(intervals: readonly Interval[], from: number, to: number): Interval[] {
  const starts: { start: number; end: number }[] = [];
  for (const { start, end } of intervals) {
    if (end - start < to - from) continue;
    const last = starts.at(-1);
    if (last !== undefined && last.end === start - from) last.end = end - to + 1;
    else starts.push({ start: start - from, end: end - to + 1 });
  }
  return starts;
}

/**
 * The starts `s` at which `[s + from, s + to)` shares an instant with any stretch of the list.
 *
 * @example startsTouching([{ start: 10, end: 20 }], 0, 5) // [{ start: 6, end: 20 }]
 */
export function startsTouching(intervals: readonly Interval[], from: number, to: number): Interval[] {
  return normalize(intervals.map(({ start, end }) => ({ start: start - to + 1, end: end - from })));
}
