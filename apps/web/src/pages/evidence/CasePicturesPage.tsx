import { useQuery } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useText } from "../../strings/text";
import { useCarName } from "../../entities/car/CarName";
import { caseQuery } from "../../entities/case/queries";
import { caseEvidenceQuery } from "../../entities/evidence/queries";
import { GalleryPage } from "../../features/evidence/GalleryPage";

const route = getRouteApi("/signed-in/cases/$case/pictures");

/** What both sides show of one case's car. */
export const CasePicturesPage = () => {
  const t = useText();
  const name = useCarName();
  const { case: id } = route.useParams();
  const navigate = route.useNavigate();
  const { data, error } = useQuery(caseQuery(id));
  const evidence = useQuery(caseEvidenceQuery(id));
  return (
    <GalleryPage
      of={data && name(data.car)}
      over={
        <Link to="/cases/$case" params={{ case: id }}>
          {t("gallery.back.case")}
        </Link>
      }
      pictures={evidence.data}
      error={error ?? evidence.error}
      open={route.useSearch().picture}
      onOpen={(picture) => void navigate({ search: { picture }, replace: true, resetScroll: false })}
    />
  );
};
