import { ActionIcon, Button } from "@mantine/core";
import { IconFile, IconTrash } from "@tabler/icons-react";
import type { EvidenceOwned } from "@evenhand/shared/http/evidence";
import { useCallback } from "react";
import { useIntl } from "react-intl";
import type { KeptUpload } from "../../offline/store";
import { addressOf } from "../../service/client";
import { useText } from "../../strings/text";
import { ProgressBar } from "../../ui/ProgressBar";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { ownedWord, type FileRow } from "./file-rows";
import styles from "./PlaceFiles.module.css";
import { PutBack } from "./PutBack";
import type { ReportFiles } from "./report-files";
import { useMove } from "./use-take-away";

interface Of<T> {
  readonly one: T;
  readonly files: ReportFiles;
}

interface Opens {
  /** Shows one large. */
  readonly onOpen: (id: string) => void;
}

interface Again {
  /** Asks for another photograph in the stead of this one. */
  readonly onAgain: () => void;
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
      <ProgressBar value={sent} max={all} label={t("evidence.progress", { name: kept.name })} />
    </>
  );
};

/** What speaks for taking it again. Both may stay: it is the person who decides. */
const Advice = ({ advice, onAgain }: Again & { readonly advice: KeptUpload["advice"] }) => {
  const t = useText();
  if (advice === undefined || advice.length === 0) return null;
  return (
    <>
      {advice.map(({ advice: of, words }) => (
        <p key={of} className={styles.refused}>
          {words}
        </p>
      ))}
      <Button variant="default" size="compact-md" onClick={onAgain}>
        {t("evidence.take-again")}
      </Button>
    </>
  );
};

/** The service does not take it, and why. */
const Refused = ({ why, onRetry }: { readonly why: string; readonly onRetry: () => void }) => {
  const t = useText();
  return (
    <>
      <p className={styles.refused}>{t("evidence.not-taken", { why })}</p>
      <Button variant="subtle" size="compact-sm" onClick={onRetry}>
        {t("problem.again")}
      </Button>
    </>
  );
};

/** On this device: the service has not got all of it. */
const OnDevice = ({
  one,
  sent,
  files,
  onAgain,
}: Of<KeptUpload> & Again & { readonly sent: number | undefined }) => {
  const { refusal } = one;
  return (
    <li className={styles.file} data-word={refusal === undefined ? "waiting" : "not-taken"}>
      <KeptPreview file={one.file} />
      <div className={styles.said}>
        <p className={styles.name}>{one.name}</p>
        {refusal === undefined ? (
          <>
            <Progressing row={{ at: "device", kept: one, sent }} files={files} />
            <Advice advice={one.advice} onAgain={onAgain} />
          </>
        ) : (
          <Refused why={refusal.detail} onRetry={() => void files.uploads.retry(one.id)} />
        )}
      </div>
      <TakeAway name={one.name} onPress={() => void files.uploads.remove(one)} />
    </li>
  );
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

/** How far it has come with the service, or why it was not taken. */
const HowFar = ({ file }: { readonly file: EvidenceOwned }) => {
  const t = useText();
  const word = ownedWord(file);
  return word === "not-taken" ? (
    <p className={styles.refused}>{t("evidence.not-taken", { why: file.refused?.words ?? "" })}</p>
  ) : (
    <p className={styles.word}>{word !== "taken-away" && word !== "dropped-part" && t(`evidence.${word}`)}</p>
  );
};

/** With the service: looked at, ready, or not taken. */
const WithService = ({ one, files, onOpen, onAgain }: Of<EvidenceOwned> & Opens & Again) => {
  const move = useMove(files.report);
  const word = ownedWord(one);
  if (word === "dropped-part") return null;
  if (word === "taken-away")
    return (
      <li className={styles.gone}>
        <PutBack name={one.name} onPress={() => move.mutate({ id: one.id, move: "restore" })} />
      </li>
    );
  return (
    <li className={styles.file} data-word={word}>
      <Shown file={one} onOpen={onOpen} />
      <div className={styles.said}>
        <p className={styles.name}>{one.name}</p>
        <HowFar file={one} />
        {word === "ready" && one.sealedIn === null && (
          <Advice advice={one.quality?.advice} onAgain={onAgain} />
        )}
        {move.error !== null && <ProblemNotice error={move.error} />}
      </div>
      {one.sealedIn === null && (
        <TakeAway name={one.name} onPress={() => move.mutate({ id: one.id, move: "remove" })} />
      )}
    </li>
  );
};

/** One file at a place, wherever it stands. */
export const FileLine = ({
  row,
  files,
  onOpen,
  onAgain,
}: Opens & Again & { readonly row: FileRow; readonly files: ReportFiles }) =>
  row.at === "device" ? (
    <OnDevice one={row.kept} sent={row.sent} files={files} onAgain={onAgain} />
  ) : (
    <WithService one={row.file} files={files} onOpen={onOpen} onAgain={onAgain} />
  );
