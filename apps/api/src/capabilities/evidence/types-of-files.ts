import type { FileKind } from "@evenhand/shared/evidence";

/** The media type a file is handed out with, by what it is. */
export const typeOfFile: Readonly<Record<FileKind, string>> = {
  jpeg: "image/jpeg",
  png: "image/png",
  webp: "image/webp",
  avif: "image/avif",
  pdf: "application/pdf",
  mp4: "video/mp4",
  quicktime: "video/quicktime",
};
