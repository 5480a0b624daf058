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

/** What is left here, as far as the device says. */
const useLeftWords = (left: number | null): string => {
  const t = useText();
  if (left === null) return t("sign-out.unknown");
  return left === 0 ? t("sign-out.not-done") : t("sign-out.left", { count: left });
};

/** What may be done with it: to stay comes first. */
const Ways = ({ left, forGood = false, onStay, onLeave }: Omit<Props, "error">) => {
  const t = useText();
  return (
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
  );
};

/** Asked before leaving where something typed here would be left. */
export const LeaveAsk = ({ error, ...ways }: Props) => {
  const t = useText();
  const { left, forGood = false, onStay } = ways;
  const title = useLeftWords(left);
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    if (dialog.current?.open === false) dialog.current.showModal();
  }, []);
  // Beside the menu and not in it: what stands in a closed popover is not drawn.
  return createPortal(
    <dialog ref={dialog} className={styles.dialog} aria-labelledby="sign-out-title" onClose={onStay}>
      <h2 id="sign-out-title" className={styles.title}>
        {title}
      </h2>
      {left !== 0 && <p>{t(forGood ? "sign-out.left.for-good" : "sign-out.left.what")}</p>}
      {error !== null && <ProblemNotice error={error} />}
      <Ways {...ways} />
    </dialog>,
    document.body,
  );
};
