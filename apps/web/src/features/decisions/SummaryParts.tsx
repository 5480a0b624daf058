import { twoFigures } from "@evenhand/decision/two-figures";
import type { Summary, SummaryItem } from "@evenhand/shared/summary";
import { Button } from "@mantine/core";
import { useState } from "react";
import { useIntl } from "react-intl";
import { Severity } from "../../entities/matter/Severity";
import { useText } from "../../strings/text";
import { OutcomeSign } from "../../ui/OutcomeSign";
import { moneyText } from "../../ui/money";
import { Empty, Facts, Panel, Tag } from "../../ui/Page";
import { checkSentence, checkTitle } from "../../entities/comparison/sentences";
import { standings as standingOrder } from "../../entities/comparison/terms";
import { SealProof } from "../../entities/seal/SealProof";
import { useItemWords } from "../../entities/sheet/item-words";
import styles from "./Summary.module.css";

interface Props {
  readonly summary: Summary;
}
type Release = Summary["releases"][number];

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

/** How it stands, and what was stated beside what was found. */
const useSaid = (): ((one: SummaryItem) => string) => {
  const t = useText();
  return ({ outcome, standing, said }) => {
    const outcomeWords = t(`outcome.${outcome}`);
    const stands = sameWord.has(standing) ? outcomeWords : `${outcomeWords} · ${t(`standing.${standing}`)}`;
    if (said === undefined) return stands;
    const stated = said.stated ?? t("entry.silent.stated");
    return t("summary.said", { stated, found: said.found ?? t("entry.silent.found"), stands });
  };
};

const Item = ({ one, folded }: { readonly one: SummaryItem; readonly folded: boolean }) => {
  const t = useText();
  const words = useItemWords();
  const said = useSaid();
  return (
    <li data-folded={folded}>
      <OutcomeSign outcome={one.outcome} size={30} />
      <span>
        <strong>{words(one)}</strong>
        <span className={styles.note}>{said(one)}</span>
      </span>
      {one.severity !== null && (
        <Tag>{t(one.found ? `severity.${one.severity}` : `at-stake.${one.severity}`)}</Tag>
      )}
    </li>
  );
};

const Items = ({ items }: { readonly items: readonly SummaryItem[] }) => {
  const t = useText();
  const [all, setAll] = useState(false);
  return (
    <>
      <ol className={styles.items}>
        {items.map((one, at) => (
          <Item key={one.entry} one={one} folded={!all && at >= atFirst} />
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

/** How a matter stands with the dealer, and with how many of its lines where it is not all of them. */
const useStands = (): ((matter: Summary["matters"][number]) => string) => {
  const t = useText();
  return ({ state: of, laid = 0, lines }) => {
    const state = t(`matter.state.${of}`);
    return laid === 0 || laid === lines ? state : t("case.matter.part", { state, laid, lines });
  };
};

/** Every matter with how it stands between buyer and dealer. */
export const SummaryMatters = ({ summary }: Props) => {
  const t = useText();
  const stands = useStands();
  if (summary.matters.length === 0) return null;
  return (
    <Panel title={t("summary.matters", { count: summary.matters.length })}>
      <ol className={styles.matters}>
        {summary.matters.map((matter) => (
          <li key={matter.id}>
            <strong>{matter.headline}</strong>
            <Severity severity={matter.severity} unknown={matter.certainty === "unknown"} />
            <span className={styles.note}>{matter.found}</span>
            <span className={styles.note}>
              {t("summary.matter.next", { next: matter.next, state: stands(matter) })}
            </span>
          </li>
        ))}
      </ol>
    </Panel>
  );
};

/** What figures and codes contradict by themselves. */
export const BrokenRules = ({ summary }: Props) => {
  const t = useText();
  if (summary.broken.length === 0) return null;
  return (
    <Panel
      title={t("summary.broken", { count: summary.broken.length })}
      hint={t("check.verdict.breaks.hint")}
    >
      <ul className={styles.plainList}>
        {summary.broken.map((check, at) => (
          <li key={`${check.rule}${at}`}>
            <strong>{checkTitle(check)}</strong>
            <span className={styles.note}>{checkSentence(check)}</span>
          </li>
        ))}
      </ul>
    </Panel>
  );
};

/** What both say is bad: nobody disputes it, and it costs like any other. */
export const BothBad = ({ summary }: Props) => {
  const t = useText();
  if (summary.bothBad.length === 0) return null;
  return (
    <Panel title={t("summary.both-bad", { count: summary.bothBad.length })} hint={t("summary.both-bad.hint")}>
      <Items items={summary.bothBad} />
    </Panel>
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

const ReleasedItem = ({ one, item }: { readonly one: Release; readonly item: SummaryItem | undefined }) => {
  const t = useText();
  const words = useItemWords();
  return (
    <li>
      <strong>{item ? words(item) : t("summary.entry", { entry: one.entry + 1 })}</strong>{" "}
      <Tag strong={one.state === "released"}>{t(`release.state.${one.state}`)}</Tag>
      {one.reason !== null && <p className={styles.note}>{one.reason}</p>}
    </li>
  );
};

export const ReleasedItems = ({ summary }: Props) => {
  const t = useText();
  if (summary.releases.length === 0) return null;
  const lines = summary.openMatters.flatMap((open) => open.lines);
  const items = new Map(
    [...summary.inDoubt, ...summary.unseen, ...summary.bothBad, ...lines].map((one) => [one.entry, one]),
  );
  return (
    <Panel title={t("summary.released")}>
      <ul className={styles.plainList}>
        {summary.releases.map((one) => (
          <ReleasedItem key={one.id} one={one} item={items.get(one.entry)} />
        ))}
      </ul>
    </Panel>
  );
};

type Cost = NonNullable<Summary["cost"]>;

const Range = ({ cost }: { readonly cost: Cost }) => {
  const t = useText();
  const intl = useIntl();
  const money = (minor: number): string =>
    moneyText(intl, { minor: twoFigures(minor), currency: cost.currency });
  const { low, likely, high } = cost.total;
  const at = (minor: number): string => `${high === 0 ? 0 : (minor / high) * 100}%`;
  return (
    <>
      <p className={styles.range}>
        {t("summary.cost.range", { low: money(low), likely: money(likely), high: money(high) })}
      </p>
      <div className={styles.scale} aria-hidden="true">
        <span className={styles.span} style={{ left: at(low), right: "0%" }} />
        <span className={styles.likely} style={{ left: at(likely) }} />
      </div>
    </>
  );
};

/** Cost to put right, as a range from the buyer's own table, to two figures; never one number alone. */
export const CostRange = ({ summary: { cost } }: Props) => {
  const t = useText();
  if (cost === null) {
    return (
      <Panel title={t("summary.cost")}>
        <p className={styles.note}>{t("summary.cost.none")}</p>
      </Panel>
    );
  }
  return (
    <Panel title={t("summary.cost")} hint={t("summary.cost.hint", { table: cost.table })}>
      <Range cost={cost} />
      {cost.unset.length > 0 && (
        <p className={styles.note}>{t("summary.cost.unset", { count: cost.unset.length })}</p>
      )}
      <p className={styles.note}>{t("summary.cost.plain")}</p>
    </Panel>
  );
};

export const Sources = ({ summary, id, hash }: Props & { readonly id: string; readonly hash: string }) => {
  const t = useText();
  return (
    <Panel title={t("summary.sealed")} hint={t("summary.sealed.hint")}>
      <Facts
        rows={[
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
      <SealProof id={id} seal={hash} of="summaries.document" />
    </Panel>
  );
};
