import { useQuery } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useState } from "react";
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
import { readChosen } from "../../features/readings/read-chosen";
import type { Review } from "../../features/readings/review";
import { ReviewLines } from "../../features/readings/ReviewLines";
import { SaveState } from "../../features/reports/SaveState";

const route = getRouteApi("/signed-in/reports/$report/reading");

/** One reading at a time; another file takes the place of the last. */
const useReading = (report: string) => {
  const [review, setReview] = useState<Review>();
  const [error, setError] = useState<unknown>(null);
  const [reading, setReading] = useState(false);
  const [nth, setNth] = useState(0);
  const read = async (file: File): Promise<void> => {
    setReading(true);
    setError(null);
    try {
      setReview(await readChosen(report, file));
      setNth((before) => before + 1);
    } catch (failure) {
      setError(failure);
    } finally {
      setReading(false);
    }
  };
  return { review, error, reading, nth, read };
};

interface Props {
  readonly reportId: string;
  readonly draft: Draft;
  readonly kept: KeptDraft["draft"];
  readonly index: SheetIndex;
}

type RestProps = Props & { readonly address: string; readonly review: Review; readonly nth: number };

const Gone = ({ kept, nth, ...of }: RestProps) => (
  <ReviewLines key={nth} {...of} report={{ ...kept.report, findings: [] }} />
);

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
  const { review, error, reading, nth, read } = useReading(reportId);
  const [address, setAddress] = useState("");
  const { kind, vehicle } = kept.report;
  const { make, model, modelYear: year } = vehicle;
  const back = (
    <Link to="/reports/$report" params={{ report: reportId }}>
      {t("reading.back")}
    </Link>
  );
  const asked = { reading, error, address, again: review !== undefined };
  return (
    <Page
      title={t("reading.title", { kind, year, make, model })}
      over={back}
      under={<SaveState draft={draft} />}
    >
      <ChooseFile {...asked} onAddress={setAddress} onFile={(file) => void read(file)} />
      {review === undefined ? <Before /> : <Gone {...of} address={address} review={review} nth={nth} />}
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
