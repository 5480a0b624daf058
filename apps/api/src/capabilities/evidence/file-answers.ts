import { FileKind, type PictureSize } from "@evenhand/shared/evidence";
import { z } from "zod";
import { FileAnswer } from "../../platform/http/file-answer.ts";
import { found } from "../../platform/problems/problem-error.ts";
import type { Storage } from "../../platform/storage/storage.ts";
import { copyKey, originalKey } from "./keys.ts";

type Copy = { readonly file: string; readonly size: PictureSize };
/** What the bytes that were sent are found by. */
export const Original = z.object({ organization: z.string(), sha256: z.string(), kind: FileKind });
export type Original = z.infer<typeof Original>;
/** The same of a kept photograph, whose copies are found by its file. */
export const KeptPicture = Original.extend({ file: z.string() });
/** What it is called where it is saved, without its ending. */
type Named = { readonly name: string };

/** The media type a file is handed out with, by what it is. */
const typeOfFile: Readonly<Record<FileKind, string>> = {
  jpeg: "image/jpeg",
  png: "image/png",
  webp: "image/webp",
  avif: "image/avif",
  pdf: "application/pdf",
  mp4: "video/mp4",
  quicktime: "video/quicktime",
};

/** A copy without metadata. @throws ProblemError `not-found` until there is one */
export async function copyAnswer(storage: Storage, { file, size, name }: Copy & Named): Promise<FileAnswer> {
  const bytes = found(await storage.read(copyKey(file, size)), "picture");
  return FileAnswer.shut({ name: `${name}-${size}.webp`, type: "image/webp", bytes });
}

/** The bytes that were sent, with all that the camera wrote. */
export async function originalAnswer(
  storage: Storage,
  { organization, sha256, kind, name }: Original & Named,
): Promise<FileAnswer> {
  const bytes = found(await storage.read(originalKey(organization, sha256)), "file");
  return FileAnswer.shut({ name: `${name}.${kind}`, type: typeOfFile[kind], bytes, kept: true });
}
