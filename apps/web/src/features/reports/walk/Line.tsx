import type { CrossCheck } from "@evenhand/shared/cross-check";
import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import { memo } from "react";
import { useIntl } from "react-intl";
import type { KeptFinding } from "../../../offline/store";
import { useText } from "../../../strings/text";
import type { Place } from "../../../entities/sheet/places";
import { capital, type SheetIndex } from "../../../entities/sheet/sheet-index";
import { Cautions } from "../../../entities/sheet/Cautions";
import { lastSaid } from "../last-said";
import { PlaceEditor, type Keeping } from "../PlaceEditor";
import { PlaceState } from "../PlaceState";
import { placeAnswer } from "../place-answer";
import type { Said } from "../walk";
import { SayAgain, type Alike } from "./SayAgain";
import styles from "./Walk.module.css";

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

/** A line's name and what stands there; pressed, it opens or closes. */
const Opener = ({ report, index, place, kept, open, onOpen }: Props) => {
  const t = useText();
  const intl = useIntl();
  const { item, key, words } = place;
  return (
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
  );
};

/** How it is looked at, its cautions, and its answer. */
const Inside = (props: Props) => {
  const { report, index, place, kept, checks, said, alike, keep, settle, onNext } = props;
  const { item, key } = place;
  return (
    <div className={styles.inside}>
      <p className={styles.how}>{item.how}</p>
      <Cautions index={index} ids={props.cautions} />
      {alike && !kept?.finding && <SayAgain {...props} alike={alike} />}
      <PlaceEditor
        {...{ report, index, place, kept, checks, keep, settle }}
        {...lastSaid(said)}
        key={`${key}${kept?.state === "conflict" ? "conflict" : ""}`}
        onNext={() => onNext(key)}
        walked
      />
    </div>
  );
};

/** One line of the walk: its name and what stands there; open, how it is looked at and its answer. */
export const Line = memo((props: Props) => (
  <li className={styles.line} data-open={props.open} id={`place-${props.place.key}`}>
    <Opener {...props} />
    {props.open && <Inside {...props} />}
  </li>
));
Line.displayName = "Line";
