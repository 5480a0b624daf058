import type { DealerRecord as Seen, RecordFigures } from "@evenhand/shared/http/records";
import { useQuery } from "@tanstack/react-query";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import styles from "./DealerRecord.module.css";
import { sheetQuery } from "../../entities/sheet/load-sheet";
import { topOf } from "./interval-bar";
import { dealerRecordQuery } from "./queries";
import { SectionRow } from "./SectionRow";

const highsOf = (figures: RecordFigures): number[] =>
  figures.state === "known" ? [figures.fallen.high, figures.fallenIfAllOpen?.high ?? 0] : [];

const Words = ({ cars, top }: { readonly cars: number; readonly top: number }) => {
  const t = useText();
  const intl = useIntl();
  return (
    <div className={styles.words}>
      <p>{t("record.how", { cars })}</p>
      <p>{t("record.interval", { top: intl.formatNumber(top, { style: "percent" }) })}</p>
      <p>{t("record.silence")}</p>
    </div>
  );
};

const Sections = ({ record }: { readonly record: Seen }) => {
  const t = useText();
  // The sheet is large, so it comes only where there is something to say of a section.
  const sheet = useQuery(sheetQuery("evenhand", 1)).data;
  if (!sheet) return null;
  const { cars, needed, whole, sections } = record;
  const top = topOf([whole, ...sections.map(({ figures }) => figures)].flatMap(highsOf));
  return (
    <>
      <Words cars={cars} top={top} />
      <ul className={styles.sections}>
        <SectionRow figures={whole} needed={needed} top={top} name={t("record.whole")} />
        {sections.map(({ section, figures }) => (
          <SectionRow
            key={section}
            figures={figures}
            needed={needed}
            top={top}
            name={sheet.sections.get(section)?.words.american ?? section}
          />
        ))}
      </ul>
    </>
  );
};

/** How a dealer's statements held up in inspections so far, over cars: the whole car and by section. */
export const DealerRecord = ({ dealer }: { readonly dealer: string }) => {
  const t = useText();
  const { data: record, error } = useQuery(dealerRecordQuery(dealer));
  if (!record && !error) return null;
  const known = record?.whole.state === "known";
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
