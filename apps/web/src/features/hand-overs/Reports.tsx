import type {
  HandOverCompared,
  HandOverLineSeen,
  HandOverReading,
  HandOverReportSeen,
  UnseenWords,
} from "@evenhand/shared/http/hand-overs";
import type { ReactNode } from "react";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { Facts, Panel } from "../../ui/Page";
import { BothPictures } from "./BothPictures";
import type { PictureSource } from "./carried-pictures";
import styles from "./HandOvers.module.css";
import { dayAndHour } from "../../entities/time/day-and-hour";

const Unseen = ({ unseen }: { readonly unseen: readonly UnseenWords[] }) => {
  const t = useText();
  const intl = useIntl();
  if (unseen.length === 0) return null;
  return (
    <>
      <h3>{t("hand-over.unseen")}</h3>
      <ul className={styles.lines}>
        {unseen.map(({ at, reason, count, places }) => (
          <li key={`${at} ${reason}`}>
            {t(`hand-over.unseen.${at}`, { reason, count })}
            {intl.formatList(places)}
          </li>
        ))}
      </ul>
    </>
  );
};

/** What one report says: figures, what is noted, what it does not speak for. */
export const Reading = ({ reading }: { readonly reading: HandOverReading }) => {
  const t = useText();
  const intl = useIntl();
  return (
    <div className={styles.stack}>
      <Facts
        rows={[
          [t("hand-over.odometer"), reading.odometer],
          [t("hand-over.fuel"), reading.fuel],
          [t("hand-over.keys"), reading.keys],
          [t("hand-over.seen-in"), intl.formatList(reading.seenIn)],
        ]}
      />
      <h3>{t("hand-over.noted")}</h3>
      {reading.noted.length === 0 && <p>{t("hand-over.noted.none")}</p>}
      <ul className={styles.lines}>
        {reading.noted.map(({ place, words, note }) => (
          <li key={place}>
            <strong>{place}</strong>: {words}
            {note !== null && <p className={styles.hint}>{t("hand-over.note", { note })}</p>}
          </li>
        ))}
      </ul>
      <Unseen unseen={reading.unseen} />
    </div>
  );
};

/** Names, what the carrier's paper has, and the hash. */
const Signatures = ({ report }: { readonly report: HandOverReportSeen }) => {
  const t = useText();
  const intl = useIntl();
  const names = report.signatures.map(({ as, name }) => t(`hand-over.as.${as}`, { name }));
  return (
    <>
      <Facts
        rows={[
          [t("hand-over.names"), intl.formatList(names)],
          [t("hand-over.paper"), t(`carry.paper.${report.paper}`)],
          [
            t("hand-over.hash"),
            <code key="hash" className={styles.hash}>
              {report.seal}
            </code>,
          ],
        ]}
      />
      <p className={styles.hint}>{t("hand-over.unverified")}</p>
    </>
  );
};

interface SignedProps {
  readonly report: HandOverReportSeen;
  /** Its photographs. */
  readonly children?: ReactNode;
}

/** A signed report, with the names under it. */
export const SignedReport = ({ report, children }: SignedProps) => {
  const t = useText();
  const intl = useIntl();
  const time = intl.formatDate(report.signedAt, {
    ...dayAndHour,
    year: "numeric",
    timeZone: report.zone,
  });
  return (
    <Panel
      title={t(`hand-over.report.${report.stage}`)}
      hint={t("hand-over.report.signed", { time, place: report.place })}
    >
      <Reading reading={report.reading} />
      {children}
      <Signatures report={report} />
    </Panel>
  );
};

interface LinesProps {
  readonly lines: readonly HandOverLineSeen[];
  /** Where both pictures of each place are to be shown. */
  readonly source?: PictureSource | undefined;
}

const Lines = ({ lines, source }: LinesProps) => (
  <ul className={styles.lines}>
    {lines.map((line) => (
      <li key={`${line.place} ${line.sentence}`}>
        <strong>{line.place}</strong>: {line.sentence}
        {source !== undefined && line.pictured && <BothPictures source={source} line={line} />}
      </li>
    ))}
  </ul>
);

/** What arrived, set against what left. */
export const Compared = ({
  compared,
  source,
}: {
  readonly compared: HandOverCompared;
  readonly source?: PictureSource;
}) => {
  const t = useText();
  const { discrepancies, open, others, unseen, lookedAtTwice: twice, places } = compared;
  const none = discrepancies.length === 0;
  return (
    <Panel
      title={t("hand-over.compared")}
      hint={t(none ? "hand-over.compared.none" : "hand-over.compared.some", { twice, places })}
    >
      <div className={styles.stack}>
        <Lines lines={discrepancies} source={source} />
        {open.length > 0 && <h3>{t("hand-over.compared.open")}</h3>}
        <Lines lines={open} source={source} />
        {others.length > 0 && <h3>{t("hand-over.compared.others")}</h3>}
        <Lines lines={others} />
        <Unseen unseen={unseen} />
      </div>
    </Panel>
  );
};
