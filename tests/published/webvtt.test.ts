import { readFileSync } from "node:fs";
import { isWebvtt, webvttCues, webvttTimestamp } from "@evenhand/captions/webvtt";
import { expect, test } from "vitest";
import { z } from "zod";

// Source: fixtures/published/webvtt.json. What the cases of signature and header ask follows the parser of the W3C's text.
const { timestamps } = z
  .object({ timestamps: z.object({ accept: z.array(z.string()), reject: z.array(z.string()) }) })
  .parse(JSON.parse(readFileSync(new URL("../../fixtures/published/webvtt.json", import.meta.url), "utf8")));

const cuesOf = (start: string, end: string): number =>
  webvttCues(`WEBVTT\n\n${start} --> ${end}\ntext\n`)?.length ?? -1;

test.each(timestamps.accept)("%s is a timestamp", (stamp) => {
  expect(webvttTimestamp(stamp)).toBe(0);
  expect(cuesOf(stamp, "00:00:01.000")).toBe(1);
});

test.each(timestamps.reject)("%s is none, and costs its cue alone", (stamp) => {
  expect(webvttTimestamp(stamp)).toBeUndefined();
  const file = `WEBVTT\n\n${stamp} --> 00:00:01.000\nlost\n\n00:00.000 --> 00:01.000\nkept\n`;
  expect(webvttCues(file)?.map(({ text }) => text)).toEqual(["kept"]);
});

test("minutes and seconds are below sixty", () => {
  expect(webvttTimestamp("00:60.000")).toBeUndefined();
  expect(webvttTimestamp("00:60:00.000")).toBeUndefined();
  expect(webvttTimestamp("60:59:59.999")).toBe(60 * 3600 + 59 * 60 + 59.999);
});

test("a cue that ends before it begins still is one", () => {
  const times = [
    ["00:00:01.000", "00:00:00.000"],
    ["00:01.000", "00:00.999"],
    ["00:02.000", "00:02.000"],
    ["01:00:00.000", "00:59:59.999"],
  ];
  const file = ["WEBVTT", ...times.map(([start, end]) => `${start} --> ${end}\ntext`)].join("\n\n");
  expect(webvttCues(file)).toHaveLength(4);
});

test.each([
  ["nothing after it", "WEBVTT"],
  ["a space and words", "WEBVTT a note"],
  ["a tab", "WEBVTT\tx"],
  ["a byte order mark before it", "\uFEFFWEBVTT\n"],
])("the signature may have %s", (_, file) => {
  expect(isWebvtt(file)).toBe(true);
  expect(webvttCues(file)).toEqual([]);
});

test.each([" WEBVTT", "webvtt", "WEBVTTx", "\nWEBVTT", ""])("%j is no signature", (file) => {
  expect(webvttCues(file)).toBeUndefined();
});

test("lines end by LF, CR, or both, and a null becomes the sign for what cannot be read", () => {
  for (const end of ["\n", "\r", "\r\n"]) {
    const file = ["WEBVTT", "", "id", "00:00.000 --> 00:01.000", "one\0", "two", "", ""].join(end);
    expect(webvttCues(file)).toEqual([{ start: 0, end: 1, text: "one\uFFFD\ntwo" }]);
  }
});

test("a header with times opens a cue, and a cue ends where the next one's times stand", () => {
  const file = "WEBVTT\n00:00.000 --> 00:01.000\none\n00:01.000 --> 00:02.000\ntwo";
  expect(webvttCues(file)?.map(({ text }) => text)).toEqual(["one", "two"]);
});

test("notes and styles are no cues", () => {
  const file =
    "WEBVTT\n\nNOTE a note\nof two lines\n\nSTYLE\n::cue { color: red }\n\n00:00.000 --> 00:01.000 align:start\none";
  expect(webvttCues(file)).toEqual([{ start: 0, end: 1, text: "one" }]);
});
