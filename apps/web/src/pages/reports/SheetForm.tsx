import type { Report } from "@evenhand/shared/report";
import { useQuery } from "@tanstack/react-query";
import { useCallback, useMemo } from "react";
import { getRouteApi, Link } from "@tanstack/react-router";
import { isNotTheirs, isOnlyHere } from "../../offline/leaving";
import type { KeptDraft } from "../../offline/store";
import { type Draft, useDraft } from "../../offline/use-draft";
import { useText } from "../../strings/text";
import { Loading } from "../../ui/Loading";
import { Notice } from "../../ui/Notice";
import { Page } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { TableLinks } from "../../ui/TableLinks";
import { ReportFilesProvider, useFilesOf } from "../../entities/evidence/report-files";
import { sheetQuery } from "../../entities/sheet/load-sheet";
import type { SheetIndex } from "../../entities/sheet/sheet-index";
import { askedPlaces, LookAgainProvider } from "../../features/reports/look-again";
import { SaveState } from "../../features/reports/SaveState";
import { isWalked, type SheetSearch } from "../../features/reports/sheet-search";
import { Sheet } from "../../features/reports/Sheet";
import { Shut } from "../../features/reports/Shut";
import { WalkSheet } from "../../features/reports/walk/WalkSheet";
import { WayBack } from "./WayBack";

const route = getRouteApi("/signed-in/reports/$report");

/** In place of a sheet that is not to be had: why. */
const NoSheet = ({ draft, error }: { readonly draft: Draft; readonly error: unknown }) => {
  const t = useText();
  const why =
    draft.failure === null ? (
      <ProblemNotice error={error} />
    ) : (
      <Notice kind="refusal" title={t("save.no-store")}>
        <p>{t("save.no-store.what")}</p>
      </Notice>
    );
  return (
    <Page title={t("sheet.title.unknown")} narrow>
      {why}
    </Page>
  );
};

interface OpenProps {
  readonly reportId: string;
  readonly draft: Draft;
  readonly kept: KeptDraft["draft"];
  readonly index: SheetIndex;
}

/** Where one came from, what may be read in, and the draft as a table. */
const OverSheet = ({ reportId, kept }: Pick<OpenProps, "reportId" | "kept">) => {
  const t = useText();
  return (
    <>
      <WayBack draft={kept} />
      {" · "}
      <Link to="/reports/$report/reading" params={{ report: reportId }}>
        {t("reading.open")}
      </Link>
      {" · "}
      <Link to="/reports/$report/pictures" params={{ report: reportId }}>
        {t("gallery.of-draft")}
      </Link>
      {" · "}
      <TableLinks of="reports.table" id={reportId} />
    </>
  );
};

/** The sheet, walked or by sections as the address says. */
const OpenSheet = ({ reportId, draft, kept, index }: OpenProps) => {
  const t = useText();
  const search = route.useSearch();
  const navigate = route.useNavigate();
  const onSearch = useCallback(
    (change: SheetSearch) =>
      void navigate({ search: (old) => ({ ...old, ...change }), replace: true, resetScroll: false }),
    [navigate],
  );
  const again = useMemo(() => askedPlaces(kept.secondLook), [kept.secondLook]);
  const files = useFilesOf(reportId, kept.report.kind === "inspection" ? "inspection" : "statement");
  const report: Report = { ...kept.report, findings: [] };
  const { vehicle, kind } = report;
  const { modelYear: year, make, model } = vehicle;
  const shown = { reportId, report, draft, index, search, onSearch };
  return (
    <Page
      title={t("sheet.title", { kind, year, make, model })}
      over={<OverSheet reportId={reportId} kept={kept} />}
      under={<SaveState draft={draft} />}
    >
      <LookAgainProvider value={again}>
        <ReportFilesProvider value={files}>
          {isWalked(search, kind) ? <WalkSheet {...shown} /> : <Sheet {...shown} />}
        </ReportFilesProvider>
      </LookAgainProvider>
    </Page>
  );
};

/** The sheet of one draft. Its draft is read from this device where the service does not answer; the page must have loaded. */
export const SheetForm = () => {
  const { report } = route.useParams();
  const draft = useDraft(report);
  const { draft: kept, failure, remote, refusal, findings } = draft;
  const named = kept?.report.sheet;
  const index = useQuery({
    ...sheetQuery(named?.id ?? "", named?.version ?? 0),
    enabled: named !== undefined,
  });
  const shut = [remote.error, refusal].find(isNotTheirs);
  if (shut !== undefined) {
    const onlyHere = [...findings.values()].filter(isOnlyHere).length;
    return <Shut report={report} error={shut} onlyHere={onlyHere} />;
  }
  if (failure === null && kept !== undefined && index.data !== undefined)
    return <OpenSheet reportId={report} draft={draft} kept={kept} index={index.data} />;
  const error = remote.error ?? index.error;
  return failure !== null || error ? <NoSheet draft={draft} error={error} /> : <Loading />;
};
