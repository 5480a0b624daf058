import { z } from "zod";
import type { Contract } from "./paging.ts";

const isPdf = (bytes: unknown): boolean =>
  bytes instanceof Uint8Array && String.fromCharCode(...bytes.subarray(0, 5)) === "%PDF-";

/** `application/pdf` (ISO 32000). */
const Pdf = z.unknown().refine(isPdf, "a PDF").meta({ type: "string", format: "binary" });

export const paperContracts = {
  "comparisons.paper": { costly: true, status: 200, answer: Pdf },
  "summaries.paper": { costly: true, status: 200, answer: Pdf },
} as const satisfies Record<string, Contract>;
