import type { EvidenceOwned } from "@evenhand/shared/http/evidence";
import { idAt } from "../../offline/send-upload";
import type { KeptUpload } from "../../offline/store";
import type { UploadsNow } from "../../offline/upload-queue";

/** A file of a report: kept on this device until all of it has arrived, or with the service. */
export type FileRow =
  | { readonly at: "device"; readonly kept: KeptUpload; readonly sent: number | undefined }
  | { readonly at: "service"; readonly file: EvidenceOwned };

export const rowKey = (row: FileRow): string => (row.at === "device" ? row.kept.id : row.file.id);

interface Files {
  readonly kept: readonly KeptUpload[];
  readonly sending: UploadsNow["sending"];
  readonly owned: readonly EvidenceOwned[];
}

/** All files, each once: what this device still sends stands as it is here. Those of the service first. */
export const fileRows = ({ kept, sending, owned }: Files): readonly FileRow[] => {
  const here = new Set(kept.flatMap(({ address }) => (address === undefined ? [] : [idAt(address)])));
  return [
    ...owned.filter(({ id }) => !here.has(id)).map((file): FileRow => ({ at: "service", file })),
    ...kept.map((one): FileRow => ({
      at: "device",
      kept: one,
      sent: sending?.id === one.id ? sending.sent : undefined,
    })),
  ];
};

export const fileName = (row: FileRow): string => (row.at === "device" ? row.kept : row.file).name;

/** What a file belongs to. */
export const placeOf = (row: FileRow): { readonly item: string; readonly position: string } =>
  row.at === "device" ? row.kept : row.file;

/** How far a file with the service has come, in one word. `dropped-part`: part of one that was taken away, and cannot come back. */
type OwnedWord = "elsewhere" | "looked-at" | "ready" | "not-taken" | "taken-away" | "dropped-part";
type FileWord = OwnedWord | "waiting" | "sending";

export const ownedWord = ({ state, removedAt }: EvidenceOwned): OwnedWord => {
  if (removedAt !== null) return state === "arriving" ? "dropped-part" : "taken-away";
  if (state === "arriving") return "elsewhere";
  if (state === "refused") return "not-taken";
  return state === "ready" ? "ready" : "looked-at";
};

export const fileWord = (row: FileRow): FileWord => {
  if (row.at === "service") return ownedWord(row.file);
  if (row.kept.refusal !== undefined) return "not-taken";
  return row.sent === undefined ? "waiting" : "sending";
};

/** What keeps the report from being sealed: it is not with the service whole, or the service has not done with it. */
export const isOnItsWay = (row: FileRow): boolean =>
  ["waiting", "sending", "elsewhere", "looked-at"].includes(fileWord(row));
