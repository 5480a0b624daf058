import type { Cue } from "../webvtt/index.ts";

const TIME = String.raw`(\d{1,3}):(\d{1,2}):(\d{1,2})(?:[,.](\d{1,3}))?`;
const TIMINGS = new RegExp(`^\\s*${TIME}\\s*-->\\s*${TIME}`, "u");

const secondsOf = (parts: readonly (string | undefined)[]): number => {
  const [hours = "0", minutes = "0", seconds = "0", fraction = "0"] = parts;
  return Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds) + Number(`0.${fraction}`);
};

/**
 * The cues of a SubRip file, as it is found in the wild: numbers before the times may be missing, a point may stand for the comma, and
 * a blank line may be missing before the next cue's number.
 *
 * @example
 * subripCues("1\n00:00:01,500 --> 00:00:03,000\nThe hood is new.")[0]?.start; // 1.5
 */
export const subripCues = (file: string): Cue[] => {
  const cues: { start: number; end: number; lines: string[] }[] = [];
  const lines = file.replace(/^\uFEFF/u, "").split(/\r\n|\n|\r/u);
  for (const [index, line] of lines.entries()) {
    const match = TIMINGS.exec(line);
    if (match !== null) {
      cues.push({ start: secondsOf(match.slice(1, 5)), end: secondsOf(match.slice(5, 9)), lines: [] });
      continue;
    }
    const isNumber = /^\s*\d+\s*$/u.test(line) && TIMINGS.test(lines[index + 1] ?? "");
    if (!isNumber && line.trim() !== "") cues.at(-1)?.lines.push(line);
  }
  return cues.map(({ start, end, lines: text }) => ({ start, end, text: text.join("\n") }));
};
