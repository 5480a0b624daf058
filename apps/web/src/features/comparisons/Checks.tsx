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

/** The findings a rule reads, each a way to its line. */
const Reads = ({ reads, source, onOpenPlace }: Props & Pick<CrossCheck, "reads">) => {
  const t = useText();
  const place = (item: string, position: string): string => {
    const known = source.index.items.get(item);
    return [itemWords(source.index, item), positionWords(source.index, known, position)]
      .filter((part) => part !== "")
      .join(", ");
  };
  return (
    <p className={styles.reads}>
      {t("check.reads")}{" "}
      {reads.map((one, at) => (
        <span key={`${one.side}${one.item}${one.position}`}>
          {at > 0 && " · "}
          <button type="button" onClick={() => onOpenPlace(one.item, one.position)}>
            {place(one.item, one.position)}
          </button>{" "}
          ({t(one.side === "a" ? "side.stated" : "side.found")})
        </span>
      ))}
    </p>
  );
};

const Head = ({ check }: { readonly check: CrossCheck }) => {
  const t = useText();
  const { verdict, severity, strength } = check;
  return (
    <p className={styles.head}>
      <strong>{checkTitle(check)}</strong>
      {severity !== null && (
        <Tag>{t(verdict === "breaks" ? `severity.${severity}` : `at-stake.${severity}`)}</Tag>
      )}
      {strength !== "contradicts" && <Tag>{t(`check.strength.${strength}`)}</Tag>}
    </p>
  );
};

const Check = ({ check, ...view }: Props & { readonly check: CrossCheck }) => {
  const t = useText();
  const { crossChecks } = view.source.comparison;
  return (
    <li className={styles.check} data-verdict={check.verdict}>
      <Head check={check} />
      <p>{checkSentence(check)}</p>
      <p className={styles.reads}>{t("check.source", { source: checkSource(check) ?? "" })}</p>
      <Reads reads={check.reads} {...view} />
      <Under
        checks={crossChecks.filter(({ under }) => under !== undefined && crossChecks[under] === check)}
      />
    </li>
  );
};

/** Whose limits and whose maker's figures the rules judged by, where they are a firm's own. */
const OwnLimits = ({ source }: Pick<Props, "source">) => {
  const t = useText();
  const { handbook, b } = source.comparison;
  if (handbook === undefined) return null;
  const { limits, makerSource } = handbook;
  return (
    <Notice kind="note">
      <p>
        {t("check.own.limits", { firm: b.organization, count: Object.keys(limits).length })}
        {makerSource !== null && <> {t("check.own.maker", { firm: b.organization, source: makerSource })}</>}
      </p>
    </Notice>
  );
};

/** The rules with one verdict. */
const Verdict = ({ verdict, ...view }: Props & { readonly verdict: (typeof verdicts)[number] }) => {
  const t = useText();
  const list = view.source.comparison.crossChecks.filter(
    (check) => check.verdict === verdict && check.under === undefined,
  );
  if (list.length === 0) return null;
  return (
    <Panel
      title={t(`check.verdict.${verdict}`, { count: list.length })}
      hint={t(`check.verdict.${verdict}.hint`)}
    >
      <ul className={styles.list}>
        {list.map((check, at) => (
          <Check key={`${check.rule}${at}`} check={check} {...view} />
        ))}
      </ul>
    </Panel>
  );
};

/** Rules of the handbook over these two reports: what the readings and codes themselves give away. */
export const Checks = (view: Props) => {
  const t = useText();
  if (view.source.comparison.crossChecks.length === 0)
    return <Empty title={t("check.none")}>{t("check.none.hint")}</Empty>;
  return (
    <div className={styles.checks}>
      <OwnLimits source={view.source} />
      {verdicts.map((verdict) => (
        <Verdict key={verdict} verdict={verdict} {...view} />
      ))}
    </div>
  );
};
