import { Button, Textarea } from "@mantine/core";
import { useState } from "react";
import { useText } from "../../../strings/text";
import type { Place } from "../../../entities/sheet/places";
import type { Said } from "../walk";
import styles from "./Walk.module.css";

/** As long as a finding's note may be. */
const LONGEST = 2000;

interface Props {
  readonly open: readonly Place[];
  readonly onSay: (said: readonly Said[]) => void;
}

/** The inspector's own doubt, in words: it leaves every open line of the road as unsafe, and stands beside each in the report. */
export const OwnDoubt = ({ open, onSay }: Props) => {
  const t = useText();
  const [words, setWords] = useState("");
  if (open.length === 0) return null;
  const note = words.trim();
  const answer = { kind: "not-seen", reason: "unsafe" } as const;
  return (
    <div className={styles.doubt}>
      <Textarea
        size="md"
        autosize
        minRows={2}
        maxLength={LONGEST}
        label={t("walk.road.doubt")}
        description={t("walk.road.doubt.hint")}
        value={words}
        onChange={(event) => setWords(event.currentTarget.value)}
      />
      <Button
        size="md"
        variant="default"
        disabled={note === ""}
        onClick={() => onSay(open.map((place) => ({ place, answer, note })))}
      >
        {t("walk.road.doubt.do", { count: open.length })}
      </Button>
    </div>
  );
};
