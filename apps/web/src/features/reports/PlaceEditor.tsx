import { Button } from "@mantine/core";
import type { Answer } from "@evenhand/shared/answer";
import type { CrossCheck } from "@evenhand/shared/cross-check";
import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import { callOf } from "@evenhand/sheet/call";
import { IconEyeOff } from "@tabler/icons-react";
import type { KeptFinding } from "../../offline/store";
import { useText } from "../../strings/text";
import { Notice } from "../../ui/Notice";
import type { Place } from "../../entities/sheet/places";
import type { SheetIndex } from "../../entities/sheet/sheet-index";
import { useEnterKey } from "../../entities/answer/use-enter-key";
import { AnswerEditor } from "../../entities/answer/AnswerEditor";
import { Conflict } from "./Conflict";
import { Grounds } from "./Grounds";
import { usualUnit } from "./fitting-instrument";
import { OwnChecks } from "./OwnChecks";
import styles from "./PlaceEditor.module.css";
import type { Draft } from "./SaveState";
import { usePlaceEdit } from "./use-place-edit";

/** How a place is kept on this device. */
export type Keeping = Pick<Draft, "keep" | "settle">;

interface Props extends Keeping {
  readonly report: Report;
  readonly index: SheetIndex;
  readonly place: Place;
  readonly kept: KeptFinding | undefined;
  readonly checks: readonly CrossCheck[];
  /** What was used last for this kind of reading: instrument, conditions. */
  readonly last: Pick<Finding, "instrument" | "conditions"> | undefined;
  /** The last reading of this item at another place. */
  readonly lastRead: Pick<Finding, "answer"> | undefined;
  readonly onNext: () => void;
  /** Walked line by line: an answer that is whole and not bad leads on, and the grounds fold away. */
  readonly walked?: boolean;
}

const Lost = ({ onAgain }: { readonly onAgain: () => void }) => {
  const t = useText();
  return (
    <Notice kind="refusal" title={t("place.lost")}>
      <p>{t("place.lost.what")}</p>
      <div>
        <Button onClick={onAgain}>{t("place.lost.again")}</Button>
      </div>
    </Notice>
  );
};

const Refused = ({ kept }: { readonly kept: KeptFinding }) => {
  const t = useText();
  return (
    <Notice kind="refusal" title={t("place.refused")}>
      <ul>
        {(kept.problems ?? []).map(({ at, reason }) => (
          <li key={`${at}${reason}`}>{reason}</li>
        ))}
      </ul>
    </Notice>
  );
};

/** Where one thing is bad one stays: it wants words and a picture. */
const isBad = (answer: Answer, { item, position }: Place, report: Report, index: SheetIndex): boolean => {
  const { scales, vehicle } = report;
  const call = callOf(answer, item, { position, scales, form: vehicle.form, faultKinds: index.faultKinds });
  return call !== "good" && call !== "no-yardstick";
};

/** One line of the sheet, open: the answer, its grounds, and on to the next. Every change is kept on this device at once. */
export const PlaceEditor = (props: Props) => {
  const { report, index, place, kept, checks, last, keep, settle, onNext, walked = false } = props;
  const t = useText();
  const { edit, step, again } = usePlaceEdit({ report, place, kept, last, keep });
  const { answer, notSeen } = edit;
  const { item } = place;
  const fields = useEnterKey(onNext);
  const gauge = report.instruments.find(({ id }) => id === edit.grounds.instrument);
  const notFitted = answer?.kind === "not-fitted";
  const pick = (picked: Answer): void => {
    step({ type: "answer", answer: picked });
    if (!isBad(picked, place, report, index)) onNext();
  };
  const grounds = !notSeen && !notFitted && answer !== null && (
    <Grounds
      key={edit.anew}
      index={index}
      item={item}
      grounds={edit.grounds}
      unread={edit.conditions}
      instruments={report.instruments}
      onChange={(change) => step({ type: "grounds", change })}
      onUnread={(id, text) => step({ type: "condition", id, text })}
    />
  );
  return (
    <div className={styles.editor}>
      {kept?.state === "conflict" && (
        <Conflict kept={kept} place={place} report={report} index={index} onSettle={settle} />
      )}
      {kept?.state === "refused" && <Refused kept={kept} />}
      {kept?.state === "lost" && <Lost onAgain={again} />}
      <div ref={fields}>
        <AnswerEditor
          key={`${notSeen}${edit.anew}`}
          item={item}
          index={index}
          scales={report.scales}
          name={place.key}
          answer={answer ?? undefined}
          unread={edit.unread}
          unit={usualUnit(item, gauge, props.lastRead)}
          notSeen={notSeen}
          onChange={(next, unread) => step({ type: "answer", answer: next, unread })}
          onPick={walked ? pick : undefined}
        />
      </div>
      {walked && item.answer === "reading" && !notSeen && (
        <p className={styles.gauge}>
          {gauge ? t("place.read-with", { instrument: gauge.name }) : t("place.read-by-eye")}
        </p>
      )}
      <OwnChecks checks={checks} />
      {walked && grounds ? (
        <details className={styles.grounds}>
          <summary>{t("place.grounds")}</summary>
          {grounds}
        </details>
      ) : (
        grounds
      )}
      {edit.before !== null && (
        <output className={styles.undo}>
          {t("place.undo.what")}
          <Button variant="default" size="compact-md" onClick={() => step({ type: "undo" })}>
            {t("place.undo")}
          </Button>
        </output>
      )}
      <div className={styles.buttons}>
        {item.equipment === true && (
          <Button
            variant={notFitted ? "filled" : "default"}
            size="md"
            aria-pressed={notFitted}
            onClick={() => {
              step(notFitted ? { type: "clear" } : { type: "answer", answer: { kind: "not-fitted" } });
              if (walked && !notFitted) onNext();
            }}
          >
            {t("place.not-fitted")}
          </Button>
        )}
        <Button
          variant={notSeen ? "filled" : "default"}
          size="md"
          leftSection={<IconEyeOff size={18} aria-hidden="true" />}
          aria-pressed={notSeen}
          onClick={() => step({ type: "not-seen" })}
        >
          {t("place.not-seen")}
        </Button>
        {(answer !== null || edit.unread !== undefined) && (
          <Button variant="subtle" size="md" onClick={() => step({ type: "clear" })}>
            {t("place.clear")}
          </Button>
        )}
        <Button
          variant={walked && answer === null ? "default" : "filled"}
          size="md"
          className={walked && answer === null ? undefined : styles.next}
          onClick={onNext}
        >
          {t(walked && answer === null ? "place.later" : "place.next")}
        </Button>
      </div>
    </div>
  );
};
