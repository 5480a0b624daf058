import type { CrossCheck } from "@evenhand/shared/cross-check";
import { useText } from "../../strings/text";
import { Notice } from "../../ui/Notice";
import { Empty, Panel, Tag } from "../../ui/Page";
import { positionWords, itemWords } from "../../entities/sheet/sheet-index";
import styles from "./Checks.module.css";
import type { ComparisonSource } from "../../entities/comparison/model";
import { checkSentence, checkSource, checkTitle } from "../../entities/comparison/sentences";

interface Props {
  readonly source: ComparisonSource;
  readonly onOpenPlace: (item: string, position: string) => void;
}

const verdicts = ["breaks", "cannot-tell", "holds"] as const;

/** What broke on the same fact, said shortly: it is no second thing that is wrong. */
const Under = ({ checks }: { readonly checks: readonly CrossCheck[] }) => {
  const t = useText();
  if (checks.length === 0) return null;
  return (
    <div className={styles.under}>
      <p>{t("check.under", { count: checks.length })}</p>
      <ul>
        {checks.map((check, at) => (
          <li key={`${check.rule}${at}`}>
            <strong>{checkTitle(check)}</strong>: {checkSentence(check)}
          </li>
        ))}
      </ul>
    </div>
  );
};

type CheckProps = Props & { readonly check: CrossCheck; readonly under: readonly CrossCheck[] };

const Check = ({ check, under, source, onOpenPlace }: CheckProps) => {
  const t = useText();
  const place = (item: string, position: string): string => {
    const known = source.index.items.get(item);
    return [itemWords(source.index, item), positionWords(source.index, known, position)]
      .filter((part) => part !== "")
      .join(", ");
  };
  return (
    <li className={styles.check} data-verdict={check.verdict}>
      <p className={styles.head}>
        <strong>{checkTitle(check)}</strong>
        {check.severity !== null && (
          <Tag>
            {t(check.verdict === "breaks" ? `severity.${check.severity}` : `at-stake.${check.severity}`)}
          </Tag>
        )}
        {check.strength !== "contradicts" && <Tag>{t(`check.strength.${check.strength}`)}</Tag>}
      </p>
      <p>{checkSentence(check)}</p>
      <p className={styles.reads}>{t("check.source", { source: checkSource(check) ?? "" })}</p>
      <p className={styles.reads}>
        {t("check.reads")}{" "}
        {check.reads.map((one, at) => (
          <span key={`${one.side}${one.item}${one.position}`}>
            {at > 0 && " · "}
            <button type="button" onClick={() => onOpenPlace(one.item, one.position)}>
              {place(one.item, one.position)}
            </button>{" "}
            ({t(one.side === "a" ? "side.stated" : "side.found")})
          </span>
        ))}
      </p>
      <Under checks={under} />
    </li>
  );
};

/** Rules of the handbook over these two reports: what the readings and codes themselves give away. */
export const Checks = ({ source, onOpenPlace }: Props) => {
  const t = useText();
  const { crossChecks, handbook, b } = source.comparison;
  if (crossChecks.length === 0) return <Empty title={t("check.none")}>{t("check.none.hint")}</Empty>;
  return (
    <div className={styles.checks}>
      {handbook !== undefined && (
        <Notice kind="note">
          <p>
            {t("check.own.limits", {
              firm: b.organization,
              count: Object.keys(handbook.limits).length,
            })}
            {handbook.makerSource !== null && (
              <> {t("check.own.maker", { firm: b.organization, source: handbook.makerSource })}</>
            )}
          </p>
        </Notice>
      )}
      {verdicts.map((verdict) => {
        const list = crossChecks.filter((check) => check.verdict === verdict && check.under === undefined);
        if (list.length === 0) return null;
        return (
          <Panel
            key={verdict}
            title={t(`check.verdict.${verdict}`, { count: list.length })}
            hint={t(`check.verdict.${verdict}.hint`)}
          >
            <ul className={styles.list}>
              {list.map((check, at) => (
                <Check
                  key={`${check.rule}${at}`}
                  check={check}
                  under={crossChecks.filter(
                    ({ under }) => under !== undefined && crossChecks[under] === check,
                  )}
                  source={source}
                  onOpenPlace={onOpenPlace}
                />
              ))}
            </ul>
          </Panel>
        );
      })}
    </div>
  );
};
