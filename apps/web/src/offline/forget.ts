import { call } from "../service/client";
import { Refusal } from "../service/refusal";
import { takePageFor } from "./owner";

/** Loaded only when asked for: most pages need no store. */
const leaving = async () => import("./leaving");

/**
 * Sends what waits on this device.
 *
 * @returns how many answers stand on this device alone even so; `null` where its store does not say, or is another account's
 */
export const sendBeforeLeaving = async (account: string): Promise<number | null> => {
  if (!takePageFor(account)) return null;
  try {
    const { sendEverything } = await leaving();
    return await sendEverything();
  } catch {
    return null;
  }
};

/**
 * Ends the session, and then forgets what this device holds for the account, or keeps it for when they sign in here again.
 * A session that was over already is over all the same.
 *
 * @throws Refusal where the service cannot be reached: the person is signed in still
 */
export const endSession = async (device: "keep" | "forget"): Promise<void> => {
  try {
    await call("sessions.end");
  } catch (error) {
    if (!(error instanceof Refusal) || error.problem.status !== 401) throw error;
  }
  if (device === "keep") return;
  const { forgetEverything } = await leaving();
  await forgetEverything();
};

/** What becomes of answers that stand on this device alone. */
export type Leaving = "stay" | "keep" | "throw-away";

/**
 * Ends what signs the person in here (every session, the account itself): sends what waits on this device first, asks where
 * something is left, and only then ends it and forgets.
 *
 * @param ask given how many answers would be left; `null` where the device does not say
 * @returns whether it was ended; nothing has changed where the person stays
 * @throws whatever refused the end: the person is signed in still, and nothing was forgotten
 */
export const leaveBy = async (
  account: string,
  end: () => Promise<unknown>,
  ask: (left: number | null) => Promise<Leaving>,
): Promise<boolean> => {
  const left = await sendBeforeLeaving(account);
  const device = left === 0 ? "throw-away" : await ask(left);
  if (device === "stay") return false;
  await end();
  // Another account's page: what it holds is not theirs to throw away.
  if (!takePageFor(account)) return true;
  const { forgetArrived, forgetEverything } = await leaving();
  await (device === "keep" ? forgetArrived() : forgetEverything());
  return true;
};
