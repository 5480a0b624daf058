import { useQuery } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useMemo } from "react";
import type { KeptDraft } from "../../offline/store";
import { type Draft, useDraft } from "../../offline/use-draft";
import { useText } from "../../strings/text";
import { Loading } from "../../ui/Loading";
import { Notice } from "../../ui/Notice";
import { Page } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { sheetQuery } from "../../entities/sheet/load-sheet";
import type { SheetIndex } from "../../entities/sheet/sheet-index";
import { ChooseFile } from "../../features/readings/ChooseFile";
import { reviewOf } from "../../features/readings/review";
import { ReviewLines } from "../../features/readings/ReviewLines";
import { useReading } from "../../features/readings/use-reading";
import { SaveState } from "../../features/reports/SaveState";

const route = getRouteApi("/signed-in/reports/$report/reading");

interface Props {
  readonly reportId: string;
  readonly draft: Draft;
  readonly kept: KeptDraft["draft"];
  readonly index: SheetIndex;
}

type Reading = ReturnType<typeof useReading>;
type RestProps = Props & { readonly reading: Reading; readonly held: NonNullable<Reading["held"]> };

const Gone = ({ kept, reading, held, ...of }: RestProps) => {
  const { read, deeds } = held.kept;
  const review = useMemo(() => reviewOf(read), [read]);
  return (
    <ReviewLines
      key={held.nth}
      {...of}
      report={{ ...kept.report, findings: [] }}
      reading={{ review, deeds, onDeeds: reading.keepDeeds }}
      address={reading.address}
    />
  );
};

const Before = () => {
  const t = useText();
  return (
    <Notice kind="note" title={t("reading.before")}>
      <p>{t("reading.before.what")}</p>
    </Notice>
  );
};

const OpenReading = (of: Props) => {
  const { reportId, draft, kept } = of;
  const t = useText();
  const reading = useReading(reportId);
  const { held, address, error } = reading;
  const { kind, vehicle } = kept.report;
  const { make, model, modelYear: year } = vehicle;
  const back = (
    <Link to="/reports/$report" params={{ report: reportId }}>
      {t("reading.back")}
    </Link>
  );
  const asked = { error, address, reading: reading.reading, name: held?.kept.name ?? null };
  return (
    <Page
      title={t("reading.title", { kind, year, make, model })}
      over={back}
      under={<SaveState draft={draft} />}
    >
      <ChooseFile {...asked} onAddress={reading.watchAt} onFile={(file) => void reading.read(file)} />
      {held === undefined ? <Before /> : <Gone {...of} reading={reading} held={held} />}
    </Page>
  );
};

/** Captions or a sheet that somebody has, read for their draft and gone through line by line. */
export const ReadingPage = () => {
  const t = useText();
  const { report } = route.useParams();
  const draft = useDraft(report);
  const { draft: kept, remote } = draft;
  const named = kept?.report.sheet;
  const index = useQuery({
    ...sheetQuery(named?.id ?? "", named?.version ?? 0),
    enabled: named !== undefined,
  });
  const error = remote.error ?? index.error;
  if (error) {
    return (
      <Page title={t("reading.title.unknown")} narrow>
        <ProblemNotice error={error} />
      </Page>
    );
  }
  if (kept === undefined || index.data === undefined) return <Loading />;
  return <OpenReading reportId={report} draft={draft} kept={kept} index={index.data} />;
};
