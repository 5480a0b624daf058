import { Button } from "@mantine/core";
import type { Decision, SummarySeen } from "@evenhand/shared/http/summaries";
import type { Summary } from "@evenhand/shared/summary";
import { IconPrinter } from "@tabler/icons-react";
import { useQuery } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useState } from "react";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { Answered } from "../../ui/Answered";
import { RefusedPage } from "../../ui/Failed";
import { Loading } from "../../ui/Loading";
import { Notice } from "../../ui/Notice";
import { Page, Panel } from "../../ui/Page";
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

/** What the summary is made of has moved on: a decision on it would be refused. */
const Moved = ({ seen: { moved, comparison } }: { readonly seen: SummarySeen }) => {
  const t = useText();
  return (
    <Notice kind="refusal" title={t("summary.moved")}>
      <MovedList moved={moved} />
      <div className="no-print">
        <MakeSummary comparison={comparison} again />
      </div>
    </Notice>
  );
};

/** That it was decided just now, and what comes next. */
const DecidedNow = ({ kind }: { readonly kind: Decision["decision"] }) => {
  const t = useText();
  return (
    <Answered title={t(`decided.${kind}`)}>
      <p>{t(`decided.next.${kind}`)}</p>
    </Answered>
  );
};

const cautions = ["certificate", "valuation", "contract", "law", "road"] as const;

/** What the summary is not. */
const SummaryCautions = () => {
  const t = useText();
  return (
    <Panel title={t("summary.cautions")}>
      <ul className={styles.cautions}>
        {cautions.map((one) => (
          <li key={one}>{t(`summary.caution.${one}`)}</li>
        ))}
      </ul>
    </Panel>
  );
};

interface Props {
  readonly summary: Summary;
  readonly seen: SummarySeen;
}

/** The summary line by line, with the decision: to be made at its end, or made and said first. */
const Contents = ({ summary, seen }: Props) => {
  const t = useText();
  const [decidedNow, setDecidedNow] = useState(false);
  const { moved, decision, hash } = seen;
  return (
    <>
      <p className={styles.plain}>{t("summary.plain")}</p>
      {moved.length > 0 && decision === null && <Moved seen={seen} />}
      {decision !== null && decidedNow && <DecidedNow kind={decision.decision} />}
      {decision !== null && <Decided decision={decision} />}
      <Standings summary={summary} />
      <InDoubt summary={summary} />
      <UnseenItems summary={summary} />
      <ReleasedItems summary={summary} />
      <CostRange summary={summary} />
      <SummaryCautions />
      {decision === null && <Decide summary={summary} seen={seen} onDecided={() => setDecidedNow(true)} />}
      <Sources summary={summary} hash={hash} />
    </>
  );
};

const Print = () => {
  const t = useText();
  return (
    <Button
      variant="default"
      leftSection={<IconPrinter size={18} aria-hidden="true" />}
      onClick={() => globalThis.print()}
    >
      {t("comparison.print")}
    </Button>
  );
};

const Whole = ({ summary, seen }: Props) => {
  const t = useText();
  const intl = useIntl();
  const name = useCarName();
  const { vehicle, createdAt } = summary;
  return (
    <Page
      title={t("summary.title", { car: name(vehicle) })}
      over={
        <Link to="/comparisons/$comparison" params={{ comparison: seen.comparison }}>
          {t("summary.back")}
        </Link>
      }
      under={t("summary.made", {
        date: intl.formatDate(createdAt, { dateStyle: "long", timeStyle: "short" }),
        identification: vehicle.identification,
      })}
      actions={<Print />}
      narrow
    >
      <Contents summary={summary} seen={seen} />
    </Page>
  );
};

/** The sealed summary: what the buyer decides on, exactly as it stands. */
export const SummaryPage = () => {
  const t = useText();
  const { summary: id } = route.useParams();
  const seen = useQuery(summaryQuery(id));
  const document = useQuery(summaryDocumentQuery(id));
  const error = seen.error ?? document.error;
  if (error) return <RefusedPage title={t("summary.title.unknown")} error={error} />;
  if (!seen.data || !document.data) return <Loading />;
  return <Whole key={id} summary={document.data} seen={seen.data} />;
};
