import { useQuery } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useDraft } from "../../offline/use-draft";
import { useText } from "../../strings/text";
import { isOnItsWay, fileWord } from "../../entities/evidence/file-rows";
import { ownPicture, type Picture } from "../../entities/evidence/pictures";
import { useFilesOf, type ReportFiles } from "../../entities/evidence/report-files";
import { sheetQuery } from "../../entities/sheet/load-sheet";
import { AskedPictures } from "../../features/evidence/AskedPictures";
import { GalleryPage } from "../../features/evidence/GalleryPage";

const route = getRouteApi("/signed-in/reports/$report/pictures");

/** What has arrived and can be looked at; the rest stands on the sheet, where it can be sent again or taken away. */
const picturesOf = ({ rows, side }: ReportFiles): readonly Picture[] =>
  rows.flatMap((row) =>
    row.at === "service" && fileWord(row) === "ready" ? [ownPicture(row.file, side)] : [],
  );

/** How many files are not among the pictures yet, or will not be. */
const OnTheWay = ({ rows }: ReportFiles) => {
  const t = useText();
  const count = rows.filter((row) => isOnItsWay(row) || fileWord(row) === "not-taken").length;
  return count === 0 ? null : <p>{t("gallery.on-way", { count })}</p>;
};

/** The draft, its files, and the sheet it answers. */
const useDraftOf = (report: string) => {
  const { draft, remote } = useDraft(report);
  const kind = draft?.report.kind === "inspection" ? ("inspection" as const) : ("statement" as const);
  const files = useFilesOf(report, kind);
  const named = draft?.report.sheet;
  const index = useQuery({
    ...sheetQuery(named?.id ?? "", named?.version ?? 0),
    enabled: named !== undefined,
  });
  return { kind, files, index: index.data, car: draft?.report.vehicle, error: draft ? null : remote.error };
};

/** The pictures of a report that is being written: what is there, and what the sheet asks for and is not. */
export const DraftPictures = () => {
  const t = useText();
  const { report } = route.useParams();
  const navigate = route.useNavigate();
  const { kind, files, index, car, error } = useDraftOf(report);
  const named = car && { kind, year: car.modelYear, make: car.make, model: car.model };
  return (
    <GalleryPage
      of={named && t("gallery.of-draft.title", named)}
      over={
        <Link to="/reports/$report" params={{ report }}>
          {t("gallery.back.sheet")}
        </Link>
      }
      pictures={car && files.known ? picturesOf(files) : undefined}
      error={error}
      open={route.useSearch().picture}
      onOpen={(picture) => void navigate({ search: { picture }, replace: true, resetScroll: false })}
      noneYet={t("gallery.draft.none.hint")}
      report={report}
    >
      <OnTheWay {...files} />
      {index && files.known && <AskedPictures report={report} missing={files.missing} index={index} />}
    </GalleryPage>
  );
};
