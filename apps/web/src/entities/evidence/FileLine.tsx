import { ActionIcon, Button, Progress } from "@mantine/core";
import { IconFile, IconTrash } from "@tabler/icons-react";
import type { EvidenceOwned } from "@evenhand/shared/http/evidence";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useCallback } from "react";
import { useIntl } from "react-intl";
import type { KeptUpload } from "../../offline/store";
import { evidenceKey } from "../../offline/evidence-key";
import { addressOf, call } from "../../service/client";
import { useText } from "../../strings/text";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { ownedWord, type FileRow } from "./file-rows";
import styles from "./PlaceFiles.module.css";
import { PutBack } from "./PutBack";
import type { ReportFiles } from "./report-files";

interface Of<T> {
  readonly one: T;
  readonly files: ReportFiles;
}

interface Opens {
  /** Shows one large. */
  readonly onOpen: (id: string) => void;
}

/** Megabytes, as a person counts them. */
const useMegabytes = (): ((bytes: number) => string) => {
  const intl = useIntl();
  return (bytes) =>
    intl.formatNumber(bytes / 1e6, {
      minimumFractionDigits: 1,
      maximumFractionDigits: 1,
      useGrouping: false,
    });
};

const Preview = ({ src }: { readonly src: string | undefined }) => (
  <span className={styles.preview}>
    <IconFile size={22} aria-hidden="true" />
    {src !== undefined && <img src={src} alt="" loading="lazy" decoding="async" />}
  </span>
);

/** A picture that is on this device, from its own bytes. */
const KeptPreview = ({ file }: { readonly file: Blob }) => {
  const show = useCallback(
    (img: HTMLImageElement | null) => {
      if (img === null) return undefined;
      const made = URL.createObjectURL(file);
      img.src = made;
      return () => URL.revokeObjectURL(made);
    },
    [file],
  );
  return (
    <span className={styles.preview}>
      <IconFile size={22} aria-hidden="true" />
      {/^image\/(jpeg|png|webp|avif)$/.test(file.type) && <img ref={show} alt="" />}
    </span>
  );
};

const TakeAway = ({ name, onPress }: { readonly name: string; readonly onPress: () => void }) => {
  const t = useText();
  return (
    <ActionIcon variant="default" size={42} aria-label={t("evidence.take-away", { name })} onClick={onPress}>
      <IconTrash size={18} aria-hidden="true" />
    </ActionIcon>
  );
};

/** Why it has not gone yet, or how far it has. */
const Progressing = ({
  row,
  files,
}: {
  readonly row: FileRow & { at: "device" };
  readonly files: ReportFiles;
}) => {
  const t = useText();
  const megabytes = useMegabytes();
  const { kept, sent } = row;
  const all = kept.file.size;
  if (sent === undefined) {
    const offline = files.uploads.line.state === "waiting-for-signal";
    return <p className={styles.word}>{t(offline ? "evidence.offline" : "evidence.waiting")}</p>;
  }
  const words = t("evidence.sending", { sent: megabytes(sent), all: megabytes(all) });
  return (
    <>
      <p className={styles.word}>{words}</p>
      <Progress
        value={(100 * sent) / Math.max(all, 1)}
        aria-label={t("evidence.progress", { name: kept.name })}
      />
    </>
  );
};

/** On this device: the service has not got all of it. */
const OnDevice = ({ one, sent, files }: Of<KeptUpload> & { readonly sent: number | undefined }) => {
  const t = useText();
  const { refusal } = one;
  return (
    <li className={styles.file} data-word={refusal === undefined ? "waiting" : "not-taken"}>
      <KeptPreview file={one.file} />
      <div className={styles.said}>
        <p className={styles.name}>{one.name}</p>
        {refusal === undefined ? (
          <Progressing row={{ at: "device", kept: one, sent }} files={files} />
        ) : (
          <>
            <p className={styles.refused}>{t("evidence.not-taken", { why: refusal.detail })}</p>
            <Button variant="subtle" size="compact-sm" onClick={() => void files.uploads.retry(one.id)}>
              {t("problem.again")}
            </Button>
          </>
        )}
      </div>
      <TakeAway name={one.name} onPress={() => void files.uploads.remove(one)} />
    </li>
  );
};

/** Takes a file with the service away from its place, or puts it back. */
const useMove = (id: string, report: string) => {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: (move: "remove" | "restore") => call(`evidence.${move}`, { params: { id } }),
    onSuccess: () => queries.invalidateQueries({ queryKey: evidenceKey(report) }),
  });
};

/** Small; pressed, it is shown large where it is a picture. */
const Shown = ({ file: { id, name, copies }, onOpen }: { readonly file: EvidenceOwned } & Opens) => {
  const t = useText();
  if (copies.length === 0) return <Preview src={undefined} />;
  return (
    <button
      type="button"
      className={styles.open}
      aria-label={t("evidence.open", { name })}
      onClick={() => onOpen(id)}
    >
      <Preview src={addressOf("evidence.small", { id })} />
    </button>
  );
};

/** What speaks for taking it again. Both may stay: it is the person who decides. */
const Advice = ({ file: { quality } }: { readonly file: EvidenceOwned }) =>
  quality?.advice.map(({ advice, words }) => (
    <p key={advice} className={styles.refused}>
      {words}
    </p>
  ));

/** With the service: looked at, ready, or not taken. */
const WithService = ({ one, files, onOpen }: Of<EvidenceOwned> & Opens) => {
  const t = useText();
  const move = useMove(one.id, files.report);
  const word = ownedWord(one);
  if (word === "dropped-part") return null;
  if (word === "taken-away")
    return (
      <li className={styles.gone}>
        <PutBack name={one.name} onPress={() => move.mutate("restore")} />
      </li>
    );
  return (
    <li className={styles.file} data-word={word}>
      <Shown file={one} onOpen={onOpen} />
      <div className={styles.said}>
        <p className={styles.name}>{one.name}</p>
        {word === "not-taken" ? (
          <p className={styles.refused}>{t("evidence.not-taken", { why: one.refused?.words ?? "" })}</p>
        ) : (
          <p className={styles.word}>{t(`evidence.${word}`)}</p>
        )}
        {word === "ready" && <Advice file={one} />}
        {move.error !== null && <ProblemNotice error={move.error} />}
      </div>
      {one.sealedIn === null && <TakeAway name={one.name} onPress={() => move.mutate("remove")} />}
    </li>
  );
};

/** One file at a place, wherever it stands. */
export const FileLine = ({
  row,
  files,
  onOpen,
}: Opens & { readonly row: FileRow; readonly files: ReportFiles }) =>
  row.at === "device" ? (
    <OnDevice one={row.kept} sent={row.sent} files={files} />
  ) : (
    <WithService one={row.file} files={files} onOpen={onOpen} />
  );
