import { expect, test } from "vitest";
import { captionCues, MOST_CHARACTERS } from "./index.ts";

test("SubRip is read with or without numbers, hours of one digit and a point for the comma", () => {
  const file =
    "1\n00:00:01,500 --> 00:00:03,000\nThe hood is new.\n2\n0:00:03.000 --> 0:00:04.000\n<i>So is\nthe top.</i>\n";
  const read = captionCues(file);
  expect(read).toMatchObject({ ok: true, form: "subrip" });
  if (!read.ok) throw new Error("not read");
  expect(read.cues.map(({ start, end }) => [start, end])).toEqual([
    [1.5, 3],
    [3, 4],
  ]);
});

test("plain text is read by the times its lines begin with, however they are written", () => {
  const read = captionCues("0:35 The hood is new.\n[01:02] The roof is not.\ngoes on\n1:02:03\nThe end.");
  expect(read).toMatchObject({ ok: true, form: "timed-text" });
  if (!read.ok) throw new Error("not read");
  expect(read.cues.map(({ start, text }) => [start, text])).toEqual([
    [35, "The hood is new."],
    [62, "The roof is not.\ngoes on"],
    [3723, "The end."],
  ]);
});

test("what has no times is refused, with what would work", () => {
  for (const file of ["", "The hood is new.", "WEBVTT\n\nnothing"]) {
    const read = captionCues(file);
    expect(read).toEqual({ ok: false, reason: expect.stringContaining("WebVTT, SubRip") });
  }
});

test("a file beyond the bound is refused before it is read", () => {
  expect(captionCues("0:35 x".padEnd(MOST_CHARACTERS + 1)).ok).toBe(false);
});
