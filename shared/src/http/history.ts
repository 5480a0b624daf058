import { z } from "zod";
import { GaugeOffset, InspectorLean } from "../history.ts";
import { Instant, Sha256 } from "../identifier.ts";
import type { Contract } from "./paging.ts";

/**
 * What past pairs of reports tell of a firm's gauges, and of the hand of whoever asks: of nobody else's. `hash` is that of the table, which
 * comparisons name; none before there is one.
 */
export const FirmHistory = z.strictObject({
  hash: Sha256.nullable(),
  madeAt: Instant.nullable(),
  leans: z.array(InspectorLean.omit({ inspector: true })),
  gauges: z.array(GaugeOffset),
});
export type FirmHistory = z.infer<typeof FirmHistory>;

export const historyContracts = {
  "firmHistory.get": { status: 200, answer: FirmHistory },
} as const satisfies Record<string, Contract>;
