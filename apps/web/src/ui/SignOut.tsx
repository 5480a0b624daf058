import { Button } from "@mantine/core";
import { useEffect, useRef, useState } from "react";
import { createPortal } from "react-dom";
import { useQueryClient } from "@tanstack/react-query";
import { becomes } from "../features/accounts/queries";
import { endSession, sendBeforeLeaving } from "../offline/forget";
import { useText } from "../strings/text";
import { ProblemNotice } from "./ProblemNotice";
import menu from "./AccountMenu.module.css";
import styles from "./SignOut.module.css";

/** `left`: answers that stand on this device alone; `null` where the device does not say. */
type Asking = { readonly left: number | null };

interface AskProps {
  readonly left: number | null;
  readonly error: unknown;
  readonly onStay: () => void;
  readonly onLeave: (what: "keep" | "throw-away") => void;
}

const Ask = ({ left, error, onStay, onLeave }: AskProps) => {
  const t = useText();
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    if (dialog.current?.open === false) dialog.current.showModal();
  }, []);
  // Beside the menu and not in it: what stands in a closed popover is not drawn.
  return createPortal(
    <dialog ref={dialog} className={styles.dialog} aria-labelledby="sign-out-title" onClose={onStay}>
      <h2 id="sign-out-title" className={styles.title}>
        {left === null
          ? t("sign-out.unknown")
          : left === 0
            ? t("sign-out.not-done")
            : t("sign-out.left", { count: left })}
      </h2>
      {left !== 0 && <p>{t("sign-out.left.what")}</p>}
      {error !== null && <ProblemNotice error={error} />}
      <div className={styles.deeds}>
        <Button onClick={onStay}>{t("sign-out.stay")}</Button>
        <Button variant="default" onClick={() => onLeave("keep")}>
          {t(left === 0 ? "sign-out.again" : "sign-out.keep")}
        </Button>
        {left !== 0 && (
          <Button variant="subtle" color="red" onClick={() => onLeave("throw-away")}>
            {t("sign-out.throw-away")}
          </Button>
        )}
      </div>
    </dialog>,
    document.body,
  );
};

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
        <Ask
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
