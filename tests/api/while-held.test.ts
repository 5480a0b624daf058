import { expect, test } from "vitest";
import { ClaimLost, whileHeld } from "../../apps/api/src/platform/mail/while-held.ts";

const never = (signal: AbortSignal): Promise<never> =>
  new Promise((_resolve, reject) => {
    signal.addEventListener("abort", () => reject(signal.reason));
  });
const times = { lasts: 40, renewEvery: 10 };
const quiet = () => {};
const away = async (): Promise<boolean> => {
  throw new Error("the database is away");
};

test("what is another's by now is not worked on any further", async () => {
  let renewals = 0;
  const renew = async () => (renewals += 1) < 3;
  const working = whileHeld({ ...times, lasts: 60_000, renew, onTrouble: quiet }, never);
  await expect(working).rejects.toThrow(ClaimLost);
  expect(renewals).toBe(3);
});

test("renewals that fail are told each time, and the work stops when the claim may be another's", async () => {
  const troubles: unknown[] = [];
  const onTrouble = (error: unknown) => troubles.push(error);
  await expect(whileHeld({ ...times, renew: away, onTrouble }, never)).rejects.toThrow(/run out/);
  expect(troubles.length).toBeGreaterThan(0);
});

test("a renewal that fails once and then holds lets the work come to its end", async () => {
  const troubles: unknown[] = [];
  let renewals = 0;
  const enough = Promise.withResolvers<string>();
  const renew = async () => {
    renewals += 1;
    if (renewals === 1) throw new Error("the database is away");
    if (renewals === 4) enough.resolve("done");
    return true;
  };
  const held = { lasts: 60_000, renewEvery: 10, renew, onTrouble: (error: unknown) => troubles.push(error) };
  expect(await whileHeld(held, () => enough.promise)).toBe("done");
  expect(troubles).toHaveLength(1);
});

test("when the work is over nothing is renewed any more", async () => {
  let renewals = 0;
  const renew = async () => (renewals += 1) > 0;
  await whileHeld({ ...times, renew, onTrouble: quiet }, async () => {});
  await new Promise((resolve) => void setTimeout(resolve, 30));
  expect(renewals).toBe(0);
});
