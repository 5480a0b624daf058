import { useState } from "react";
import { useQueryClient } from "@tanstack/react-query";
import { becomes } from "../entities/account/queries";
import { endSession, sendBeforeLeaving } from "../offline/forget";
import { useText } from "../strings/text";
import { LeaveAsk } from "../ui/LeaveAsk";
import menu from "./AccountMenu.module.css";

/** `left`: answers that stand on this device alone; `null` where the device does not say. */
type Asking = { readonly left: number | null };

/** Sends what waits on this device, asks where something is left, and only then ends the session. */
export const SignOut = ({ account, onAsk }: { readonly account: string; readonly onAsk: () => void }) => {
  const t = useText();
  const queries = useQueryClient();
  const [asking, setAsking] = useState<Asking | null>(null);
  const [error, setError] = useState<unknown>(null);
  const [busy, setBusy] = useState(false);
  const leave = async (left: number | null, device: "keep" | "forget"): Promise<void> => {
    try {
      await endSession(device);
    } catch (refused) {
      setError(refused);
      setAsking({ left });
      return;
    }
    becomes(queries, null);
    // Loaded anew, so that nothing of this account stays in the page's memory.
    globalThis.location.assign("/sign-in");
  };
  const begin = async (): Promise<void> => {
    setBusy(true);
    setError(null);
    const left = await sendBeforeLeaving(account);
    onAsk();
    if (left === 0) await leave(0, "forget");
    else setAsking({ left });
    setBusy(false);
  };
  return (
    <>
      <button type="button" className={menu.leave} disabled={busy} onClick={() => void begin()}>
        {t(busy ? "sign-out.sending" : "nav.sign-out")}
      </button>
      {asking !== null && (
        <LeaveAsk
          left={asking.left}
          error={error}
          onStay={() => setAsking(null)}
          onLeave={(what) =>
            void leave(asking.left, what === "throw-away" || asking.left === 0 ? "forget" : "keep")
          }
        />
      )}
    </>
  );
};
