/**
 * Waits until it holds.
 *
 * @throws Error after a minute, which no test counts on: it only ends one that would never end
 */
export async function until(holds: () => boolean | Promise<boolean>): Promise<void> {
  const end = Date.now() + 60_000;
  while (!(await holds())) {
    if (Date.now() > end) throw new Error("It did not happen within a minute.");
    await new Promise((resolve) => void setTimeout(resolve, 50));
  }
}
