import type { Summary, SummaryItem } from "@evenhand/shared/summary";
import { Button } from "@mantine/core";
import { useState } from "react";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { OutcomeSign } from "../../ui/OutcomeSign";
import { moneyText } from "../../ui/money";
import { Empty, Facts, Panel, Tag } from "../../ui/Page";
import { standings as standingOrder } from "../../entities/comparison/terms";
import { useItemWords } from "../../entities/sheet/item-words";
import styles from "./Summary.module.css";

interface Props {
  readonly summary: Summary;
}

/** How many lines stand how, in words. */
export const Standings = ({ summary }: Props) => {
  const t = useText();
  const { coverage, standings } = summary;
  return (
    <Panel
      title={t("summary.standings")}
      hint={t("summary.coverage", {
        seen: coverage.statedAndSeen,
        stated: coverage.stated,
        all: coverage.seen,
        sheet: coverage.onSheet,
      })}
    >
      <dl className={styles.standings}>
        {standingOrder.map((standing) => (
          <div key={standing}>
            <dt>{t(`standing.${standing}`)}</dt>
            <dd>{standings[standing] ?? 0}</dd>
          </div>
        ))}
      </dl>
    </Panel>
  );
};

/** The most pressing in sight; the rest a press away, and all of them on paper. */
const atFirst = 12;

/** Standings that only repeat the outcome. */
const sameWord: ReadonlySet<string> = new Set([
  "differs",
  "in-doubt",
  "unseen",
  "not-mentioned",
  "not-comparable",
]);

interface ItemProps {
  readonly item: SummaryItem;
  readonly folded: boolean;
}

const Item = ({ item, folded }: ItemProps) => {
  const t = useText();
  const words = useItemWords();
  const { outcome, standing, severity, found } = item;
  const outcomeWords = t(`outcome.${outcome}`);
  return (
    <li data-folded={folded}>
      <OutcomeSign outcome={outcome} size={30} />
      <span>
        <strong>{words(item)}</strong>
        <span className={styles.note}>
          {sameWord.has(standing) ? outcomeWords : `${outcomeWords} · ${t(`standing.${standing}`)}`}
        </span>
      </span>
      {severity !== null && <Tag>{t(found ? `severity.${severity}` : `at-stake.${severity}`)}</Tag>}
    </li>
  );
};

const Items = ({ items }: { readonly items: readonly SummaryItem[] }) => {
  const t = useText();
  const [all, setAll] = useState(false);
  return (
    <>
      <ol className={styles.items}>
        {items.map((item, at) => (
          <Item key={item.entry} item={item} folded={!all && at >= atFirst} />
        ))}
      </ol>
      {!all && items.length > atFirst && (
        <div className="no-print">
          <Button variant="default" onClick={() => setAll(true)}>
            {t("summary.all", { count: items.length })}
          </Button>
        </div>
      )}
    </>
  );
};

export const InDoubt = ({ summary }: Props) => {
  const t = useText();
  return (
    <Panel title={t("summary.in-doubt", { count: summary.inDoubt.length })} hint={t("summary.in-doubt.hint")}>
      {summary.inDoubt.length === 0 ? (
        <Empty title={t("summary.in-doubt.none")} />
      ) : (
        <Items items={summary.inDoubt} />
      )}
    </Panel>
  );
};

export const UnseenItems = ({ summary }: Props) => {
  const t = useText();
  return (
    <Panel title={t("summary.unseen", { count: summary.unseen.length })} hint={t("whole.unseen.hint")}>
      {summary.unseen.length === 0 ? (
        <Empty title={t("whole.unseen.none")} />
      ) : (
        <Items items={summary.unseen} />
      )}
    </Panel>
  );
};

export const ReleasedItems = ({ summary }: Props) => {
  const t = useText();
  const words = useItemWords();
  if (summary.releases.length === 0) return null;
  const items = new Map(
    [...summary.inDoubt, ...summary.unseen, ...summary.openMatters.flatMap(({ lines }) => lines)].map(
      (one) => [one.entry, one],
    ),
  );
  return (
    <Panel title={t("summary.released")}>
      <ul className={styles.plainList}>
        {summary.releases.map((one) => {
          const item = items.get(one.entry);
          return (
            <li key={one.id}>
              <strong>{item ? words(item) : t("summary.entry", { entry: one.entry + 1 })}</strong>{" "}
              <Tag strong={one.state === "released"}>{t(`release.state.${one.state}`)}</Tag>
              {one.reason !== null && <p className={styles.note}>{one.reason}</p>}
            </li>
          );
        })}
      </ul>
    </Panel>
  );
};

/** Cost to put right, as a range from the buyer's own table; never one number alone. */
export const CostRange = ({ summary }: Props) => {
  const t = useText();
  const intl = useIntl();
  const { cost } = summary;
  if (cost === null) {
    return (
      <Panel title={t("summary.cost")}>
        <p className={styles.note}>{t("summary.cost.none")}</p>
      </Panel>
    );
  }
  const money = (minor: number): string => moneyText(intl, { minor, currency: cost.currency });
  const { low, likely, high } = cost.total;
  const at = (minor: number): string => `${high === 0 ? 0 : (minor / high) * 100}%`;
  return (
    <Panel title={t("summary.cost")} hint={t("summary.cost.hint", { table: cost.table })}>
      <p className={styles.range}>
        {t("summary.cost.range", { low: money(low), likely: money(likely), high: money(high) })}
      </p>
      <div className={styles.scale} aria-hidden="true">
        <span className={styles.span} style={{ left: at(low), right: "0%" }} />
        <span className={styles.likely} style={{ left: at(likely) }} />
      </div>
      {cost.unset.length > 0 && (
        <p className={styles.note}>{t("summary.cost.unset", { count: cost.unset.length })}</p>
      )}
      <p className={styles.note}>{t("summary.cost.plain")}</p>
    </Panel>
  );
};

export const Sources = ({ summary, hash }: Props & { readonly hash: string }) => {
  const t = useText();
  return (
    <Panel title={t("summary.sealed")} hint={t("summary.sealed.hint")}>
      <Facts
        rows={[
          [t("summary.hash"), <code key="hash">{hash}</code>],
          [
            t("kind.statement"),
            t("summary.version", {
              version: summary.statement.version,
              seal: summary.statement.seal,
            }),
          ],
          [
            t("kind.inspection"),
            t("summary.version", {
              version: summary.inspection.version,
              seal: summary.inspection.seal,
            }),
          ],
          [t("summary.engine"), summary.comparison.engine],
        ]}
      />
    </Panel>
  );
};
