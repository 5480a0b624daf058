import { describe, expect, it } from "vitest";
import { placesOf } from "@evenhand/message/format-message";
import { NoticeKind } from "@evenhand/shared/http/notices";
import { letter, newsLetter } from "./index.ts";
import { letters, news } from "./letters.ts";

const invited = (days: number): string =>
  letter("invitation", { organization: "Harbor Motors", link: "https://evenhand.example/i/x", days }).body;

describe("a letter", () => {
  it("is a message that ICU reads, whose subject holds nothing to fill: no name and no secret", () => {
    const subjects = Object.entries(letters.templates).filter(([id]) => id.endsWith(".subject"));
    expect(subjects.length).toBe(Object.keys(letters.templates).length / 2);
    for (const [, subject] of subjects) expect(placesOf(subject).all).toEqual([]);
    for (const sentence of Object.values(news.templates)) expect(placesOf(sentence).all).toEqual([]);
  });

  it("tells for how long a link works in the right number", () => {
    expect(invited(14)).toBe(
      "You are invited to join Harbor Motors.\n\nhttps://evenhand.example/i/x\n\nThe link works once, for 14 days. If you did not expect this letter, do nothing.\n",
    );
    expect(invited(1)).toContain("for 1 day. If");
  });

  it("leaves a name as it was written, whatever it looks like", () => {
    const organization = "Tom's {link} <b>Cars</b> '{x}'";
    expect(letter("invitation", { organization, link: "L", days: 2 }).body).toContain(
      `join ${organization}.`,
    );
  });

  it("is an error where a place is not filled", () => {
    expect(() => letter("new-password")).toThrow("link");
  });
});

describe("news by mail", () => {
  it.each(NoticeKind.options)("of %s is one sentence and the address, and says no more", (kind) => {
    const { subject, body } = newsLetter(kind, "https://evenhand.example");
    expect(subject).toMatch(/^[A-Z][^.]+\.$/);
    expect(body).toBe(`${subject}\n\nSign in to read it: https://evenhand.example\n`);
  });
});
