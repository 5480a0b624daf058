import { useQuery } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useText } from "../../strings/text";
import type { Picture } from "../../entities/evidence/pictures";
import { versionEvidenceQuery } from "../../entities/evidence/queries";
import { versionQuery } from "../../entities/report/queries";
import { GalleryPage } from "../../features/evidence/GalleryPage";

const route = getRouteApi("/signed-in/report-versions/$version/pictures");

/** The pictures of one sealed report. */
export const ReportPictures = () => {
  const t = useText();
  const { version: id } = route.useParams();
  const navigate = route.useNavigate();
  const version = useQuery(versionQuery(id));
  const evidence = useQuery(versionEvidenceQuery(id));
  const { kind, version: number } = version.data ?? {};
  const of =
    kind === undefined || number === undefined ? undefined : t("reader.title", { kind, version: number });
  const side = kind === "inspection" ? "inspection" : "statement";
  return (
    <GalleryPage
      of={of}
      over={
        <Link to="/report-versions/$version" params={{ version: id }}>
          {t("gallery.back.report")}
        </Link>
      }
      pictures={version.data && evidence.data?.map((one): Picture => ({ ...one, side }))}
      error={version.error ?? evidence.error}
      open={route.useSearch().picture}
      onOpen={(picture) => void navigate({ search: { picture }, replace: true, resetScroll: false })}
    />
  );
};
