/** An hour that a buyer holds and has not booked yet. `until`: when it runs out, epoch milliseconds. */
export type OpenHold = { readonly id: string; readonly cars: readonly string[]; readonly until: number };

/** Which hold stands in the way, and why. */
export type HoldRefusal = { readonly code: "car-held-already" | "too-many-held"; readonly hold: OpenHold };

/** Hours that one buyer may hold at once, unless the service is told otherwise. Common practice, no source. */
export const HOLDS_OF_A_BUYER = 2;

/**
 * May a buyer who holds these hours hold another one? One for each car, and so many in all: whoever held more would keep others out
 * of hours they will not come to.
 *
 * @param open what the buyer holds and has not run out
 * @param cars what the next hour is wanted for
 * @returns `null` where it may be held; of several that stand in the way, the one that runs out first
 * @example findHoldRefusal([{ id: "a", cars: ["x"], until: 9 }], ["x", "y"], 2)?.code // "car-held-already"
 * @example findHoldRefusal([{ id: "a", cars: ["x"], until: 9 }], ["y"], 2) // null
 */
export function findHoldRefusal(
  open: readonly OpenHold[],
  cars: readonly string[],
  most: number,
): HoldRefusal | null {
  const byEnd = open.toSorted((a, b) => a.until - b.until);
  const sameCar = byEnd.find((hold) => hold.cars.some((car) => cars.includes(car)));
  if (sameCar !== undefined) return { code: "car-held-already", hold: sameCar };
  const [first] = byEnd;
  return first !== undefined && open.length >= most ? { code: "too-many-held", hold: first } : null;
}
