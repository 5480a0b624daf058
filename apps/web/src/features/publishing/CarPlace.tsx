import { useQuery } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useText } from "../../strings/text";
import { Loading } from "../../ui/Loading";
import { Page } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { CarPlacePanel } from "../calendars/CarPlacePanel";
import { useCarName } from "../vehicles/CarName";
import { carQuery } from "../vehicles/queries";

const route = getRouteApi("/signed-in/cars/$vehicle/place");

/** The dealer says at which site the car stands; without it no hour can be offered. */
export const CarPlace = () => {
  const t = useText();
  const name = useCarName();
  const { vehicle } = route.useParams();
  const car = useQuery(carQuery(vehicle));
  if (car.error) {
    return (
      <Page title={t("place.title")} narrow>
        <ProblemNotice error={car.error} />
      </Page>
    );
  }
  if (!car.data) return <Loading />;
  return (
    <Page
      title={t("place.title")}
      under={t("place.under")}
      over={
        <Link to="/cars/$vehicle" params={{ vehicle }}>
          {name(car.data.vehicle)}
        </Link>
      }
      narrow
    >
      <CarPlacePanel vehicle={vehicle} />
    </Page>
  );
};
