import { Button } from "@mantine/core";
import { IconCheck, IconCloudOff, IconCloudUp } from "@tabler/icons-react";
import type { useDraft } from "../../offline/use-draft";
import { useText } from "../../strings/text";
import { ProblemNotice } from "../../ui/ProblemNotice";
import styles from "./SaveState.module.css";

export type Draft = ReturnType<typeof useDraft>;

/** True word on what has arrived and what waits on this device. */
export const SaveState = ({ draft }: { readonly draft: Draft }) => {
  const t = useText();
  const { waiting, connection, refusal, send } = draft;
  const offline = connection === "unreachable";
  const Icon = waiting === 0 ? IconCheck : offline ? IconCloudOff : IconCloudUp;
  const words =
    waiting === 0
      ? t("save.all")
      : offline
        ? t("save.offline", { count: waiting })
        : t("save.waiting", { count: waiting });
  return (
    <div className={styles.holder}>
      <output className={styles.state}>
        <Icon size={17} stroke={1.9} aria-hidden="true" /> {words}
        {offline && (
          <Button variant="subtle" size="compact-sm" onClick={() => void send()}>
            {t("problem.again")}
          </Button>
        )}
      </output>
      {connection === "refused" && <ProblemNotice error={refusal} />}
    </div>
  );
};
