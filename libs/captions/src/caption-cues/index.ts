import { subripCues } from "../subrip/index.ts";
import { timedTextCues } from "../timed-text/index.ts";
import { isWebvtt, webvttCues } from "../webvtt/index.ts";
import type { Cue } from "../webvtt/index.ts";

/** Characters a caption file may have: a day of talk, twice over. */
export const MOST_CHARACTERS = 16 * 2 ** 20;

export type CaptionCues =
  | { readonly ok: true; readonly form: "webvtt" | "subrip" | "timed-text"; readonly cues: readonly Cue[] }
  | { readonly ok: false; readonly reason: string };

const formOf = (file: string): "webvtt" | "subrip" | "timed-text" => {
  if (isWebvtt(file)) return "webvtt";
  return /\d\s*-->\s*\d/u.test(file) ? "subrip" : "timed-text";
};

const WOULD_WORK =
  "What works: WebVTT, SubRip, or text in which a time such as 0:35 stands at the beginning of a line.";

/**
 * The cues of a caption file, whatever its form; or why there are none, and what would work.
 *
 * @example
 * captionCues("0:35 The hood is new.").ok; // true
 */
export const captionCues = (file: string): CaptionCues => {
  if (file.length > MOST_CHARACTERS)
    return { ok: false, reason: `The file has over ${MOST_CHARACTERS} characters; cut it into several.` };
  const form = formOf(file);
  const read = { webvtt: webvttCues, subrip: subripCues, "timed-text": timedTextCues }[form](file) ?? [];
  const cues = read.filter(({ text }) => text.trim() !== "");
  return cues.length === 0
    ? { ok: false, reason: `No words with times were found. ${WOULD_WORK}` }
    : { ok: true, form, cues };
};
