import { useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { signedOut } from "../entities/account/signed-out";
import { endSession, sendBeforeLeaving } from "../offline/forget";

/** `left`: answers that stand on this device alone; `null` where the device does not say. `error`: why it was not done. */
type Asking = { readonly left: number | null; readonly error: unknown };

/** Sends what waits on this device, asks where something is left, and only then ends the session. */
export const useSignOut = (account: string, onAsk: () => void) => {
  const queries = useQueryClient();
  const [asking, setAsking] = useState<Asking | null>(null);
  const [busy, setBusy] = useState(false);
  const leave = async (left: number | null, device: "keep" | "forget"): Promise<void> => {
    try {
      await endSession(device);
    } catch (error) {
      setAsking({ left, error });
      return;
    }
    signedOut(queries);
  };
  const begin = async (): Promise<void> => {
    setBusy(true);
    const left = await sendBeforeLeaving(account);
    onAsk();
    if (left === 0) await leave(0, "forget");
    else setAsking({ left, error: null });
    setBusy(false);
  };
  return { asking, busy, begin, leave, stay: () => setAsking(null) };
};
