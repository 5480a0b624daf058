import { useQuery } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useCarName } from "../../entities/car/CarName";
import { caseQuery } from "../../entities/case/queries";
import { BeforeMoney } from "../../features/money/BeforeMoney";
import { BeforeState } from "../../features/money/BeforeState";
import { beforeMoneyQuery } from "../../features/money/queries";
import { useText } from "../../strings/text";
import { RefusedPage } from "../../ui/Failed";
import { Loading } from "../../ui/Loading";
import { Notice } from "../../ui/Notice";
import { Page } from "../../ui/Page";

const route = getRouteApi("/signed-in/cases/$case/before-money");

/** What a buyer goes through before money moves. */
export const BeforeMoneyPage = () => {
  const t = useText();
  const name = useCarName();
  const { case: id } = route.useParams();
  const row = useQuery(caseQuery(id));
  const seen = useQuery(beforeMoneyQuery(id));
  const error = row.error ?? seen.error;
  if (error !== null) return <RefusedPage title={t("before.title")} error={error} />;
  if (!row.data || !seen.data) return <Loading />;
  const over = (
    <Link to="/cases/$case" params={{ case: id }}>
      {t("case.link", { car: name(row.data.car) })}
    </Link>
  );
  return (
    <Page title={t("before.title")} over={over} under={t("before.under")} narrow>
      <Notice kind="note">{t("before.plain")}</Notice>
      {!seen.data.bought && <Notice kind="note">{t("before.not-bought")}</Notice>}
      <BeforeState seen={seen.data} />
      <BeforeMoney id={id} seen={seen.data} />
    </Page>
  );
};
