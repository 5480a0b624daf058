import { Button, Textarea } from "@mantine/core";
import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import { useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { useIntl } from "react-intl";
import { useText } from "../../../strings/text";
import { Notice } from "../../../ui/Notice";
import type { Place } from "../../../entities/sheet/places";
import { positionWords, type SheetIndex } from "../../../entities/sheet/sheet-index";
import type { Draft } from "../SaveState";
import styles from "./Walk.module.css";
import { openLines, type Said } from "../walk";

interface Props {
  readonly report: Report;
  readonly index: SheetIndex;
  readonly lines: readonly Place[];
  readonly findings: Draft["findings"];
  readonly onSay: (said: readonly Said[]) => void;
}

const gateQuery = {
  queryKey: ["road-gate"],
  staleTime: Number.POSITIVE_INFINITY,
  queryFn: async () => {
    const [{ roadGate, roadDoubts }, { compileSheet }] = await Promise.all([
      import("@evenhand/handbook/road-gate"),
      import("@evenhand/sheet/compile-sheet"),
    ]);
    return { roadGate, roadDoubts, compileSheet };
  },
} as const;

const unsafe = { kind: "not-seen", reason: "unsafe" } as const;
/** As long as a finding's note may be. */
const LONGEST = 2000;

interface DoubtProps {
  readonly open: readonly Place[];
  readonly onSay: Props["onSay"];
}

/** The inspector's own doubt, in words: it leaves every open line of the road as unsafe, and stands beside each in the report. */
const OwnDoubt = ({ open, onSay }: DoubtProps) => {
  const t = useText();
  const [words, setWords] = useState("");
  if (open.length === 0) return null;
  const note = words.trim();
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
        onClick={() => onSay(open.map((place) => ({ place, answer: unsafe, note })))}
      >
        {t("walk.road.doubt.do", { count: open.length })}
      </Button>
    </div>
  );
};

/** What keeps the car off the road, found or doubted, and the one press that says so of every line of the road. */
export const RoadClosed = ({ report, index, lines, findings, onSay }: Props) => {
  const t = useText();
  const intl = useIntl();
  const gate = useQuery(gateQuery).data;
  if (gate === undefined) return null;
  const own = [...findings.values()].flatMap(({ finding }): Finding[] => (finding === null ? [] : [finding]));
  const draft = { ...report, findings: own };
  const sheet = gate.compileSheet(index.sheet);
  const blocks = gate.roadGate(draft, sheet);
  const open = openLines(lines, findings);
  if (blocks.length === 0) {
    const doubts = [...new Set(gate.roadDoubts(draft, sheet).map(({ words }) => words))];
    if (doubts.length === 0) return <OwnDoubt open={open} onSay={onSay} />;
    return (
      <Notice kind="caution" title={t("walk.road.doubted")}>
        {doubts.filter(Boolean).map((words) => (
          <p key={words}>{words}</p>
        ))}
        <p>{t("walk.road.doubted.what")}</p>
      </Notice>
    );
  }
  const names = blocks.map(({ item, position }) => {
    const found = index.items.get(item);
    const place = positionWords(index, found, position);
    return [found?.words.american ?? item, place].filter((part) => part !== "").join(", ");
  });
  return (
    <Notice kind="caution" title={t("walk.road.closed")}>
      <p>
        {t("walk.road.closed.by", { found: intl.formatList([...new Set(names)], { type: "conjunction" }) })}
      </p>
      {open.length > 0 && (
        <Button
          size="md"
          className={styles.following}
          onClick={() => onSay(open.map((place) => ({ place, answer: unsafe })))}
        >
          {t("walk.road.unsafe", { count: open.length })}
        </Button>
      )}
    </Notice>
  );
};
