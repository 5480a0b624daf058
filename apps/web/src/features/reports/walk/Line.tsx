import { Button } from "@mantine/core";
import type { Answer } from "@evenhand/shared/answer";
import type { CrossCheck } from "@evenhand/shared/cross-check";
import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import { memo } from "react";
import { useIntl } from "react-intl";
import type { KeptFinding } from "../../../offline/store";
import { useText } from "../../../strings/text";
import { answerWords } from "../../../entities/sheet/answer-text";
import type { Place } from "../../../entities/sheet/places";
import { capital, type SheetIndex } from "../../../entities/sheet/sheet-index";
import { Cautions } from "../../../entities/sheet/Cautions";
import { PlaceEditor, type Keeping } from "../PlaceEditor";
import { PlaceState } from "../PlaceState";
import { placeAnswer } from "../place-answer";
import type { Said } from "../walk";
import styles from "./Walk.module.css";

/** What was said of another place of the same item, and may be said here again. */
export interface Alike {
  readonly place: Place;
  readonly answer: Answer;
  /** Places of the item still open in this stage, this one left out. */
  readonly others: readonly Place[];
}

interface Props extends Keeping {
  readonly report: Report;
  readonly index: SheetIndex;
  readonly place: Place;
  readonly kept: KeptFinding | undefined;
  readonly checks: readonly CrossCheck[];
  /** What was said of the same item at its other places. */
  readonly said: readonly Finding[];
  readonly open: boolean;
  readonly alike: Alike | undefined;
  /** Cautions the gate of the stage did not show already. */
  readonly cautions: readonly string[];
  readonly onOpen: (key: string | undefined) => void;
  readonly onNext: (key: string, besides?: readonly Place[]) => void;
  readonly onSay: (said: readonly Said[]) => void;
}

const SayAgain = ({
  report,
  index,
  place,
  alike,
  onSay,
  onNext,
}: Pick<Props, "report" | "index" | "place" | "onSay" | "onNext"> & { readonly alike: Alike }) => {
  const t = useText();
  const { answer, others } = alike;
  const said = answerWords({ index, item: place.item, scales: report.scales }, answer).text;
  const say = (places: readonly Place[]): void => {
    onSay(places.map((one) => ({ place: one, answer })));
    onNext(place.key, places);
  };
  return (
    <div className={styles.again}>
      <Button size="md" variant="light" onClick={() => say([place])}>
        {t("walk.same", { place: alike.place.words, answer: said })}
      </Button>
      {others.length > 0 && (
        <Button size="md" variant="default" onClick={() => say([place, ...others])}>
          {t("walk.same.all", { count: others.length + 1, answer: said })}
        </Button>
      )}
    </div>
  );
};

/** One line of the walk: its name and what stands there; open, how it is looked at and its answer. */
export const Line = memo((props: Props) => {
  const { report, index, place, kept, open, alike, cautions, onOpen, onNext } = props;
  const t = useText();
  const intl = useIntl();
  const { item, key, words } = place;
  return (
    <li className={styles.line} data-open={open} id={`place-${key}`}>
      <button
        type="button"
        className={styles.opener}
        aria-expanded={open}
        onClick={() => onOpen(open ? undefined : key)}
      >
        <PlaceState kept={kept} />
        <span className={styles.name}>
          {capital(item.words.american)}
          {words !== "" && <span className={styles.position}>{words}</span>}
        </span>
        <span className={styles.answer} data-open={!kept?.finding}>
          {placeAnswer(intl, { index, item, scales: report.scales }, kept) ?? t("place.open")}
        </span>
      </button>
      {open && (
        <div className={styles.inside}>
          <p className={styles.how}>{item.how}</p>
          <Cautions index={index} ids={cautions} />
          {alike && !kept?.finding && <SayAgain {...props} alike={alike} />}
          <PlaceEditor
            key={`${key}${kept?.state === "conflict" ? "conflict" : ""}`}
            report={report}
            index={index}
            place={place}
            kept={kept}
            checks={props.checks}
            last={props.said.findLast(({ instrument }) => instrument !== undefined)}
            lastRead={props.said.findLast(({ answer }) => answer.kind === "reading")}
            keep={props.keep}
            settle={props.settle}
            onNext={() => onNext(key)}
            walked
          />
        </div>
      )}
    </li>
  );
});
Line.displayName = "Line";
