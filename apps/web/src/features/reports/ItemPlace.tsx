import type { CrossCheck } from "@evenhand/shared/cross-check";
import type { Report } from "@evenhand/shared/report";
import { useIntl } from "react-intl";
import type { KeptFinding } from "../../offline/store";
import { useText } from "../../strings/text";
import type { Place } from "../../entities/sheet/places";
import type { SheetIndex } from "../../entities/sheet/sheet-index";
import styles from "./ItemCard.module.css";
import { placeAnswer } from "./place-answer";
import { PlaceState } from "./PlaceState";
import { PlaceEditor, type Keeping } from "./PlaceEditor";
import type { LastSaid } from "./last-said";
import { checksAt } from "./use-own-checks";

export interface OfItem extends Keeping {
  readonly report: Report;
  readonly index: SheetIndex;
  readonly findings: ReadonlyMap<string, KeptFinding>;
  /** Rules the report breaks by itself. */
  readonly checks: readonly CrossCheck[];
  readonly open: string | undefined;
  readonly onOpen: (key: string | undefined) => void;
  readonly onNext: (key: string) => void;
}

interface Props extends OfItem {
  readonly place: Place;
  readonly said: LastSaid;
}

/** A place's name and what stands there; pressed, it opens or closes. */
const Opener = ({ report, index, place, findings, open, onOpen }: Props) => {
  const t = useText();
  const intl = useIntl();
  const { key, words, item } = place;
  const kept = findings.get(key);
  const isOpen = open === key;
  return (
    <button
      type="button"
      className={styles.opener}
      aria-expanded={isOpen}
      onClick={() => onOpen(isOpen ? undefined : key)}
    >
      <PlaceState kept={kept} />
      <span className={styles.name}>{words === "" ? t("item.answer") : words}</span>
      <span className={styles.answer} data-open={!kept?.finding}>
        {placeAnswer(intl, { index, item, scales: report.scales }, kept) ?? t("place.open")}
      </span>
    </button>
  );
};

/** One position of an item. */
export const ItemPlace = (props: Props) => {
  const { place, findings, checks, open, said, onNext, ...rest } = props;
  const { key, item, position } = place;
  const kept = findings.get(key);
  return (
    <li className={styles.place} data-open={open === key} id={`place-${key}`}>
      <Opener {...props} />
      {open === key && (
        <PlaceEditor
          {...rest}
          {...said}
          key={`${key}${kept?.state === "conflict" ? "conflict" : ""}`}
          place={place}
          kept={kept}
          checks={checksAt(checks, item.id, position)}
          onNext={() => onNext(key)}
        />
      )}
    </li>
  );
};
