export type Holding = {
  /** Renews what is held. `false` where it is another's by now. */
  readonly renew: () => Promise<boolean>;
  /** Milliseconds that a claim, or its renewal, holds. */
  readonly lasts: number;
  readonly renewEvery: number;
  /** Told of each renewal that failed. */
  readonly onTrouble: (error: unknown) => void;
};

/** What was worked on may be another's by now. */
export class ClaimLost extends Error {
  override readonly name = "ClaimLost";
}

/**
 * Works while a claim is renewed. The work is told to stop as soon as the claim is another's, or when it could not be renewed for as
 * long as it holds: from then on another may have it. The claim begins with the call.
 *
 * @returns what the work gives
 * @throws what the work throws; `ClaimLost` is the reason of its signal
 *
 * @example await whileHeld({ renew, lasts: 30_000, renewEvery: 8_000, onTrouble }, (signal) => send(letter, signal))
 */
export async function whileHeld<T>(
  { renew, lasts, renewEvery, onTrouble }: Holding,
  work: (signal: AbortSignal) => Promise<T>,
): Promise<T> {
  const lost = new AbortController();
  const giveUp = (why: string) => lost.abort(new ClaimLost(why));
  const runOut = () => giveUp("The claim could not be renewed and has run out.");
  let end = setTimeout(runOut, lasts);
  const renewOnce = async (): Promise<void> => {
    const asked = performance.now();
    try {
      if (!(await renew())) return giveUp("Another has the claim.");
      clearTimeout(end);
      if (!lost.signal.aborted) end = setTimeout(runOut, lasts - (performance.now() - asked));
    } catch (error) {
      onTrouble(error);
    }
  };
  const renewing = setInterval(() => void renewOnce(), renewEvery);
  try {
    return await work(lost.signal);
  } finally {
    clearInterval(renewing);
    clearTimeout(end);
    // A renewal still on its way must set no new end.
    lost.abort();
  }
}
