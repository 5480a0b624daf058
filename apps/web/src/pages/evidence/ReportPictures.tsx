import { useQuery } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useText } from "../../strings/text";
import { Loading } from "../../ui/Loading";
import { Page } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { versionEvidenceQuery } from "../../entities/evidence/queries";
import type { Picture } from "../../entities/evidence/pictures";
import { versionQuery } from "../../entities/report/queries";
import { Gallery } from "../../features/evidence/Gallery";
import { useSheetPlaces } from "../../features/evidence/use-sheet-places";

const route = getRouteApi("/signed-in/report-versions/$version/pictures");

/** What a sealed version shows, with the side it is from. */
const usePictures = (id: string) => {
  const version = useQuery(versionQuery(id));
  const evidence = useQuery(versionEvidenceQuery(id));
  const side = version.data?.kind === "inspection" ? "inspection" : "statement";
  const pictures = evidence.data?.map((one): Picture => ({ ...one, side }));
  return { error: version.error ?? evidence.error, version: version.data, pictures };
};

/** Which picture is shown large stands in the address. */
const useOpen = () => {
  const navigate = route.useNavigate();
  return (open: string | undefined): void =>
    void navigate({ search: { picture: open }, replace: true, resetScroll: false });
};

/** The pictures of one sealed report. */
export const ReportPictures = () => {
  const t = useText();
  const { version: id } = route.useParams();
  const { picture } = route.useSearch();
  const onOpen = useOpen();
  const { error, version, pictures } = usePictures(id);
  const places = useSheetPlaces();
  if (error === null && (version === undefined || pictures === undefined)) return <Loading />;
  const title = version && t("reader.title", { kind: version.kind, version: version.version });
  return (
    <Page
      title={title === undefined ? t("gallery.title.bare") : t("gallery.title", { of: title })}
      over={
        <Link to="/report-versions/$version" params={{ version: id }}>
          {t("gallery.back.report")}
        </Link>
      }
      under={pictures && t("gallery.under", { count: pictures.length })}
    >
      {error !== null && <ProblemNotice error={error} />}
      {pictures && <Gallery pictures={pictures} places={places} open={picture} onOpen={onOpen} />}
    </Page>
  );
};
