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

const icons = {
  saved: IconCheck,
  waiting: IconCloudUp,
  conflict: IconAlertCircle,
  refused: IconAlertCircle,
  lost: IconAlertCircle,
  unread: IconAlertCircle,
  open: IconCircleDashed,
} as const;

type StateOfPlace = keyof typeof icons;

/** What needs the person comes before what was answered; a line taken back is open only once that has arrived. */
const placeState = (kept: KeptFinding | undefined): StateOfPlace => {
  if (kept === undefined) return "open";
  if (kept.state === "lost" || kept.state === "conflict" || kept.state === "refused") return kept.state;
  if (kept.unread !== undefined) return "unread";
  return kept.finding === null && kept.state === "saved" ? "open" : kept.state;
};

const PlaceState = ({ kept }: { readonly kept: KeptFinding | undefined }) => {
  const t = useText();
  const state = placeState(kept);
  const Icon = icons[state];
  return (
    <span className={styles.state} data-state={state === "unread" ? "refused" : state}>
      <Icon size={18} stroke={1.9} aria-hidden="true" />
      <span className="only-read">{t(`place.state.${state}`)}</span>
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
  ({ report, index, group, findings, checks, open, onOpen, onNext, keep, settle }: Props) => {
    const t = useText();
    const intl = useIntl();
    const { item, places } = group;
    const last =
      places
        .map(({ key }) => findings.get(key)?.finding)
        .findLast((finding) => finding?.instrument !== undefined) ?? undefined;
    const answer = (kept: KeptFinding | undefined): string => {
      const said = kept?.finding
        ? answerWords({ intl, index, item, scales: report.scales }, kept.finding.answer).text
        : undefined;
      if (kept?.unread === undefined) return said ?? t("place.open");
      const unread = intl.formatList(Object.values(kept.unread.texts));
      return said === undefined ? t("place.unread", { unread }) : t("place.unread.beside", { said, unread });
    };
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
                    report={report}
                    index={index}
                    place={place}
                    kept={kept}
                    checks={checksAt(checks, item.id, place.position)}
                    last={last}
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
