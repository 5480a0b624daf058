import { Button } from "@mantine/core";
import type { CrossCheck } from "@evenhand/shared/cross-check";
import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import { IconEyeOff } from "@tabler/icons-react";
import type { KeptFinding } from "../../offline/store";
import { useText } from "../../strings/text";
import { Notice } from "../../ui/Notice";
import type { Place } from "../sheets/places";
import type { SheetIndex } from "../sheets/sheet-index";
import { AnswerEditor } from "./AnswerEditor";
import { Conflict } from "./Conflict";
import { Grounds } from "./Grounds";
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
  readonly onNext: () => void;
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

/** One line of the sheet, open: the answer, its grounds, and on to the next. Every change is kept on this device at once. */
export const PlaceEditor = ({ report, index, place, kept, checks, last, keep, settle, onNext }: Props) => {
  const t = useText();
  const { edit, step, again } = usePlaceEdit({ report, place, kept, last, keep });
  const { answer, notSeen } = edit;
  return (
    <div className={styles.editor}>
      {kept?.state === "conflict" && (
        <Conflict kept={kept} place={place} report={report} index={index} onSettle={settle} />
      )}
      {kept?.state === "refused" && <Refused kept={kept} />}
      {kept?.state === "lost" && <Lost onAgain={again} />}
      <AnswerEditor
        key={`${notSeen}${edit.anew}`}
        item={place.item}
        index={index}
        scales={report.scales}
        name={place.key}
        answer={answer ?? undefined}
        unread={edit.unread}
        notSeen={notSeen}
        onChange={(next, unread) => step({ type: "answer", answer: next, unread })}
      />
      <OwnChecks checks={checks} />
      {!notSeen && answer !== null && (
        <Grounds
          key={edit.anew}
          index={index}
          item={place.item}
          grounds={edit.grounds}
          unread={edit.conditions}
          instruments={report.instruments}
          onChange={(change) => step({ type: "grounds", change })}
          onUnread={(id, text) => step({ type: "condition", id, text })}
        />
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
        <Button size="md" className={styles.next} onClick={onNext}>
          {t("place.next")}
        </Button>
      </div>
    </div>
  );
};
