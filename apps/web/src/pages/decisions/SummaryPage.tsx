import { Button } from "@mantine/core";
import { IconPrinter } from "@tabler/icons-react";
import { useQuery } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useState } from "react";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { Answered } from "../../ui/Answered";
import { Loading } from "../../ui/Loading";
import { Notice } from "../../ui/Notice";
import { Page, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { useCarName } from "../../entities/car/CarName";
import { Decide } from "../../features/decisions/Decide";
import { Decided } from "../../features/decisions/Decided";
import { MakeSummary } from "../../features/decisions/MakeSummary";
import { MovedList } from "../../features/decisions/MovedList";
import { summaryDocumentQuery, summaryQuery } from "../../features/decisions/queries";
import styles from "../../features/decisions/Summary.module.css";
import {
  CostRange,
  InDoubt,
  ReleasedItems,
  Sources,
  Standings,
  UnseenItems,
} from "../../features/decisions/SummaryParts";

const route = getRouteApi("/signed-in/summaries/$summary");

/** The sealed summary: what the buyer decides on, exactly as it stands. */
export const SummaryPage = () => {
  const t = useText();
  const intl = useIntl();
  const name = useCarName();
  const [decidedNow, setDecidedNow] = useState(false);
  const { summary: id } = route.useParams();
  const seen = useQuery(summaryQuery(id));
  const document = useQuery(summaryDocumentQuery(id));
  const error = seen.error ?? document.error;
  if (error) {
    return (
      <Page title={t("summary.title.unknown")} narrow>
        <ProblemNotice error={error} />
      </Page>
    );
  }
  if (!seen.data || !document.data) return <Loading />;
  const { moved, decision, hash, comparison } = seen.data;
  const summary = document.data;
  return (
    <Page
      title={t("summary.title", { car: name(summary.vehicle) })}
      over={
        <Link to="/comparisons/$comparison" params={{ comparison }}>
          {t("summary.back")}
        </Link>
      }
      under={t("summary.made", {
        date: intl.formatDate(summary.createdAt, { dateStyle: "long", timeStyle: "short" }),
        identification: summary.vehicle.identification,
      })}
      actions={
        <Button
          variant="default"
          leftSection={<IconPrinter size={18} aria-hidden="true" />}
          onClick={() => globalThis.print()}
        >
          {t("comparison.print")}
        </Button>
      }
      narrow
    >
      <p className={styles.plain}>{t("summary.plain")}</p>
      {moved.length > 0 && decision === null && (
        <Notice kind="refusal" title={t("summary.moved")}>
          <MovedList moved={moved} />
          <div className="no-print">
            <MakeSummary comparison={comparison} again />
          </div>
        </Notice>
      )}
      {decision !== null && decidedNow && (
        <Answered title={t(`decided.${decision.decision}`)}>
          <p>{t(`decided.next.${decision.decision}`)}</p>
        </Answered>
      )}
      {decision !== null && <Decided decision={decision} />}
      <Standings summary={summary} />
      <InDoubt summary={summary} />
      <UnseenItems summary={summary} />
      <ReleasedItems summary={summary} />
      <CostRange summary={summary} />
      <Panel title={t("summary.cautions")}>
        <ul className={styles.cautions}>
          {(["certificate", "valuation", "contract", "law", "road"] as const).map((one) => (
            <li key={one}>{t(`summary.caution.${one}`)}</li>
          ))}
        </ul>
      </Panel>
      {decision === null && (
        <Decide summary={summary} seen={seen.data} onDecided={() => setDecidedNow(true)} />
      )}
      <Sources summary={summary} hash={hash} />
    </Page>
  );
};
