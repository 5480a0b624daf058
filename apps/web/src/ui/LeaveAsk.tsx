import { Button } from "@mantine/core";
import { useEffect, useRef } from "react";
import { createPortal } from "react-dom";
import { useText } from "../strings/text";
import { ProblemNotice } from "./ProblemNotice";
import styles from "./LeaveAsk.module.css";

interface Props {
  /** Answers that stand on this device alone; `null` where the device does not say. */
  readonly left: number | null;
  readonly error: unknown;
  /** There is no account to open them to again: they are sent, or they are gone. */
  readonly forGood?: boolean;
  readonly onStay: () => void;
  readonly onLeave: (what: "keep" | "throw-away") => void;
}

/** Asked before leaving where something typed here would be left. */
export const LeaveAsk = ({ left, error, forGood = false, onStay, onLeave }: Props) => {
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
      {left !== 0 && <p>{t(forGood ? "sign-out.left.for-good" : "sign-out.left.what")}</p>}
      {error !== null && <ProblemNotice error={error} />}
      <div className={styles.deeds}>
        <Button onClick={onStay}>{t("sign-out.stay")}</Button>
        {!forGood && (
          <Button variant="default" onClick={() => onLeave("keep")}>
            {t(left === 0 ? "sign-out.again" : "sign-out.keep")}
          </Button>
        )}
        {left !== 0 && (
          <Button variant="subtle" color="red" onClick={() => onLeave("throw-away")}>
            {t(forGood ? "sign-out.throw-away.for-good" : "sign-out.throw-away")}
          </Button>
        )}
      </div>
    </dialog>,
    document.body,
  );
};
