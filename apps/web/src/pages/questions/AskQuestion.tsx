import { useQuery } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useText } from "../../strings/text";
import { RefusedPage } from "../../ui/Failed";
import { Loading } from "../../ui/Loading";
import { Page, Panel } from "../../ui/Page";
import { sheetQuery } from "../../entities/sheet/load-sheet";
import { useCarName } from "../../entities/car/CarName";
import { carQuery } from "../../entities/car/queries";
import { AskForm } from "../../features/questions/AskForm";

const route = getRouteApi("/signed-in/cars/$vehicle/ask");

/** A buyer asks the dealer about one item. */
export const AskQuestion = () => {
  const t = useText();
  const name = useCarName();
  const { vehicle } = route.useParams();
  const { item = "", position = "" } = route.useSearch();
  const car = useQuery(carQuery(vehicle));
  const index = useQuery(sheetQuery("evenhand", 1));
  const error = car.error ?? index.error;
  if (error) return <RefusedPage title={t("questions.ask.title")} error={error} />;
  if (!car.data || !index.data) return <Loading />;
  return (
    <Page
      title={t("questions.ask.title")}
      under={t("questions.ask.under")}
      over={
        <Link to="/cars/$vehicle" params={{ vehicle }}>
          {name(car.data.vehicle)}
        </Link>
      }
      narrow
    >
      <Panel>
        <AskForm car={car.data} index={index.data} begun={{ item, position }} />
      </Panel>
    </Page>
  );
};
