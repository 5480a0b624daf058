import type { Report } from "@evenhand/shared/report";
import { Link } from "@tanstack/react-router";
import { useMemo } from "react";
import { useText } from "../../strings/text";
import { Panel } from "../../ui/Page";
import { Severity } from "../../entities/matter/Severity";
import { placesFor } from "../../entities/sheet/places";
import { capital, itemWords, type SheetIndex } from "../../entities/sheet/sheet-index";
import styles from "./Review.module.css";

interface Props {
  readonly reportId: string;
  readonly report: Report;
  readonly index: SheetIndex;
  readonly items: readonly string[];
  readonly isAnswered: (item: string) => boolean;
}

const FIRST = 20;

/** What the recording never speaks of, gravest first: what a buyer will ask. */
export const Unmentioned = ({ reportId, report, index, items, isAnswered }: Props) => {
  const t = useText();
  const places = useMemo(() => {
    const first = new Map<string, string>();
    for (const { item, key } of placesFor(index, report.vehicle.form))
      if (!first.has(item.id)) first.set(item.id, key);
    return first;
  }, [index, report.vehicle.form]);
  const open = items.filter((item) => !isAnswered(item));
  const line = (id: string) => {
    const item = index.items.get(id);
    return (
      item && (
        <li key={id}>
          <Link
            to="/reports/$report"
            params={{ report: reportId }}
            search={{ section: item.section, open: places.get(id) }}
          >
            {capital(itemWords(index, id))}
          </Link>{" "}
          <Severity severity={item.severity} unknown />
        </li>
      )
    );
  };
  if (open.length === 0) return null;
  return (
    <Panel title={t("reading.unmentioned", { count: open.length })} hint={t("reading.unmentioned.hint")}>
      <ul className={styles.unmentioned}>{open.slice(0, FIRST).map(line)}</ul>
      {open.length > FIRST && (
        <details>
          <summary>{t("reading.unmentioned.more", { count: open.length - FIRST })}</summary>
          <ul className={styles.unmentioned}>{open.slice(FIRST).map(line)}</ul>
        </details>
      )}
    </Panel>
  );
};
