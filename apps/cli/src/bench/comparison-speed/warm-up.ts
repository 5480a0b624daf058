/** Runs of every work a round. */
const ROUND = 200;
const MOST_ROUNDS = 20;
/** A round has to take less than this share of the fastest one before it to count as faster; less is the machine's unrest. */
const FASTER = 0.98;
/** One round that is not faster can be a busy moment of the machine. */
const ROUNDS_WITHOUT_GAIN = 2;

/**
 * Runs works in turn until the engine has nothing left to compile: until two rounds in a row made none of them faster, and for 4,000
 * runs at most. All works run equally often, so that none is favored.
 *
 * @param measure runs every work so many times and gives the time of each
 * @returns how many times each work ran
 * @example warmUp((runs) => quartiles(works, runs)) // 1400
 */
export const warmUp = (measure: (runs: number) => readonly number[]): number => {
  let fastest: readonly number[] = [];
  let withoutGain = 0;
  let rounds = 0;
  while (rounds < MOST_ROUNDS && withoutGain < ROUNDS_WITHOUT_GAIN) {
    const times = measure(ROUND);
    rounds += 1;
    const isFaster = times.some((time, index) => time < FASTER * (fastest[index] ?? Infinity));
    withoutGain = isFaster ? 0 : withoutGain + 1;
    fastest = times.map((time, index) => Math.min(time, fastest[index] ?? Infinity));
  }
  return rounds * ROUND;
};
