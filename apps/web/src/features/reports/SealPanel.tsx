import { Button, Checkbox } from "@mantine/core";
import type { Report } from "@evenhand/shared/report";
import { useState } from "react";
import { useIntl } from "react-intl";
import { NotReadyToSeal } from "../../offline/before-seal";
import { saveWord } from "../../offline/save-state";
import { Refusal } from "../../service/refusal";
import { useText } from "../../strings/text";
import { Notice } from "../../ui/Notice";
import { Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { fileName, fileWord, isOnItsWay } from "../../entities/evidence/file-rows";
import { useReportFiles } from "../../entities/evidence/report-files";
import type { Place } from "../../entities/sheet/places";
import { PlaceList } from "./PlaceList";
import type { Draft } from "../../offline/use-draft";
import { SecondLook } from "./SecondLook";
import { faultyPlaces, sealView, type SealView } from "./seal-view";
import styles from "./SealPanel.module.css";
import type { SheetSearch } from "./sheet-search";
import { useSeal } from "./use-seal";

interface Props {
  readonly reportId: string;
  readonly report: Report;
  readonly draft: Draft;
  readonly places: readonly Place[];
  readonly onGo: (change: SheetSearch) => void;
  /** Every line of `places` is asked; else those are that stand on every sheet. */
  readonly allAsked?: boolean;
}

const kindOf = ({ kind }: Report) => (kind === "inspection" ? "inspection" : "statement");

const noFiles: readonly never[] = [];

/** Photographs and papers of this report that are still on their way, and that were not taken. */
const useSealFiles = () => {
  const files = useReportFiles();
  const rows = files?.rows ?? noFiles;
  return {
    missing: files?.missing ?? noFiles,
    onTheirWay: rows.filter(isOnItsWay),
    notTaken: rows.filter((row) => fileWord(row) === "not-taken"),
  };
};

type SealFiles = ReturnType<typeof useSealFiles>;

const FileChecks = ({ onTheirWay, notTaken, missing }: SealFiles) => {
  const t = useText();
  const intl = useIntl();
  const values = (names: readonly string[]) => ({
    count: names.length,
    names: intl.formatList(names, { type: "unit" }),
  });
  const asked = missing.map(({ words }) => words);
  return (
    <>
      {onTheirWay.length > 0 && <li data-ok={false}>{t("seal.files", values(onTheirWay.map(fileName)))}</li>}
      {notTaken.length > 0 && (
        <li data-ok={false}>{t("seal.files.not-taken", values(notTaken.map(fileName)))}</li>
      )}
      {asked.length > 0 && <li>{t("seal.files.missing", values(asked))}</li>}
    </>
  );
};

/** Findings that are not with the service yet. */
const Arriving = ({ keeping, waiting }: { readonly keeping: boolean; readonly waiting: number }) => {
  const t = useText();
  return (
    <>
      {keeping && <li data-ok={false}>{t("seal.keeping")}</li>}
      {waiting > 0 && <li data-ok={false}>{t("seal.waiting", { count: waiting })}</li>}
    </>
  );
};

type ChecksProps = Props & { readonly view: SealView; readonly files: SealFiles };

/** What has arrived, what stands in the way of the seal, and what it would leave open. */
const Checks = ({ view, report, draft, onGo, allAsked, files }: ChecksProps) => {
  const t = useText();
  const { standing } = draft;
  const { answered, all, blocks, held, open } = view;
  const asked = allAsked === true ? "seal.open.asked" : (`seal.open.${kindOf(report)}` as const);
  return (
    <ul className={styles.checks}>
      <li data-ok={answered > 0}>{t("seal.answered", { answered, all })}</li>
      <Arriving keeping={blocks.includes("keeping")} waiting={standing.waiting} />
      <FileChecks {...files} />
      {saveWord(standing) === "saved" && files.onTheirWay.length === 0 && (
        <li data-ok={true}>{t("seal.sent")}</li>
      )}
      {held.map(({ what, places }) => (
        <li key={what} data-ok={false}>
          {t(`seal.${what}`, { count: places.length })}
          <PlaceList places={places} onGo={onGo} />
        </li>
      ))}
      {open.length > 0 && (
        <li>
          {t(asked, { count: open.length })}
          <PlaceList places={open} onGo={onGo} />
        </li>
      )}
    </ul>
  );
};

const NotReady = ({
  reason: { why, places: keys },
  places,
  onGo,
}: Pick<Props, "places" | "onGo"> & { readonly reason: NotReadyToSeal["reason"] }) => {
  const t = useText();
  return (
    <Notice kind="refusal" title={t(`seal.${why}`, { count: keys.length })}>
      <p>{t(`seal.${why}.what`)}</p>
      <PlaceList places={places.filter(({ key }) => keys.includes(key))} onGo={onGo} />
    </Notice>
  );
};

/** Why it was not sealed, and at which places. */
const NotSealed = ({ error, places, onGo }: Pick<Props, "places" | "onGo"> & { readonly error: unknown }) => {
  if (error === null) return null;
  if (error instanceof NotReadyToSeal) return <NotReady reason={error.reason} places={places} onGo={onGo} />;
  const problems = error instanceof Refusal ? (error.problem.problems ?? []) : [];
  const faulty = faultyPlaces(places, problems);
  return (
    <>
      <ProblemNotice error={error} />
      {faulty.length > 0 && <PlaceList places={faulty} onGo={onGo} />}
    </>
  );
};

interface DoProps {
  readonly kind: ReturnType<typeof kindOf>;
  readonly blocked: boolean;
  readonly seal: ReturnType<typeof useSeal>;
}

/** What sealing means, said before it is done. */
const SealIt = ({ kind, blocked, seal }: DoProps) => {
  const t = useText();
  const [understood, setUnderstood] = useState(false);
  return (
    <>
      <Notice kind="note" title={t("seal.means")}>
        <p>{t(`seal.means.${kind}`)}</p>
      </Notice>
      <Checkbox
        size="md"
        label={t(`seal.understood.${kind}`)}
        checked={understood}
        onChange={(event) => setUnderstood(event.currentTarget.checked)}
      />
      <div>
        <Button
          size="md"
          disabled={blocked || !understood}
          loading={seal.isPending}
          onClick={() => seal.mutate()}
        >
          {t(`seal.do.${kind}`)}
        </Button>
      </div>
    </>
  );
};

/** What stands between the draft and its seal, and what sealing means. */
export const SealPanel = (props: Props) => {
  const { reportId, report, draft, places, onGo, allAsked = false } = props;
  const t = useText();
  const seal = useSeal(reportId, draft.draft?.visit);
  const [lookError, setLookError] = useState<unknown>(null);
  const view = sealView(places, draft.findings, draft.standing, allAsked);
  const kind = kindOf(report);
  const files = useSealFiles();
  const blocked = view.blocks.length > 0 || files.onTheirWay.length > 0;
  return (
    <Panel title={t(`seal.title.${kind}`)} hint={t("seal.hint")}>
      <Checks {...props} view={view} files={files} />
      <NotSealed error={seal.error ?? lookError} places={places} onGo={onGo} />
      {kind === "inspection" && (
        <SecondLook {...{ reportId, draft, places, onGo, blocked }} onError={setLookError} />
      )}
      <SealIt kind={kind} blocked={blocked} seal={seal} />
    </Panel>
  );
};
