import { Button } from "@mantine/core";
import type { Answer } from "@evenhand/shared/answer";
import type { CrossCheck } from "@evenhand/shared/cross-check";
import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import { IconEyeOff } from "@tabler/icons-react";
import { useState } from "react";
import { changeFinding } from "../../offline/changes";
import type { KeptFinding } from "../../offline/store";
import { useText } from "../../strings/text";
import { Notice } from "../../ui/Notice";
import type { Place } from "../sheets/places";
import type { SheetIndex } from "../sheets/sheet-index";
import { AnswerEditor } from "./AnswerEditor";
import { Conflict } from "./Conflict";
import { Grounds, type GroundsOf } from "./Grounds";
import { OwnChecks } from "./OwnChecks";
import styles from "./PlaceEditor.module.css";

interface Props {
  readonly reportId: string;
  readonly report: Report;
  readonly index: SheetIndex;
  readonly place: Place;
  readonly kept: KeptFinding | undefined;
  readonly checks: readonly CrossCheck[];
  /** What was used last for this kind of reading: instrument, conditions. */
  readonly last: Pick<Finding, "instrument" | "conditions"> | undefined;
  readonly onNext: () => void;
}

const firstGrounds = (finding: Finding | null | undefined, last: Props["last"]): GroundsOf => {
  if (finding) return finding;
  const instrument = last?.instrument;
  return {
    firmness: "asserted",
    basis: instrument === undefined ? "seen" : "measured",
    instrument,
    conditions: last?.conditions,
  };
};

const clean = (conditions: Finding["conditions"]): Finding["conditions"] =>
  conditions !== undefined && Object.keys(conditions).length > 0 ? conditions : undefined;

/** One line of the sheet, open: the answer, its grounds, and on to the next. Every change is kept on this device at once. */
export const PlaceEditor = ({ reportId, report, index, place, kept, checks, last, onNext }: Props) => {
  const t = useText();
  const finding = kept?.finding;
  const [answer, setAnswer] = useState<Answer | null>(finding?.answer ?? null);
  const [grounds, setGrounds] = useState<GroundsOf>(() => firstGrounds(finding, last));
  const [notSeen, setNotSeen] = useState(finding?.answer.kind === "not-seen");
  const keep = (nextAnswer: Answer | null, nextGrounds: GroundsOf): void => {
    setAnswer(nextAnswer);
    setGrounds(nextGrounds);
    const made: Finding | null = nextAnswer && {
      item: place.item.id,
      position: place.position,
      ...nextGrounds,
      conditions: clean(nextGrounds.conditions),
      instrument:
        nextAnswer.kind === "reading" || nextAnswer.kind === "color" ? nextGrounds.instrument : undefined,
      answer: nextAnswer,
      time: new Date().toISOString(),
    };
    void changeFinding(reportId, place.key, made);
  };
  return (
    <div className={styles.editor}>
      {kept?.state === "conflict" && <Conflict kept={kept} place={place} report={report} index={index} />}
      {kept?.state === "refused" && (
        <Notice kind="refusal" title={t("place.refused")}>
          <ul>
            {(kept.problems ?? []).map(({ at, reason }) => (
              <li key={`${at}${reason}`}>{reason}</li>
            ))}
          </ul>
        </Notice>
      )}
      <AnswerEditor
        key={String(notSeen)}
        item={place.item}
        index={index}
        scales={report.scales}
        name={place.key}
        answer={answer ?? undefined}
        notSeen={notSeen}
        onChange={(next) => keep(next, grounds)}
      />
      <OwnChecks checks={checks} />
      {!notSeen && answer !== null && (
        <Grounds
          index={index}
          item={place.item}
          grounds={grounds}
          instruments={report.instruments}
          onChange={(change) => keep(answer, { ...grounds, ...change })}
        />
      )}
      <div className={styles.buttons}>
        <Button
          variant={notSeen ? "filled" : "default"}
          size="md"
          leftSection={<IconEyeOff size={18} aria-hidden="true" />}
          aria-pressed={notSeen}
          onClick={() => {
            setNotSeen(!notSeen);
            setAnswer(null);
          }}
        >
          {t("place.not-seen")}
        </Button>
        {answer !== null && (
          <Button
            variant="subtle"
            size="md"
            onClick={() => {
              setNotSeen(false);
              keep(null, grounds);
            }}
          >
            {t("place.clear")}
          </Button>
        )}
        <Button size="md" className={styles.next} onClick={onNext}>
          {t("place.next")}
        </Button>
      </div>
    </div>
  );
};
