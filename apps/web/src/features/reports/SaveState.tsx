import { Button } from "@mantine/core";
import {
  IconAlertTriangle,
  IconCheck,
  IconCloudOff,
  IconCloudUp,
  IconDeviceFloppy,
} from "@tabler/icons-react";
import { saveWord, type SaveWord, type Standing } from "../../offline/save-state";
import type { Draft } from "../../offline/use-draft";
import { useText } from "../../strings/text";
import { ProblemNotice } from "../../ui/ProblemNotice";
import styles from "./SaveState.module.css";

const icons = {
  "not-kept": IconAlertTriangle,
  keeping: IconDeviceFloppy,
  offline: IconCloudOff,
  sending: IconCloudUp,
  "kept-here": IconDeviceFloppy,
  "rest-saved": IconAlertTriangle,
  saved: IconCheck,
} as const satisfies Record<SaveWord, unknown>;

const countOf = (word: SaveWord, { lost, waiting, conflicts, refused, unread }: Standing): number => {
  if (word === "not-kept") return lost;
  return word === "rest-saved" ? conflicts + refused + unread : waiting;
};

/** True word on what has arrived, what waits on this device, and what could not be kept on it. */
export const SaveState = ({ draft }: { readonly draft: Draft }) => {
  const t = useText();
  const { standing, refusal, send } = draft;
  const word = saveWord(standing);
  const Icon = icons[word];
  return (
    <div className={styles.holder}>
      <output className={styles.state} data-word={word}>
        <Icon size={17} stroke={1.9} aria-hidden="true" />{" "}
        {t(`save.${word}`, { count: countOf(word, standing) })}
        {word === "offline" && (
          <Button variant="subtle" size="compact-sm" onClick={send}>
            {t("problem.again")}
          </Button>
        )}
      </output>
      {standing.connection === "refused" && <ProblemNotice error={refusal} />}
    </div>
  );
};
