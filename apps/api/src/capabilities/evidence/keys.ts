import { randomUUID } from "node:crypto";
import type { PictureSize } from "@evenhand/shared/evidence";

/** A part of what is still arriving. Two that send the same part do not write over each other. */
export const partKey = (evidence: string, offset: number): string =>
  `uploads/${evidence}/${offset}-${randomUUID()}`;

/** Each organization keeps its own, even of the same bytes. */
export const originalKey = (organization: string, sha256: string): string =>
  `originals/${organization}/${sha256.slice(0, 2)}/${sha256}`;

export const copyKey = (file: string, size: PictureSize): string => `pictures/${file}/${size}.webp`;
