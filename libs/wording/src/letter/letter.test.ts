import { describe, expect, it } from "vitest";
import { placesOf } from "@evenhand/message/format-message";
import { NewsKind } from "@evenhand/shared/http/notices";
import { DeadlineStep } from "@evenhand/shared/http/cases";
import { deadlineLetter, digestLetter, letter, newsLetter } from "./index.ts";
import { dueMessages } from "./deadlines.ts";
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
  it.each(NewsKind.options)("of %s is one sentence and the page it is about, and says no more", (kind) => {
    const link = "https://evenhand.example/orders/1";
    const { subject, body } = newsLetter(kind, link);
    expect(subject).toMatch(/^[A-Z][^.]+\.$/);
    expect(body).toBe(`${subject}\n\nSign in to read it: ${link}\n`);
  });
});

describe("a reminder of a deadline", () => {
  const link = "https://evenhand.example/released?vehicle=x";
  const asked = {
    step: "answer-items",
    silence: "finding-stands",
    count: 1,
    due: Date.UTC(2027, 4, 5, 18),
    zone: "America/Chicago",
    link,
  } as const;

  it("says what is due and until when on the clock of the site, what silence comes to, and where it is done", () => {
    expect(deadlineLetter(asked)).toEqual({
      subject: "Your answer to a buyer is due by Wed, May 5, 1:00 PM CDT.",
      body: `Your answer to a buyer is due by Wednesday, May 5 at 1:00 PM Central Daylight Time. If nothing comes by then, the finding stands: it counts in your record, and the car is off the list until a new statement answers it.\n\nThis is where it is done:\n${link}\n\nIf a colleague has done it already, there is nothing left to do.\n`,
    });
  });

  it("counts the lines where several wait", () => {
    expect(deadlineLetter({ ...asked, count: 3 }).body).toContain(
      "Time. 3 lines wait for it; this is the earliest of their times. If",
    );
  });

  it("says midnight as the end of the day it ends", () => {
    const { subject } = deadlineLetter({ ...asked, due: Date.UTC(2027, 4, 6, 5) });
    expect(subject).toContain("Wed, May 5, 11:59 PM CDT");
  });

  it.each(DeadlineStep.options)("of %s names nothing but its time in the subject", (step) => {
    expect(placesOf(dueMessages.templates[step]).all).toEqual(["due"]);
    expect(deadlineLetter({ ...asked, step }).subject).toMatch(/ Wed, May 5, 1:00 PM CDT\.$/);
  });
});

describe("a day's news in one letter", () => {
  it("says each thing once, in the order it first happened, and how often", () => {
    const { subject, body } = digestLetter(
      ["question-asked", "appointment-requested", "question-asked"],
      "https://evenhand.example",
    );
    expect(subject).toBe("Your news since the last letter");
    expect(body).toBe(
      "A buyer asks about one of your cars. (2 times)\nA buyer asks for a visit at an hour of yours.\n\nSign in to read it: https://evenhand.example/notices\n\nYou chose one letter a day. Choose otherwise here: https://evenhand.example/account\n",
    );
  });
});
