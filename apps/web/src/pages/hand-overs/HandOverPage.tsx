import type { HandOverSeen } from "@evenhand/shared/http/hand-overs";
import { useQuery } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useIntl } from "react-intl";
import { useCarName } from "../../entities/car/CarName";
import styles from "../../features/hand-overs/HandOvers.module.css";
import { OwnMoves, RenewLink } from "../../features/hand-overs/Moves";
import { handOverQuery } from "../../features/hand-overs/queries";
import { Compared, SignedReport } from "../../features/hand-overs/Reports";
import { SetTerms } from "../../features/hand-overs/SetTerms";
import { useText } from "../../strings/text";
import { Loading } from "../../ui/Loading";
import { Facts, Page, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";

const route = getRouteApi("/signed-in/hand-overs/$handOver");

interface Props {
  readonly seen: HandOverSeen;
}

/** What was agreed, in the words of the papers; what was not entered says so. */
const useTermsRows = ({ terms }: HandOverSeen): (readonly [string, string])[] => {
  const t = useText();
  const intl = useIntl();
  if (terms === null) return [];
  const { claimDeadline: deadline, riskPasses } = terms;
  const until = deadline?.until ?? null;
  return [
    [t("hand-over.deadline"), deadline?.words ?? t("hand-over.deadline.unset")],
    ...(deadline === null ? [] : [[t("hand-over.deadline.source"), deadline.source] as const]),
    ...(until === null
      ? []
      : [
          [
            t("hand-over.deadline.until.seen"),
            intl.formatDate(until, { dateStyle: "medium", timeStyle: "short" }),
          ] as const,
        ]),
    [t("hand-over.risk"), riskPasses ?? t("hand-over.risk.unset")],
  ];
};

/** Nothing can follow, so its terms stay as they were. */
const isOver = ({ state }: HandOverSeen): boolean => state === "called-off" || state === "claim-closed";

const Stands = ({ seen }: Props) => {
  const t = useText();
  const intl = useIntl();
  const terms = useTermsRows(seen);
  const moves = seen.moves.map(({ move, at, note }) => {
    const time = intl.formatDate(at, { dateStyle: "medium", timeStyle: "short" });
    return [
      time,
      intl.formatList([t(`hand-over.move.${move}`), ...(note === null ? [] : [note])], { type: "unit" }),
    ] as const;
  });
  return (
    <Panel title={t("hand-over.stands")}>
      <Facts rows={[[t("hand-over.carrier"), seen.carrier], ...terms, ...moves]} />
      {seen.terms !== null && !isOver(seen) && <SetTerms seen={seen} terms={seen.terms} />}
    </Panel>
  );
};

/** After delivery: what to do next, and the claim as the buyer keeps it; before it, a claim that the car does not arrive. */
const Claim = ({ seen }: Props) => {
  const t = useText();
  return (
    <Panel title={t("hand-over.claim")}>
      <div className={styles.stack}>
        <p>{t(seen.delivery === null ? "hand-over.claim.not-arrived" : "hand-over.claim.next")}</p>
        <OwnMoves seen={seen} />
      </div>
    </Panel>
  );
};

const Own = ({ seen }: Props) => {
  const t = useText();
  if (seen.state === "called-off") return null;
  if (seen.state === "arranged")
    return (
      <>
        <RenewLink id={seen.id} />
        <Panel title={t("hand-over.call-off")}>
          <OwnMoves seen={seen} />
        </Panel>
      </>
    );
  return (
    <>
      {seen.state === "collected" && <RenewLink id={seen.id} />}
      <Claim seen={seen} />
    </>
  );
};

const Papers = ({ seen }: Props) => (
  <>
    {seen.compared !== null && <Compared compared={seen.compared} />}
    <Stands seen={seen} />
    {seen.as === "buyer" && <Own seen={seen} />}
    {seen.delivery !== null && <SignedReport report={seen.delivery} />}
    {seen.collection !== null && <SignedReport report={seen.collection} />}
  </>
);

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
