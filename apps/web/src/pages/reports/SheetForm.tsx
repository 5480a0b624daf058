import type { Report } from "@evenhand/shared/report";
import { useQuery } from "@tanstack/react-query";
import { useCallback } from "react";
import { getRouteApi, Link } from "@tanstack/react-router";
import { isNotTheirs, isOnlyHere } from "../../offline/leaving";
import type { KeptDraft } from "../../offline/store";
import { useDraft } from "../../offline/use-draft";
import { useText } from "../../strings/text";
import { Loading } from "../../ui/Loading";
import { Notice } from "../../ui/Notice";
import { Page } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { sheetQuery } from "../../entities/sheet/load-sheet";
import { SaveState } from "../../features/reports/SaveState";
import { isWalked, type SheetSearch } from "../../features/reports/sheet-search";
import { Sheet } from "../../features/reports/Sheet";
import { Shut } from "../../features/reports/Shut";
import { WalkSheet } from "../../features/reports/walk/WalkSheet";

const route = getRouteApi("/signed-in/reports/$report");

/** A statement belongs to its car; an inspection to its visit, or to its order where no hour was booked. */
const WayBack = ({ draft }: { readonly draft: KeptDraft["draft"] }) => {
  const t = useText();
  const { vehicle, order, visit } = draft;
  // A draft kept on this device before drafts named their visit has none.
  if (visit !== null && visit !== undefined)
    return (
      <Link to="/appointments/$appointment" params={{ appointment: visit }}>
        {t("sheet.back.visit")}
      </Link>
    );
  if (order !== null)
    return (
      <Link to="/orders/$order" params={{ order }}>
        {t("sheet.back.order")}
      </Link>
    );
  return (
    <Link to="/cars/$vehicle" params={{ vehicle }}>
      {t("sheet.back")}
    </Link>
  );
};

/** The sheet of one draft. Its draft is read from this device where the service does not answer; the page must have loaded. */
export const SheetForm = () => {
  const t = useText();
  const { report: reportId } = route.useParams();
  const search = route.useSearch();
  const navigate = route.useNavigate();
  const draft = useDraft(reportId);
  const onSearch = useCallback(
    (change: SheetSearch) =>
      void navigate({ search: (old) => ({ ...old, ...change }), replace: true, resetScroll: false }),
    [navigate],
  );
  const named = draft.draft?.report.sheet;
  const index = useQuery({
    ...sheetQuery(named?.id ?? "", named?.version ?? 0),
    enabled: named !== undefined,
  });
  const shut = [draft.remote.error, draft.refusal].find(isNotTheirs);
  if (shut !== undefined)
    return (
      <Shut
        report={reportId}
        error={shut}
        onlyHere={[...draft.findings.values()].filter(isOnlyHere).length}
      />
    );
  if (draft.failure !== null) {
    return (
      <Page title={t("sheet.title.unknown")} narrow>
        <Notice kind="refusal" title={t("save.no-store")}>
          <p>{t("save.no-store.what")}</p>
        </Notice>
      </Page>
    );
  }
  if (draft.draft === undefined || index.data === undefined) {
    const failed = draft.remote.error ?? index.error;
    return failed ? (
      <Page title={t("sheet.title.unknown")} narrow>
        <ProblemNotice error={failed} />
      </Page>
    ) : (
      <Loading />
    );
  }
  const report: Report = { ...draft.draft.report, findings: [] };
  const { vehicle, kind } = report;
  const shown = { reportId, report, draft, index: index.data, search, onSearch };
  return (
    <Page
      title={t("sheet.title", {
        kind,
        year: vehicle.modelYear,
        make: vehicle.make,
        model: vehicle.model,
      })}
      over={<WayBack draft={draft.draft} />}
      under={<SaveState draft={draft} />}
    >
      {isWalked(search, kind) ? <WalkSheet {...shown} /> : <Sheet {...shown} />}
    </Page>
  );
};
