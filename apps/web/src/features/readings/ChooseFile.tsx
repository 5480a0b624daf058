import { Button } from "@mantine/core";
import { IconFileText } from "@tabler/icons-react";
import { type ChangeEvent, useRef } from "react";
import { useText } from "../../strings/text";
import { TextField } from "../../ui/Fields";
import { Notice } from "../../ui/Notice";
import { Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { MOST_FILE_BYTES, TooLarge } from "./read-chosen";
import styles from "./Review.module.css";
import { videoSecond } from "./video-second";

const taken = ".vtt,.srt,.txt,.csv,.tsv,.xlsx,text/vtt,text/plain,text/csv";

interface Props {
  readonly reading: boolean;
  readonly error: unknown;
  readonly address: string;
  /** What was read already: another file takes its place. */
  readonly name: string | null;
  readonly onAddress: (address: string) => void;
  readonly onFile: (file: File) => void;
}

const Trouble = ({ error }: Pick<Props, "error">) => {
  const t = useText();
  if (error === null) return null;
  if (!(error instanceof TooLarge)) return <ProblemNotice error={error} />;
  return (
    <Notice kind="refusal" title={t("reading.too-large")}>
      <p>{t("reading.too-large.what", { most: Math.floor(MOST_FILE_BYTES / 1024 / 1024) })}</p>
    </Notice>
  );
};

/** Asks for a file; the same one may be chosen again. */
const FileButton = ({ reading, name, onFile }: Pick<Props, "reading" | "name" | "onFile">) => {
  const t = useText();
  const input = useRef<HTMLInputElement>(null);
  const take = ({ currentTarget }: ChangeEvent<HTMLInputElement>): void => {
    const [file] = currentTarget.files ?? [];
    if (file !== undefined) onFile(file);
    currentTarget.value = "";
  };
  return (
    <>
      <input ref={input} type="file" hidden accept={taken} onChange={take} />
      <Button
        variant={name === null ? "filled" : "default"}
        size="md"
        loading={reading}
        leftSection={<IconFileText size={18} aria-hidden="true" />}
        onClick={() => input.current?.click()}
      >
        {t("reading.file.choose")}
      </Button>
    </>
  );
};

/** The file to be read, and where its recording can be watched. */
export const ChooseFile = ({ error, address, onAddress, ...file }: Props) => {
  const t = useText();
  const wrong = address.trim() !== "" && videoSecond(address, 0) === undefined;
  return (
    <Panel title={t("reading.file")} hint={t("reading.file.hint")}>
      <Trouble error={error} />
      {file.name !== null && <p className={styles.name}>{t("reading.file.read", { name: file.name })}</p>}
      <div className={styles.choose}>
        <FileButton {...file} />
        <TextField
          type="url"
          label={t("reading.video")}
          description={t("reading.video.hint")}
          error={wrong ? t("reading.video.wrong") : undefined}
          value={address}
          onChange={onAddress}
        />
      </div>
    </Panel>
  );
};
