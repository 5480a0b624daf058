import { compileLexicon } from "@evenhand/lexicon/compile-lexicon";
import { lexiconVersion1 } from "@evenhand/lexicon/lexicon-version-1";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { expect, test } from "vitest";
import { readCaptions } from "./index.ts";

const context = {
  sheet: sheetVersion1,
  compiled: compileLexicon(lexiconVersion1, sheetVersion1),
  form: undefined,
  year: 2026,
};

test("a file is read from its characters to its claims; the car's form is told from the words where nobody entered it", () => {
  const read = readCaptions(
    "0:03 It's a four-door saloon with a straight six.\n0:09 The horn works.\n",
    context,
  );
  expect(read).toMatchObject({ ok: true, written: "timed-text", form: { doors: 4, cylinders: 6 } });
  expect(read.ok && read.remarks.map(({ item, second }) => [item, Math.floor(second)])).toEqual([
    ["electrics.horn", 9],
  ]);
});

test("what holds no words with times is refused with what would work", () => {
  expect(readCaptions("Hello.", context)).toMatchObject({
    ok: false,
    reason: expect.stringContaining("WebVTT"),
  });
});
