/**
 * Probability of so many successes or more among independent trials, each with a chance of its own (Poisson–binomial), by adding one
 * trial after the other (Barlow & Heidtmann 1984).
 *
 * @param chances of each trial, from 0 to 1
 * @param successes from which on; the tail is 1 at 0
 * @throws {RangeError} when a chance lies outside 0 to 1
 * @example poissonBinomialTail([0.5, 0.1], 1) // 0.55
 */
export const poissonBinomialTail = (chances: readonly number[], successes: number): number => {
  // What is at `successes` is "so many or more".
  const most = Math.max(0, Math.ceil(successes));
  const exactly = new Float64Array(most + 1);
  exactly[0] = 1;
  for (const chance of chances) {
    if (!(chance >= 0 && chance <= 1)) throw new RangeError(`A chance must lie between 0 and 1: ${chance}`);
    for (let count = most; count > 0; count -= 1) {
      const stays = count === most ? 1 : 1 - chance;
      exactly[count] = (exactly[count] ?? 0) * stays + (exactly[count - 1] ?? 0) * chance;
    }
    if (most > 0) exactly[0] = (exactly[0] ?? 0) * (1 - chance);
  }
  return Math.min(1, exactly[most] ?? 0);
};
