import { limits } from "@evenhand/handbook/limits";
import { rules } from "@evenhand/handbook/rules";
import { useQuery } from "@tanstack/react-query";
import { useState, type ReactNode } from "react";
import { useText } from "../../strings/text";
import { LinkButton } from "../../ui/LinkButton";
import { Notice } from "../../ui/Notice";
import { Empty, Facts, Page, Panel, Tag } from "../../ui/Page";
import { SearchField } from "../../ui/SearchField";
import { useAccount } from "../../entities/account/queries";
import { sheetQuery } from "../../entities/sheet/load-sheet";
import { firmsOf } from "../../entities/account/firms";
import styles from "../../features/handbook/Handbook.module.css";
import { useFigure } from "../../features/handbook/use-figure";

type Rule = (typeof rules)[number];

const wordsOf = (rule: Rule): string =>
  [rule.title, rule.reads, rule.formula, rule.source.text, rule.note ?? ""].join(" ").toLowerCase();

const Limits = ({ rule }: { readonly rule: Rule }) => {
  const t = useText();
  const { figure } = useFigure();
  return (
    <ul className={styles.limits}>
      {rule.limits.map((id) => {
        const { words, value, unit, source, firmMaySet } = limits[id];
        return (
          <li key={id}>
            {words}: <strong>{figure(value, unit)}</strong>
            <span className={styles.source}>
              {source.text}
              {firmMaySet && ` · ${t("handbook.firm")}`}
            </span>
          </li>
        );
      })}
    </ul>
  );
};

const Tags = ({ rule }: { readonly rule: Rule }) => {
  const t = useText();
  return (
    <p className={styles.tags}>
      <Tag>{t(`consequence.${rule.consequence}`)}</Tag>
      <Tag>{t(`handbook.over.${rule.over}`)}</Tag>
      <Tag>{t(`handbook.strength.${rule.strength}`)}</Tag>
    </p>
  );
};

/** What to mind before what the rule reads is done. */
const Cautions = ({ rule }: { readonly rule: Rule }) => {
  const t = useText();
  const cautions = useQuery(sheetQuery("evenhand", 1)).data?.cautions;
  if (rule.cautions.length === 0 || !cautions) return null;
  return (
    <Notice kind="caution" title={t("caution.before")}>
      <ul>
        {rule.cautions.map((id) => (
          <li key={id}>{cautions.get(id)?.text}</li>
        ))}
      </ul>
    </Notice>
  );
};

const OneRule = ({ rule }: { readonly rule: Rule }) => {
  const t = useText();
  const rows: (readonly [string, ReactNode])[] = [
    [t("handbook.reads"), rule.reads],
    [t("handbook.computes"), rule.formula],
  ];
  if (rule.limits.length > 0) rows.push([t("handbook.limit"), <Limits key="limits" rule={rule} />]);
  rows.push([t("handbook.source"), rule.source.text]);
  return (
    <article id={rule.id}>
      <Panel title={rule.title}>
        <Tags rule={rule} />
        <Cautions rule={rule} />
        <Facts rows={rows} />
        {rule.note !== undefined && <p className={styles.note}>{rule.note}</p>}
      </Panel>
    </article>
  );
};

/** Every rule, made from the rules' own records, so that the page cannot drift from what is computed. */
export const Handbook = () => {
  const t = useText();
  const account = useAccount();
  const [q, setQ] = useState("");
  const words = q.toLowerCase().split(/\s+/);
  const shown = rules.filter((rule) => words.every((word) => wordsOf(rule).includes(word)));
  return (
    <Page
      title={t("handbook.title")}
      under={t("handbook.what")}
      narrow
      actions={
        firmsOf(account).length > 0 ? (
          <LinkButton variant="default" to="/handbook/own">
            {t("own.title")}
          </LinkButton>
        ) : undefined
      }
    >
      <Notice kind="note">
        <p>{t("handbook.law")}</p>
      </Notice>
      <SearchField label={t("handbook.search")} value={q} onChange={setQ} />
      {shown.length === 0 && <Empty title={t("handbook.none")} />}
      {shown.map((rule) => (
        <OneRule key={rule.id} rule={rule} />
      ))}
    </Page>
  );
};
