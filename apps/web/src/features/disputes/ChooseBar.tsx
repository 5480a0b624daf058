import { Button } from "@mantine/core";
import { Link } from "@tanstack/react-router";
import { useText } from "../../strings/text";
import { Answered } from "../../ui/Answered";
import { Notice } from "../../ui/Notice";
import { ProblemNotice } from "../../ui/ProblemNotice";
import styles from "./Disputes.module.css";
import type { useChoosing } from "./use-choosing";

type Chosen = ReturnType<typeof useChoosing>;

/** They were laid before the dealer, and where they are found. */
const LaidBefore = ({ count }: { readonly count: number }) => {
  const t = useText();
  return (
    <Answered title={t("release.done", { count })}>
      <p>{t("release.done.what")}</p>
      <p>
        <Link to="/released">{t("nav.released")}</Link>
      </p>
    </Answered>
  );
};

const Bar = ({ count, send, stop }: Pick<Chosen, "count" | "send" | "stop">) => {
  const t = useText();
  return (
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
  );
};

/** Stays in sight while items are chosen for the dealer. */
export const ChooseBar = ({ choosing }: { readonly choosing: Chosen }) => {
  const t = useText();
  const { active, count, done, send, stop } = choosing;
  if (!active) return <LaidBefore count={done} />;
  return (
    <>
      <Notice kind="note">
        <p>{t("release.intro")}</p>
      </Notice>
      <Bar count={count} send={send} stop={stop} />
    </>
  );
};
