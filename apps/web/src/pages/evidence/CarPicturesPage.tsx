import { useQuery } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useText } from "../../strings/text";
import { useCarName } from "../../entities/car/CarName";
import { carQuery } from "../../entities/car/queries";
import { carEvidenceQuery } from "../../entities/evidence/queries";
import { GalleryPage } from "../../features/evidence/GalleryPage";

const route = getRouteApi("/signed-in/cars/$vehicle/pictures");

/** What both sides show of a car, as far as the person may see it. */
export const CarPicturesPage = () => {
  const t = useText();
  const name = useCarName();
  const { vehicle: id } = route.useParams();
  const navigate = route.useNavigate();
  const { data, error } = useQuery(carQuery(id));
  const evidence = useQuery(carEvidenceQuery(id));
  return (
    <GalleryPage
      of={data && name(data.vehicle)}
      over={
        <Link to="/cars/$vehicle" params={{ vehicle: id }}>
          {t("gallery.back.car")}
        </Link>
      }
      pictures={evidence.data}
      error={error ?? evidence.error}
      open={route.useSearch().picture}
      onOpen={(picture) => void navigate({ search: { picture }, replace: true, resetScroll: false })}
    />
  );
};
