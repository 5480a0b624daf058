/** What time is told by, and how what a work leaves behind is cleared up. */
export type Meter = {
  /** Milliseconds. */
  readonly now: () => number;
  /** Clears up what works left behind. */
  readonly clearUp: () => void;
};

/**
 * The processor's time in the thread that works, so that other programs of the machine take no part in it; threads of the engine that
 * help to clear up are not counted, for any work. What was made lately is cleared up, and no more: a whole collection while nobody
 * holds a result makes the engine forget the shape of results, and with it the code compiled for them.
 *
 * @throws {Error} where the engine does not let itself be told when to clear up
 */
export const processorMeter = (): Meter => {
  const { gc } = globalThis;
  if (gc === undefined)
    throw new Error("Start the measurement by `npm run bench`: it needs Node's --expose-gc.");
  return {
    now: () => {
      const { user, system } = process.threadCpuUsage();
      return (user + system) / 1000;
    },
    clearUp: () => gc({ type: "minor" }),
  };
};

/** One block: begun with nothing to clear up, and its own leavings cleared up within its time. */
const timeOfRun = (work: () => unknown, runs: number, { now, clearUp }: Meter): number => {
  clearUp();
  const start = now();
  for (let run = 0; run < runs; run += 1) work();
  clearUp();
  return (now() - start) / runs;
};

/**
 * Times works in blocks that take turns: so many runs of one, then as many of the next. Run by run in turn, each would find its code
 * and data thrown out of the caches by the others, and clear up what they left; so each pays for itself alone, and a slow stretch of
 * the machine still meets all alike.
 *
 * @returns one list a block: milliseconds a run of each work
 * @example timeBlocks([parse, comparison], { blocks: 30, runs: 100 }, processorMeter())[0] // [0.84, 0.61]
 */
export const timeBlocks = (
  works: readonly (() => unknown)[],
  { blocks, runs }: { readonly blocks: number; readonly runs: number },
  meter: Meter,
): number[][] => Array.from({ length: blocks }, () => works.map((work) => timeOfRun(work, runs, meter)));

/** The middle one of some figures; of an even number the upper of the two. */
export const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

/**
 * The middle one of the ratios of single blocks, each to the block beside it.
 *
 * @param blocks times of what is measured against, and of the work
 * @example medianRatio([[1, 2], [1, 9], [2, 6]]) // 3
 */
export const medianRatio = (blocks: readonly (readonly number[])[]): number =>
  median(blocks.map(([against = Number.NaN, work = Number.NaN]) => work / against));
