import type { CrossCheck } from "@evenhand/shared/cross-check";
import type { Report } from "@evenhand/shared/report";
import { IconAlertCircle, IconCheck, IconCircleDashed, IconCloudUp } from "@tabler/icons-react";
import { memo } from "react";
import { useIntl } from "react-intl";
import type { KeptFinding } from "../../offline/store";
import { useText } from "../../strings/text";
import { Notice } from "../../ui/Notice";
import { Tag } from "../../ui/Page";
import { answerWords } from "../sheets/answer-text";
import type { Place } from "../sheets/places";
import type { SheetIndex } from "../sheets/sheet-index";
import styles from "./ItemCard.module.css";
import { PlaceEditor } from "./PlaceEditor";
import { checksAt } from "./use-own-checks";

export interface ItemGroup {
  readonly item: Place["item"];
  readonly places: readonly Place[];
}

interface Props {
  readonly reportId: string;
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

const icons = {
  saved: IconCheck,
  waiting: IconCloudUp,
  conflict: IconAlertCircle,
  refused: IconAlertCircle,
} as const;

const PlaceState = ({ kept }: { readonly kept: KeptFinding | undefined }) => {
  const t = useText();
  const answered = kept !== undefined && kept.finding !== null;
  const Icon = answered ? icons[kept.state] : IconCircleDashed;
  return (
    <span className={styles.state} data-state={answered ? kept.state : "open"}>
      <Icon size={18} stroke={1.9} aria-hidden="true" />
      <span className="only-read">{t(answered ? `place.state.${kept.state}` : "place.state.open")}</span>
    </span>
  );
};

const Cautions = ({ index, item }: Pick<Props, "index"> & Pick<ItemGroup, "item">) => {
  const t = useText();
  const texts = item.cautions.map((id) => index.cautions.get(id)?.text).filter((text) => text !== undefined);
  if (texts.length === 0) return null;
  return (
    <Notice kind="caution" title={t("caution.before")}>
      {texts.length === 1 ? (
        <p>{texts[0]}</p>
      ) : (
        <ul>
          {texts.map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      )}
    </Notice>
  );
};

/** One item of the sheet with all its positions. Its cautions stand before them. */
export const ItemCard = memo(
  ({ reportId, report, index, group, findings, checks, open, onOpen, onNext }: Props) => {
    const t = useText();
    const intl = useIntl();
    const { item, places } = group;
    const last =
      places
        .map(({ key }) => findings.get(key)?.finding)
        .findLast((finding) => finding?.instrument !== undefined) ?? undefined;
    const answer = (kept: KeptFinding | undefined): string =>
      kept?.finding
        ? answerWords({ intl, index, item, scales: report.scales }, kept.finding.answer).text
        : t("place.open");
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
        <Cautions index={index} item={item} />
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
                    {answer(kept)}
                  </span>
                </button>
                {isOpen && (
                  <PlaceEditor
                    key={`${place.key}${kept?.state === "conflict" ? "conflict" : ""}`}
                    reportId={reportId}
                    report={report}
                    index={index}
                    place={place}
                    kept={kept}
                    checks={checksAt(checks, item.id, place.position)}
                    last={last}
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
