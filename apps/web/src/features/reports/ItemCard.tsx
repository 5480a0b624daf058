import type { CrossCheck } from "@evenhand/shared/cross-check";
import type { Report } from "@evenhand/shared/report";
import { memo } from "react";
import { useIntl } from "react-intl";
import type { KeptFinding } from "../../offline/store";
import { useText } from "../../strings/text";
import { Tag } from "../../ui/Page";
import type { Place } from "../../entities/sheet/places";
import type { SheetIndex } from "../../entities/sheet/sheet-index";
import { Cautions } from "../../entities/sheet/Cautions";
import styles from "./ItemCard.module.css";
import { placeAnswer } from "./place-answer";
import { PlaceState } from "./PlaceState";
import { PlaceEditor, type Keeping } from "./PlaceEditor";
import { checksAt } from "./use-own-checks";

export interface ItemGroup {
  readonly item: Place["item"];
  readonly places: readonly Place[];
}

interface Props extends Keeping {
  readonly report: Report;
  readonly index: SheetIndex;
  readonly group: ItemGroup;
  readonly findings: ReadonlyMap<string, KeptFinding>;
  /** Rules the report breaks by itself. */
  readonly checks: readonly CrossCheck[];
  readonly open: string | undefined;
  readonly onOpen: (key: string | undefined) => void;
  readonly onNext: (key: string) => void;
}

/** One item of the sheet with all its positions. Its cautions stand before them. */
export const ItemCard = memo(
  ({ report, index, group, findings, checks, open, onOpen, onNext, keep, settle }: Props) => {
    const t = useText();
    const intl = useIntl();
    const { item, places } = group;
    const said = places.map(({ key }) => findings.get(key)?.finding).filter((finding) => !!finding);
    const last = said.findLast((finding) => finding.instrument !== undefined);
    const lastRead = said.findLast(({ answer }) => answer.kind === "reading");
    return (
      <section className={styles.card} id={`item-${item.id}`}>
        <header className={styles.head}>
          <h3>{item.words.american}</h3>
          <p className={styles.tags}>
            <Tag>{t(`consequence.${item.consequence}`)}</Tag>
            {item.core && <Tag>{t("item.core")}</Tag>}
            {item.needs.map((need) => (
              <Tag key={need}>{t(`need.${need}`)}</Tag>
            ))}
          </p>
          <p className={styles.how}>{item.how}</p>
        </header>
        <Cautions index={index} ids={item.cautions} />
        <ul className={styles.places}>
          {places.map((place) => {
            const kept = findings.get(place.key);
            const isOpen = open === place.key;
            return (
              <li key={place.key} className={styles.place} data-open={isOpen} id={`place-${place.key}`}>
                <button
                  type="button"
                  className={styles.opener}
                  aria-expanded={isOpen}
                  onClick={() => onOpen(isOpen ? undefined : place.key)}
                >
                  <PlaceState kept={kept} />
                  <span className={styles.name}>{place.words === "" ? t("item.answer") : place.words}</span>
                  <span className={styles.answer} data-open={!kept?.finding}>
                    {placeAnswer(intl, { index, item, scales: report.scales }, kept) ?? t("place.open")}
                  </span>
                </button>
                {isOpen && (
                  <PlaceEditor
                    key={`${place.key}${kept?.state === "conflict" ? "conflict" : ""}`}
                    report={report}
                    index={index}
                    place={place}
                    kept={kept}
                    checks={checksAt(checks, item.id, place.position)}
                    last={last}
                    lastRead={lastRead}
                    keep={keep}
                    settle={settle}
                    onNext={() => onNext(place.key)}
                  />
                )}
              </li>
            );
          })}
        </ul>
      </section>
    );
  },
);
ItemCard.displayName = "ItemCard";
