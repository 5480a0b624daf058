import type { FirmLimits, LimitUse } from "@evenhand/shared/cross-check";
import type { Source } from "@evenhand/shared/sheet";

/** A figure a rule judges against. Only common-practice figures may be replaced by a firm's own. */
export type LimitRecord = {
  readonly words: string;
  readonly value: number;
  readonly unit: string;
  readonly source: Source;
  readonly firmMaySet: boolean;
  /** What a firm may set it to. */
  readonly between?: readonly [number, number];
};

/** The figures of a rule by their ids. */
export type LimitRecords = Readonly<Record<string, LimitRecord>>;

/** A figure nobody published, and what a firm may set it to. */
export const practice = (
  words: string,
  value: number,
  unit: string,
  between: readonly [number, number],
): LimitRecord => ({
  words,
  value,
  unit,
  source: { kind: "common-practice", text: "common practice, no source" },
  firmMaySet: true,
  between,
});

/** A figure of a regulation, by its citation; nobody may set it otherwise. */
export const published = (words: string, value: number, unit: string, text: string): LimitRecord => ({
  words,
  value,
  unit,
  source: { kind: "regulation", text },
  firmMaySet: false,
});

/**
 * The figure in force for a limit: a firm's own where it may set one, else the handbook's.
 *
 * @example limitInForce("displacement.share", practice("displacement", 0.01, "1", [0, 1]), {}).value // 0.01
 */
export const limitInForce = (id: string, record: LimitRecord, firm: FirmLimits = {}): LimitUse => {
  const own = record.firmMaySet ? firm[id] : undefined;
  return own === undefined
    ? { id, value: record.value, unit: record.unit, origin: record.source.kind }
    : { id, value: own, unit: record.unit, origin: "firm" };
};
