import type { CaseSeen } from "@evenhand/shared/http/cases";
import { useQuery } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useCarName } from "../../entities/car/CarName";
import { caseQuery } from "../../entities/case/queries";
import { LandedForm } from "../../features/money/LandedForm";
import { LandedHistory } from "../../features/money/LandedHistory";
import { LandedLines } from "../../features/money/LandedLines";
import { landedCostQuery, transportRatesQuery } from "../../features/money/queries";
import { Worth } from "../../features/money/Worth";
import { RatesForm } from "../../features/money/RatesForm";
import { useText } from "../../strings/text";
import { RefusedPage } from "../../ui/Failed";
import { Loading } from "../../ui/Loading";
import { Page } from "../../ui/Page";

const route = getRouteApi("/signed-in/cases/$case/landed-cost");

const OverCase = ({ id, car }: { readonly id: string; readonly car: CaseSeen["car"] }) => {
  const t = useText();
  const name = useCarName();
  return (
    <Link to="/cases/$case" params={{ case: id }}>
      {t("case.link", { car: name(car) })}
    </Link>
  );
};

/** What a car comes to at its buyer's door, what the buyer enters for it, and the buyer's transport rates. */
export const LandedCostPage = () => {
  const t = useText();
  const { case: id } = route.useParams();
  const row = useQuery(caseQuery(id));
  const landed = useQuery(landedCostQuery(id));
  const rates = useQuery(transportRatesQuery);
  const error = row.error ?? landed.error ?? rates.error;
  if (error !== null) return <RefusedPage title={t("landed.title")} error={error} />;
  if (!row.data || !landed.data || !rates.data) return <Loading />;
  return (
    <Page
      title={t("landed.title")}
      over={<OverCase id={id} car={row.data.car} />}
      under={t("landed.under")}
      narrow
    >
      <LandedLines cost={landed.data.cost} />
      <Worth worth={landed.data.worth} />
      <LandedForm id={id} seen={landed.data} />
      <RatesForm seen={rates.data} />
      <LandedHistory id={id} />
    </Page>
  );
};
