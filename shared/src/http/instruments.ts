import { z } from "zod";
import { nameOf } from "../names.ts";
import { Instrument } from "../report.ts";
import type { Contract } from "./paging.ts";

/** An instrument a firm keeps. `kind` is what the sheet calls it (`instrument-kinds`); a retired one begins no report any more. */
export const FirmInstrument = Instrument.extend({ kind: nameOf(200), retired: z.boolean() });
export type FirmInstrument = z.infer<typeof FirmInstrument>;

export const FirmInstruments = z.strictObject({ instruments: z.array(FirmInstrument).max(100) });
export type FirmInstruments = z.infer<typeof FirmInstruments>;

/** `revision: 0` and an empty list before the firm has entered anything; the first `PUT` matches `"0"`. */
export const FirmInstrumentsSeen = FirmInstruments.extend({ revision: z.int().nonnegative() });
export type FirmInstrumentsSeen = z.infer<typeof FirmInstrumentsSeen>;

/** A hundred instruments with their names and kinds. */
const listBytes = 256 * 1024;

export const instrumentContracts = {
  "firmInstruments.get": { status: 200, answer: FirmInstrumentsSeen },
  "firmInstruments.put": {
    body: FirmInstruments,
    bodyBytes: listBytes,
    status: 200,
    answer: FirmInstrumentsSeen,
  },
} as const satisfies Record<string, Contract>;
