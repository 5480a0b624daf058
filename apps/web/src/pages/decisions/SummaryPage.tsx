import type { Decision, SummarySeen } from "@evenhand/shared/http/summaries";
import type { Summary } from "@evenhand/shared/summary";
import { Button } from "@mantine/core";
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
import { PaperLink } from "../../ui/PaperLink";
import { useCarName } from "../../entities/car/CarName";
import { OverPart } from "../../entities/case/OverPart";
import { Decide } from "../../features/decisions/Decide";
import { Decided } from "../../features/decisions/Decided";
import { MakeSummary } from "../../features/decisions/MakeSummary";
import { MovedList } from "../../features/decisions/MovedList";
import { summaryDocumentQuery, summaryQuery } from "../../features/decisions/queries";
import styles from "../../features/decisions/Summary.module.css";
import {
  BothBad,
  BrokenRules,
  CostRange,
  InDoubt,
  ReleasedItems,
  Sources,
  Standings,
  SummaryMatters,
  UnseenItems,
} from "../../features/decisions/SummaryParts";

const route = getRouteApi("/signed-in/summaries/$summary");

interface Props {
  readonly seen: SummarySeen;
  readonly summary: Summary;
}

const MovedSince = ({ seen }: Pick<Props, "seen">) => {
  const t = useText();
  if (seen.moved.length === 0 || seen.decision !== null) return null;
  return (
    <Notice kind="refusal" title={t("summary.moved")}>
      <MovedList moved={seen.moved} />
      <div className="no-print">
        <MakeSummary comparison={seen.comparison} again />
      </div>
    </Notice>
  );
};

const BeforeDeciding = () => {
  const t = useText();
  return (
    <Panel title={t("summary.cautions")}>
      <ul className={styles.cautions}>
        {(["certificate", "valuation", "contract", "law", "road"] as const).map((one) => (
          <li key={one}>{t(`summary.caution.${one}`)}</li>
        ))}
      </ul>
    </Panel>
  );
};

/** What the page is made of, from the matters to the sums. */
const Parts = ({ summary }: Pick<Props, "summary">) => (
  <>
    <SummaryMatters summary={summary} />
    <Standings summary={summary} />
    <InDoubt summary={summary} />
    <BrokenRules summary={summary} />
    <BothBad summary={summary} />
    <UnseenItems summary={summary} />
    <ReleasedItems summary={summary} />
    <CostRange summary={summary} />
    <BeforeDeciding />
  </>
);

/** Where it is decided it is said what was decided, and what comes next. */
const JustDecided = ({
  decision,
  matters,
}: {
  readonly decision: Decision;
  readonly matters: Summary["openMatters"];
}) => {
  const t = useText();
  return (
    <>
      <Answered title={t(`decided.${decision.decision}`)}>
        <p>{t(`decided.next.${decision.decision}`)}</p>
        <p>
          <Link to="/decisions">{t("nav.decisions")}</Link>
        </p>
      </Answered>
      <Decided decision={decision} matters={matters} />
    </>
  );
};

const Opened = ({ seen, summary }: Props) => {
  const t = useText();
  const [decidedNow, setDecidedNow] = useState(false);
  const { id, decision, hash } = seen;
  const matters = summary.openMatters;
  return (
    <>
      <p className={styles.plain}>{t("summary.plain")}</p>
      <MovedSince seen={seen} />
      {decision !== null && !decidedNow && <Decided decision={decision} matters={matters} />}
      <Parts summary={summary} />
      {decision !== null && decidedNow && <JustDecided decision={decision} matters={matters} />}
      {decision === null && <Decide summary={summary} seen={seen} onDecided={() => setDecidedNow(true)} />}
      <Sources summary={summary} id={id} hash={hash} />
    </>
  );
};

const PrintButton = () => {
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

const Paper = ({ id }: { readonly id: string }) => (
  <>
    <PrintButton />
    <PaperLink of="summaries.paper" id={id} />
  </>
);

const Titled = (props: Props) => {
  const t = useText();
  const intl = useIntl();
  const name = useCarName();
  const { vehicle, createdAt } = props.summary;
  return (
    <Page
      title={t("summary.title", { car: name(vehicle) })}
      over={
        <OverPart parts={[props.seen.id]}>
          <Link to="/comparisons/$comparison" params={{ comparison: props.seen.comparison }}>
            {t("summary.back")}
          </Link>
        </OverPart>
      }
      under={t("summary.made", {
        date: intl.formatDate(createdAt, { dateStyle: "long", timeStyle: "short" }),
        identification: vehicle.identification,
      })}
      actions={<Paper id={props.seen.id} />}
      narrow
    >
      <Opened {...props} />
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
  return <Titled key={id} seen={seen.data} summary={document.data} />;
};
