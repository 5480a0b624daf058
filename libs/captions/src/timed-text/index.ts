import type { Cue } from "../webvtt/index.ts";

const STAMP = /^\s*[[(]?(?:(\d{1,2}):)?(\d{1,3}):(\d{2})(?:[.,]\d{1,3})?[\])]?\s*[-–—:]?\s*/u;

/** What somebody says in a second, roughly, where nothing tells when they stopped. */
const LETTERS_A_SECOND = 15;

/**
 * The cues of plain text with times: each begins at a line such as "0:35 The hood is new", "[00:35] …" or "1:02:03" alone, and goes
 * on to the next time.
 *
 * @example
 * timedTextCues("0:35 The hood is new.\n[01:02] So is the top.")[1]?.start; // 62
 */
export const timedTextCues = (file: string): Cue[] => {
  const cues: { start: number; lines: string[] }[] = [];
  for (const line of file.replace(/^\uFEFF/u, "").split(/\r\n|\n|\r/u)) {
    const match = STAMP.exec(line);
    if (match === null) {
      if (line.trim() !== "") cues.at(-1)?.lines.push(line.trim());
      continue;
    }
    const [stamp, hours = "0", minutes = "0", seconds = "0"] = match;
    const text = line.slice(stamp.length).trim();
    const start = Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds);
    cues.push({ start, lines: text === "" ? [] : [text] });
  }
  return cues.map(({ start, lines }, index) => {
    const text = lines.join("\n");
    const next = cues[index + 1]?.start;
    return {
      start,
      end: next !== undefined && next > start ? next : start + 1 + text.length / LETTERS_A_SECOND,
      text,
    };
  });
};
