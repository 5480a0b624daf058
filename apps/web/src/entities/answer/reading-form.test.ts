import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { describe, expect, test } from "vitest";
import { oneMore, readingForm, readingOf, slotState, withText, type ReadingForm } from "./reading-form.ts";

const specOf = (id: string) => {
  const spec = sheetVersion1.items.find((item) => item.id === id)?.reading;
  if (!spec) throw new Error(`no reading at ${id}`);
  return spec;
};
/** Three named spots, in thirty-seconds of an inch. */
const tread = specOf("wheels.tread-depth");
const fill = (...texts: string[]): ReadingForm =>
  texts.reduce((form, text, at) => withText(form, at, text), readingForm(tread, undefined, undefined));

describe("a reading that cannot be read", () => {
  test("of three leaves the other two as they are, and stays where it was typed", () => {
    const { answer, unread } = readingOf(tread, fill("8", "abc", "7"));
    expect(answer?.values.map(({ value }) => value)).toEqual([8, 7]);
    expect(answer?.values.map(({ spot }) => spot)).toEqual([tread.spots[0]?.id, tread.spots[2]?.id]);
    expect(unread).toEqual({ texts: { "reading.1": "abc" }, unit: tread.unit });
  });

  test("is no number, or a number no car gives", () => {
    const { unit } = tread;
    const state = (text: string) => slotState(tread, unit, { text, spot: undefined });
    expect([state(""), state("8"), state("abc"), state("999"), state("8..2")]).toEqual([
      "empty",
      "read",
      "unreadable",
      "implausible",
      "unreadable",
    ]);
  });

  test("alone is no answer, and keeps the unit it was typed in", () => {
    const form = { ...fill("999"), unit: "mm" } as const;
    expect(readingOf(tread, form)).toEqual({
      answer: null,
      unread: { texts: { "reading.0": "999" }, unit: "mm" },
    });
  });

  test("comes back at its own field, with the others around it", () => {
    const form = fill("8", "abc", "7");
    const { answer, unread } = readingOf(tread, form);
    expect(readingForm(tread, answer ?? undefined, unread)).toEqual(form);
  });

  test("comes back in the unit it was typed in, though others are read in another", () => {
    const typed = { texts: { "reading.0": "999" }, unit: "mm" } as const;
    expect(readingForm(tread, undefined, typed, "1/32in").unit).toBe("mm");
  });

  test("comes back at a field beyond those asked for", () => {
    const form = withText(oneMore(fill("8", "7", "7")), 3, "x");
    const { answer, unread } = readingOf(tread, form);
    expect(readingForm(tread, answer ?? undefined, unread)).toEqual(form);
  });
});

describe("a changed unit", () => {
  test("goes with the numbers as they were typed", () => {
    const { answer } = readingOf(tread, { ...fill("6.5", "6", "6"), unit: "mm" });
    expect(answer).toMatchObject({ unit: "mm", values: [{ value: 6.5 }, { value: 6 }, { value: 6 }] });
  });

  test("judges anew what a car can give: 35/32 in is a tread, 35 mm is none", () => {
    const form = fill("35");
    expect(readingOf(tread, form).answer?.values).toHaveLength(1);
    expect(readingOf(tread, { ...form, unit: "mm" }).unread?.texts).toEqual({ "reading.0": "35" });
  });

  test("is what a reopened reading stands in", () => {
    const { answer } = readingOf(tread, { ...fill("6.5"), unit: "mm" });
    expect(readingForm(tread, answer ?? undefined, undefined).unit).toBe("mm");
  });
});
