import { Button } from "@mantine/core";
import { IconCamera, IconPaperclip } from "@tabler/icons-react";
import { useRef, useState, type RefObject } from "react";
import { useText } from "../../strings/text";
import { filesFrom } from "../../ui/files-from";
import { Notice } from "../../ui/Notice";
import { FileLine } from "./FileLine";
import { fileWord, ownedWord, placeOf, rowKey, type FileRow } from "./file-rows";
import { LazyViewer } from "./LazyViewer";
import { isAt, ownPicture, type AtPlace, type Picture } from "./pictures";
import styles from "./PlaceFiles.module.css";
import { PutBack } from "./PutBack";
import { useReportFiles, type ReportFiles } from "./report-files";
import { useTakeAway } from "./use-take-away";

/** What the service takes; a telephone makes a JPEG of its own format where that is asked for. */
const taken = "image/jpeg,image/png,image/webp,image/avif,application/pdf,video/mp4,video/quicktime";

interface AddProps {
  readonly of: "camera" | "files";
  readonly onAdd: (files: readonly File[]) => void;
  readonly input: RefObject<HTMLInputElement | null>;
  /** Called before it is asked. */
  readonly onPress?: () => void;
}

/** Asks for a photograph from the camera, or for files. */
const Add = ({ of, onAdd, input, onPress }: AddProps) => {
  const t = useText();
  const Icon = of === "camera" ? IconCamera : IconPaperclip;
  return (
    <>
      <input
        ref={input}
        type="file"
        hidden
        data-of={of}
        accept={of === "camera" ? "image/*" : taken}
        capture={of === "camera" ? "environment" : undefined}
        multiple={of === "files"}
        onChange={({ currentTarget }) => onAdd(filesFrom(currentTarget))}
      />
      <Button
        variant="default"
        size="md"
        leftSection={<Icon size={18} aria-hidden="true" />}
        onClick={() => {
          onPress?.();
          input.current?.click();
        }}
      >
        {t(`evidence.add.${of}`)}
      </Button>
    </>
  );
};

/** What the sheet asks for here by name, and is not there. */
const Asked = ({ files: { missing }, place }: { readonly files: ReportFiles; readonly place: AtPlace }) => {
  const asked = missing.filter((one) => isAt(one, place));
  if (asked.length === 0) return null;
  return (
    <ul className={styles.asked}>
      {asked.map(({ as, words }) => (
        <li key={as}>{words}</li>
      ))}
    </ul>
  );
};

/** What was taken away last at this place, put back with one press. */
const Removed = ({ files: { uploads }, place }: { readonly files: ReportFiles; readonly place: AtPlace }) => {
  const { removed } = uploads;
  if (removed === undefined || !isAt(removed, place)) return null;
  return (
    <output className={styles.undo}>
      <PutBack name={removed.name} onPress={() => void uploads.putBack()} />
    </output>
  );
};

/** What of it can be shown large. */
const picturesIn = (rows: readonly FileRow[], { side }: ReportFiles): readonly Picture[] =>
  rows.flatMap((row) =>
    row.at === "service" && ownedWord(row.file) === "ready" ? [ownPicture(row.file, side)] : [],
  );

interface FilesProps {
  readonly files: ReportFiles;
  readonly place: AtPlace;
  /** Another photograph is to be taken in the stead of this one. */
  readonly onAgain: (row: FileRow) => void;
}

const Files = ({ files, place, onAgain }: FilesProps) => {
  const t = useText();
  const [open, setOpen] = useState<string>();
  const rows = files.rows.filter((row) => isAt(placeOf(row), place) && fileWord(row) !== "dropped-part");
  if (rows.length === 0) return null;
  return (
    <>
      <ul className={styles.files} aria-label={t("evidence.here")}>
        {rows.map((row) => (
          <FileLine key={rowKey(row)} row={row} files={files} onOpen={setOpen} onAgain={() => onAgain(row)} />
        ))}
      </ul>
      {open !== undefined && (
        <LazyViewer
          pictures={picturesIn(rows, files)}
          at={open}
          onGo={setOpen}
          onClose={() => setOpen(undefined)}
          report={files.report}
        />
      )}
    </>
  );
};

/** Takes photographs at a place, also in the stead of one that is there: that one goes once there is another. */
const useTaking = (files: ReportFiles, place: AtPlace) => {
  const camera = useRef<HTMLInputElement>(null);
  const instead = useRef<FileRow>(undefined);
  const takeAway = useTakeAway(files);
  return {
    camera,
    begin: (row?: FileRow): void => {
      instead.current = row;
    },
    again: (row: FileRow): void => {
      instead.current = row;
      camera.current?.click();
    },
    take: async (chosen: readonly File[]): Promise<void> => {
      const before = instead.current;
      instead.current = undefined;
      await files.uploads.add(place, chosen);
      if (before !== undefined && chosen.length > 0) takeAway(before);
    },
  };
};

const FilesAt = ({ files, place }: { readonly files: ReportFiles; readonly place: AtPlace }) => {
  const t = useText();
  const choose = useRef<HTMLInputElement>(null);
  const { camera, begin, again, take } = useTaking(files, place);
  return (
    <div className={styles.place}>
      <Asked files={files} place={place} />
      <div className={styles.adds}>
        <Add of="camera" input={camera} onPress={begin} onAdd={(chosen) => void take(chosen)} />
        <Add of="files" input={choose} onAdd={(chosen) => void files.uploads.add(place, chosen)} />
      </div>
      {files.uploads.failure !== null && (
        <Notice kind="refusal" title={t("evidence.no-room")}>
          <p>{t("evidence.no-room.what")}</p>
        </Notice>
      )}
      <Files files={files} place={place} onAgain={again} />
      <Removed files={files} place={place} />
    </div>
  );
};

/** Photographs and papers at one place of the report: taking them, how far each has come, taking them away. */
export const PlaceFiles = ({ place }: { readonly place: AtPlace }) => {
  const files = useReportFiles();
  return files === null ? null : <FilesAt files={files} place={place} />;
};
