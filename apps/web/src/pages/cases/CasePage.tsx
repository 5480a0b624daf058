import type { CaseSeen } from "@evenhand/shared/http/cases";
import { useQuery } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useIntl } from "react-intl";
import { useCarName } from "../../entities/car/CarName";
import { caseQuery } from "../../entities/case/queries";
import { CarPictures } from "../../entities/evidence/CarPictures";
import { caseEvidenceQuery } from "../../entities/evidence/queries";
import { DealerFirst } from "../../features/cases/DealerFirst";
import { CaseMatters } from "../../features/cases/CaseMatters";
import { CaseParts } from "../../features/cases/CaseParts";
import styles from "../../features/cases/Cases.module.css";
import { CaseWaits } from "../../features/cases/CaseWaits";
import { Way } from "../../features/cases/Way";
import { CollectPart } from "../../features/hand-overs/CollectPart";
import { useText } from "../../strings/text";
import { LinkButton } from "../../ui/LinkButton";
import { Loading } from "../../ui/Loading";
import { Facts, Page } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";

const route = getRouteApi("/signed-in/cases/$case");

const CaseFacts = ({ row }: { readonly row: CaseSeen }) => {
  const t = useText();
  const intl = useIntl();
  const { car, dealer, buyer, openedAt, as } = row;
  const unnamed = t(as === "dealer" ? "case.buyer.unnamed" : "case.buyer.hidden");
  return (
    <section className={styles.part}>
      <h2>{t("case.facts")}</h2>
      <Facts
        rows={[
          [t("car.identification"), car.identification],
          [t("car.dealer"), dealer.name],
          [t("order.buyer"), buyer?.name ?? unnamed],
          [t("case.opened"), intl.formatDate(openedAt, { dateStyle: "medium" })],
        ]}
      />
      <div>
        <LinkButton variant="default" to="/cars/$vehicle" params={{ vehicle: car.id }}>
          {t(as === "inspector" ? "case.car.inspector" : "case.car")}
        </LinkButton>
      </div>
    </section>
  );
};

/** Once it is bought, to those between whom it changes hands. */
const Collect = ({ row }: { readonly row: CaseSeen }) =>
  row.standing.stage === "collect" && row.as !== "inspector" ? (
    <CollectPart caseId={row.id} by={row.as} />
  ) : null;

/** Where the case stands, and everything that belongs to it. */
const CaseSheet = ({ row }: { readonly row: CaseSeen }) => {
  const t = useText();
  const pictures = useQuery(caseEvidenceQuery(row.id));
  return (
    <div className={styles.sheet}>
      <CarPictures pictures={pictures.data}>
        <Link to="/cases/$case/pictures" params={{ case: row.id }}>
          {t("evidence.all")}
        </Link>
      </CarPictures>
      <Way as={row.as} standing={row.standing} />
      <div className={styles.columns}>
        <div className={styles.sections}>
          <CaseWaits row={row} />
          <CaseMatters row={row} />
          <Collect row={row} />
          <CaseParts row={row} />
          <DealerFirst row={row} />
        </div>
        <CaseFacts row={row} />
      </div>
    </div>
  );
};

/** One buyer and one car: the way, where it stands, what waits for whom, and everything that belongs to it. */
export const CasePage = () => {
  const t = useText();
  const name = useCarName();
  const { case: id } = route.useParams();
  const { data: row, error } = useQuery(caseQuery(id));
  if (error) {
    return (
      <Page title={t("case.not-found")} narrow>
        <ProblemNotice error={error} />
      </Page>
    );
  }
  if (!row) return <Loading />;
  return (
    <Page title={name(row.car)} over={<Link to="/">{t("cases.title")}</Link>}>
      <CaseSheet row={row} />
    </Page>
  );
};
