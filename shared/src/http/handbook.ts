import { z } from "zod";
import { FirmHandbook } from "../cross-check.ts";
import type { Contract } from "./paging.ts";

/** `revision: 0` and an empty handbook before the firm has entered anything; the first `PUT` matches `"0"`. */
export const FirmHandbookSeen = z.strictObject({
  revision: z.int().nonnegative(),
  handbook: FirmHandbook,
});
export type FirmHandbookSeen = z.infer<typeof FirmHandbookSeen>;

/** Five hundred makes and models with their figures and sources. */
const handbookBytes = 512 * 1024;

export const handbookContracts = {
  "firmHandbook.get": { status: 200, answer: FirmHandbookSeen },
  "firmHandbook.put": { body: FirmHandbook, bodyBytes: handbookBytes, status: 200, answer: FirmHandbookSeen },
} as const satisfies Record<string, Contract>;
