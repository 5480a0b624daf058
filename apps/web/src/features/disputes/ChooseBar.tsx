import { Button } from "@mantine/core";
import { Link } from "@tanstack/react-router";
import { useText } from "../../strings/text";
import { Answered } from "../../ui/Answered";
import { Notice } from "../../ui/Notice";
import { ProblemNotice } from "../../ui/ProblemNotice";
import styles from "./Disputes.module.css";
import type { useChoosing } from "./use-choosing";

/** Stays in sight while items are chosen for the dealer. */
export const ChooseBar = ({ choosing }: { readonly choosing: ReturnType<typeof useChoosing> }) => {
  const t = useText();
  const { active, count, done, send, stop } = choosing;
  if (!active) {
    return (
      <Answered title={t("release.done", { count: done })}>
        <p>{t("release.done.what")}</p>
        <p>
          <Link to="/released">{t("nav.released")}</Link>
        </p>
      </Answered>
    );
  }
  return (
    <>
      <Notice kind="note">
        <p>{t("release.intro")}</p>
      </Notice>
      <div className={`${styles.bar} no-print`}>
        {send.error !== null && <ProblemNotice error={send.error} />}
        <div className={styles.barEnd}>
          <output>{t("release.count", { count })}</output>
          <Button variant="default" onClick={stop}>
            {t("release.cancel")}
          </Button>
          <Button disabled={count === 0} loading={send.isPending} onClick={() => send.mutate()}>
            {t("release.send")}
          </Button>
        </div>
      </div>
    </>
  );
};
