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

/** Where each item's first line of this car is. */
const usePlaces = (index: SheetIndex, { vehicle: { form } }: Report): ReadonlyMap<string, string> =>
  useMemo(() => {
    const first = new Map<string, string>();
    for (const { item, key } of placesFor(index, form)) if (!first.has(item.id)) first.set(item.id, key);
    return first;
  }, [index, form]);

type ItemsProps = Pick<Props, "reportId" | "report" | "index" | "items">;

const Items = ({ reportId, report, index, items }: ItemsProps) => {
  const places = usePlaces(index, report);
  const known = items.flatMap((id) => index.items.get(id) ?? []);
  return (
    <ul className={styles.unmentioned}>
      {known.map(({ id, section, severity }) => (
        <li key={id}>
          <Link
            to="/reports/$report"
            params={{ report: reportId }}
            search={{ section, open: places.get(id) }}
          >
            {capital(itemWords(index, id))}
          </Link>{" "}
          <Severity severity={severity} unknown />
        </li>
      ))}
    </ul>
  );
};

/** What the recording never speaks of, gravest first: what a buyer will ask. */
export const Unmentioned = ({ items, isAnswered, ...of }: Props) => {
  const t = useText();
  const open = items.filter((item) => !isAnswered(item));
  const more = open.length - FIRST;
  if (open.length === 0) return null;
  return (
    <Panel title={t("reading.unmentioned", { count: open.length })} hint={t("reading.unmentioned.hint")}>
      <Items {...of} items={open.slice(0, FIRST)} />
      {more > 0 && (
        <details>
          <summary>{t("reading.unmentioned.more", { count: more })}</summary>
          <Items {...of} items={open.slice(FIRST)} />
        </details>
      )}
    </Panel>
  );
};
