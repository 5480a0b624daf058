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
  const { store } = await import("./store");
  await store.delete();
};

/**
 * After a session was ended in another way than by signing out, with nothing sent first: what the service has is forgotten, and
 * what it does not have stays, to open again to this account alone.
 */
export const forgetDevice = async (): Promise<void> => {
  const { forgetArrived } = await leaving();
  await forgetArrived();
};
