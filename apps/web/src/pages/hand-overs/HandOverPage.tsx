import type { HandOverSeen, HandOverTerms } from "@evenhand/shared/http/hand-overs";
import { useQuery } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useIntl } from "react-intl";
import { useCarName } from "../../entities/car/CarName";
import { ownSource, ReportPictures } from "../../features/hand-overs/BothPictures";
import styles from "../../features/hand-overs/HandOvers.module.css";
import { OwnMoves, RenewLink } from "../../features/hand-overs/Moves";
import { handOverQuery } from "../../features/hand-overs/queries";
import { Compared, SignedReport } from "../../features/hand-overs/Reports";
import { SetTerms } from "../../features/hand-overs/SetTerms";
import { useText } from "../../strings/text";
import { Loading } from "../../ui/Loading";
import { Facts, Page, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { dayAndHour } from "../../entities/time/day-and-hour";

const route = getRouteApi("/signed-in/hand-overs/$handOver");

const withYear = { ...dayAndHour, year: "numeric" } as const;

interface Props {
  readonly seen: HandOverSeen;
}

/** What was agreed, in the words of the papers; what was not entered says so. */
const useTermsRows = (terms: HandOverTerms): (readonly [string, string])[] => {
  const t = useText();
  const intl = useIntl();
  const { claimDeadline: deadline, riskPasses } = terms;
  const until = deadline?.until ?? null;
  return [
    [t("hand-over.deadline"), deadline?.words ?? t("hand-over.deadline.unset")],
    ...(deadline === null ? [] : [[t("hand-over.deadline.source"), deadline.source] as const]),
    ...(until === null
      ? []
      : [[t("hand-over.deadline.until.seen"), intl.formatDate(until, withYear)] as const]),
    [t("hand-over.risk"), riskPasses ?? t("hand-over.risk.unset")],
  ];
};

/** Nothing can follow, so its terms stay as they were. */
const isOver = ({ state }: HandOverSeen): boolean => state === "called-off" || state === "claim-closed";

const Terms = ({ seen, terms }: Props & { readonly terms: HandOverTerms }) => (
  <>
    <Facts rows={useTermsRows(terms)} />
    {!isOver(seen) && <SetTerms seen={seen} terms={terms} />}
  </>
);

const Stands = ({ seen }: Props) => {
  const t = useText();
  const intl = useIntl();
  const moves = seen.moves.map(({ move, at, note }) => {
    const words = [t(`hand-over.move.${move}`), ...(note === null ? [] : [note])];
    return [intl.formatDate(at, withYear), intl.formatList(words, { type: "unit" })] as const;
  });
  return (
    <Panel title={t("hand-over.stands")}>
      <Facts rows={[[t("hand-over.carrier"), seen.carrier], ...moves]} />
    </Panel>
  );
};

/** What was agreed for the case of damage, and after that what to do next: the claim as the buyer keeps it. */
const Claim = ({ seen }: Props) => {
  const t = useText();
  const ahead = seen.state === "arranged" || seen.state === "called-off";
  const next = seen.delivery === null ? "hand-over.claim.not-arrived" : "hand-over.claim.next";
  return (
    <Panel title={t(ahead ? "hand-over.terms" : "hand-over.claim")}>
      <div className={styles.stack}>
        {seen.terms !== null && <Terms seen={seen} terms={seen.terms} />}
        {!ahead && (
          <>
            <p>{t(next)}</p>
            <OwnMoves seen={seen} />
          </>
        )}
      </div>
    </Panel>
  );
};

const Own = ({ seen }: Props) => {
  const t = useText();
  const isCarried = seen.state === "arranged" || seen.state === "collected";
  return (
    <>
      <Claim seen={seen} />
      {isCarried && <RenewLink id={seen.id} />}
      {seen.state === "arranged" && (
        <Panel title={t("hand-over.call-off")}>
          <OwnMoves seen={seen} />
        </Panel>
      )}
    </>
  );
};

const Papers = ({ seen }: Props) => {
  const source = ownSource(seen.pictures);
  const reports = [seen.delivery, seen.collection].filter((each) => each !== null);
  return (
    <>
      {seen.compared !== null && <Compared compared={seen.compared} source={source} />}
      {seen.as === "buyer" && <Own seen={seen} />}
      <Stands seen={seen} />
      {reports.map((report) => (
        <SignedReport key={report.stage} report={report}>
          <ReportPictures source={source} stage={report.stage} originals={seen.as === "buyer"} />
        </SignedReport>
      ))}
    </>
  );
};

/** A bought car on its way, and after: both reports, what is on one and not on the other, and the claim. */
export const HandOverPage = () => {
  const t = useText();
  const name = useCarName();
  const { handOver: id } = route.useParams();
  const { data: seen, error } = useQuery(handOverQuery(id));
  if (error) {
    return (
      <Page title={t("hand-over.section")} narrow>
        <ProblemNotice error={error} />
      </Page>
    );
  }
  if (!seen) return <Loading />;
  return (
    <Page
      title={t("hand-over.title", { car: name(seen.car) })}
      over={
        <Link to="/cases/$case" params={{ case: seen.case }}>
          {t("cases.title")}
        </Link>
      }
      under={t(`hand-over.state.${seen.state}`)}
    >
      <Papers seen={seen} />
    </Page>
  );
};
