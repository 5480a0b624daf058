import { readFileSync, statSync } from "node:fs";
import { clockOf, draftReport, UNSURE_BELOW } from "@evenhand/captions/draft-report";
import type { Remark } from "@evenhand/captions/draft-statement";
import { readCaptions } from "@evenhand/captions/read-captions";
import { unmentioned } from "@evenhand/captions/unmentioned";
import { compileLexicon } from "@evenhand/lexicon/compile-lexicon";
import { lexiconVersion1 } from "@evenhand/lexicon/lexicon-version-1";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import type { Firmness } from "@evenhand/shared/finding";
import type { Report, Vehicle, VehicleForm } from "@evenhand/shared/report";
import { spokenWords } from "./words.ts";

const { say } = spokenWords;

/** One claim for a person: at which second, from which words, and what is to be looked at before it is confirmed. */
export type SpokenRow = {
  readonly source: string;
  readonly item: string;
  readonly position: string;
  readonly index: number;
  readonly firmness: Firmness;
  readonly words: string;
  readonly remarks: readonly string[];
};

export type SpokenDraft = {
  /** A report by its contract; nothing of it is stated before somebody confirms it. */
  readonly report: Report;
  readonly rows: readonly SpokenRow[];
  /** Items that were never mentioned, gravest first. */
  readonly unmentioned: readonly string[];
  /** What whoever reads the draft must know of it. */
  readonly cautions: readonly string[];
};

export type SpokenRead =
  { readonly ok: true; readonly draft: SpokenDraft } | { readonly ok: false; readonly reason: string };

const rowOf = (remark: Remark, index: number): SpokenRow => ({
  source: clockOf(remark.second),
  item: remark.item,
  position: remark.position,
  index,
  firmness: remark.firmness,
  words: remark.words,
  remarks: [
    ...(remark.inferred ? [say("inferred")] : []),
    ...remark.heard.map((heard) => say("heard", { heard })),
    ...(remark.confidence < UNSURE_BELOW ? [say("unsure")] : []),
  ],
});

/** Of a car nobody has entered only its form is guessed; its make and number are not. */
const carOf = (form: VehicleForm, modelYear: number): Vehicle => {
  const unknown = say("not-entered");
  return { make: unknown, model: unknown, modelYear, identification: unknown, form };
};

const draftOf = (text: string, written: Date, vehicle: Vehicle | undefined): SpokenRead => {
  const year = written.getUTCFullYear();
  const compiled = compileLexicon(lexiconVersion1, sheetVersion1);
  const read = readCaptions(text, { sheet: sheetVersion1, compiled, form: vehicle?.form, year });
  if (!read.ok) return read;
  const { form, remarks } = read;
  const report = draftReport(remarks, {
    vehicle: vehicle ?? carOf(form, year),
    organization: say("author"),
    visit: { started: written.toISOString(), zone: "UTC" },
  });
  const { body, doors, cylinders } = form;
  return {
    ok: true,
    draft: {
      report,
      rows: remarks.map(rowOf),
      unmentioned: unmentioned(sheetVersion1, form, remarks).map(({ id }) => id),
      cautions: vehicle === undefined ? [say("car-guessed", { body, doors, cylinders })] : [],
    },
  };
};

const why = (error: unknown): string => (error instanceof Error ? error.message : String(error));

/** Reads captions of a spoken walkaround into a draft. The file's own date stands for the day it was said. */
export const readSpoken = (path: string, vehicle: Vehicle | undefined): SpokenRead => {
  try {
    return draftOf(readFileSync(path, "utf8"), statSync(path).mtime, vehicle);
  } catch (error) {
    return { ok: false, reason: say("not-text", { reason: why(error) }) };
  }
};

const STAMPED = /^\uFEFF?\s*(?:WEBVTT|[[(]?\d{1,2}:\d{2})/u;

/** Whether a file is captions: by its name, and a text by the time it begins with. */
export const isSpoken = (path: string): boolean => {
  if (/\.(?:vtt|srt)$/iu.test(path)) return true;
  if (!/\.txt$/iu.test(path)) return false;
  try {
    return STAMPED.test(readFileSync(path, "utf8").slice(0, 200));
  } catch {
    return false;
  }
};
