import type { DealerRecord as Seen } from "@evenhand/shared/http/records";
import { useQuery } from "@tanstack/react-query";
import { useText } from "../../strings/text";
import { Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import styles from "./DealerRecord.module.css";
import { sheetQuery } from "../../entities/sheet/load-sheet";
import { dealerRecordQuery } from "./queries";
import { SectionRow } from "./SectionRow";

const Sections = ({ record }: { readonly record: Seen }) => {
  const t = useText();
  // The sheet is large, so it comes only where there is something to say of a section.
  const sheet = useQuery(sheetQuery("evenhand", 1)).data;
  if (!sheet) return null;
  const pooled = record.sections.some((row) => row.state === "known" && row.pooled);
  return (
    <>
      <div className={styles.words}>
        <p>{t("record.how", { cars: record.cars })}</p>
        <p>
          {t("record.interval")}
          {pooled && ` ${t("record.pooled")}`}
        </p>
      </div>
      <ul className={styles.sections}>
        {record.sections.map((row) => (
          <SectionRow
            key={row.section}
            row={row}
            name={sheet.sections.get(row.section)?.words.american ?? row.section}
          />
        ))}
      </ul>
    </>
  );
};

/** How a dealer's statements held up in inspections so far, over cars and by section. */
export const DealerRecord = ({ dealer }: { readonly dealer: string }) => {
  const t = useText();
  const { data: record, error } = useQuery(dealerRecordQuery(dealer));
  if (!record && !error) return null;
  const known = record?.sections.some(({ state }) => state === "known") ?? false;
  return (
    <Panel title={t("record.title")}>
      {error && <ProblemNotice error={error} />}
      {record && known && <Sections record={record} />}
      {record && !known && (
        <p className={styles.words}>{t("record.nothing", { cars: record.cars, needed: record.needed })}</p>
      )}
      {known && (
        <div className={styles.caution}>
          <p>{t("record.caution")}</p>
        </div>
      )}
    </Panel>
  );
};
