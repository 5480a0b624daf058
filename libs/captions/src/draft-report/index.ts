import type { Finding } from "@evenhand/shared/finding";
import type { Report, Vehicle } from "@evenhand/shared/report";
import type { Remark } from "../draft-statement/index.ts";

const MOST_WORDS = 400;

/** A remark of which a reader is less sure than this wants a look before it is confirmed. Our own. */
export const UNSURE_BELOW = 0.7;

const two = (value: number): string => String(value).padStart(2, "0");

/**
 * A second of a recording as it is written: minutes and seconds, hours where there are any.
 *
 * @example
 * clockOf(75); // "1:15"
 */
export const clockOf = (second: number): string => {
  const minutes = Math.floor(second / 60);
  const hours = Math.floor(minutes / 60);
  return hours > 0 ? `${hours}:${two(minutes % 60)}:${two(second % 60)}` : `${minutes}:${two(second % 60)}`;
};

const findingOf = (remark: Remark): Finding => ({
  item: remark.item,
  position: remark.position,
  answer: remark.answer,
  firmness: remark.firmness,
  basis: remark.firmness === "second-hand" ? "told" : "seen",
  note: `${clockOf(remark.second)} “${remark.words.slice(0, MOST_WORDS)}”`,
});

/** Whose words they are, of which car, and when they were recorded. */
export type DraftEnvelope = {
  readonly vehicle: Vehicle;
  readonly organization: string;
  readonly visit: Report["visit"];
};

/**
 * A draft as a report by its contract, so that it can be compared and gone through like one: each finding with its second and words as
 * its note. It is no statement before somebody has confirmed it.
 */
export const draftReport = (
  remarks: readonly Remark[],
  { vehicle, organization, visit }: DraftEnvelope,
): Report => ({
  format: "evenhand-report",
  version: 1,
  kind: "statement",
  sheet: { id: "evenhand", version: 1 },
  vehicle,
  author: { organization, role: "dealer" },
  visit,
  instruments: [],
  persons: [],
  scales: [],
  findings: remarks.map(findingOf),
});
