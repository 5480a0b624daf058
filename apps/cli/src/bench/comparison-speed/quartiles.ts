/**
 * The time a quarter of the runs stay under. Runs take turns, so that a slow stretch of the machine meets all works
 * alike; on a machine others use, the median would measure the others.
 */
export const quartiles = (works: readonly (() => unknown)[], runs: number): number[] => {
  const times = works.map((): number[] => []);
  for (let run = 0; run < runs; run += 1) {
    for (const [index, work] of works.entries()) {
      const start = performance.now();
      work();
      times[index]?.push(performance.now() - start);
    }
  }
  return times.map((list) => list.sort((a, b) => a - b)[Math.floor(list.length / 4)] ?? Number.NaN);
};
