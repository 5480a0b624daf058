import { expect, test } from "vitest";
import { LaidOutHours } from "../../apps/api/src/capabilities/calendars/index.ts";
import { AnswerCache } from "../../apps/api/src/platform/database/answer-cache.ts";
import { DocumentCache } from "../../apps/api/src/platform/database/document-cache.ts";

const MiB = 1024 * 1024;

test("stored documents are kept up to so many bytes, the ones asked for last", async () => {
  const kept = new DocumentCache();
  let loaded = 0;
  const ask = (name: number) =>
    kept.get(`document ${name}`, () => {
      loaded += 1;
      return Promise.resolve(new Uint8Array(MiB));
    });
  for (let name = 0; name < 300; name += 1) await ask(name);
  expect(kept.bytes).toBeLessThanOrEqual(DocumentCache.maxBytes);
  expect(kept.bytes).toBeGreaterThan(DocumentCache.maxBytes / 2);
  await ask(299);
  expect(loaded).toBe(300);
  await ask(0);
  expect(loaded).toBe(301);
});

test("hours laid out are kept up to so many bytes, however long what they were laid out from", () => {
  const laidOut = new LaidOutHours();
  const day = { start: Date.UTC(2027, 4, 3), end: Date.UTC(2027, 4, 4) };
  for (let whose = 0; whose < 100; whose += 1) {
    const long = { zone: "UTC", open: [], away: [], whose, words: "x".repeat(MiB) };
    laidOut.open(long, day);
  }
  expect(laidOut.bytes).toBeGreaterThan(LaidOutHours.maxBytes / 2);
  expect(laidOut.bytes).toBeLessThanOrEqual(LaidOutHours.maxBytes);
});

test("an answer is made once of what the database gave, and anew of anything else", async () => {
  const answers = new AnswerCache();
  let made = 0;
  const ask = async (asked: string, ...from: string[]) => {
    const bytes = await answers.get(asked, from, () => {
      made += 1;
      return from.join(" and ");
    });
    return new TextDecoder().decode(bytes);
  };
  expect([await ask("home", "a case", "open"), await ask("home", "a case", "open")]).toEqual([
    "a case and open",
    "a case and open",
  ]);
  expect(made).toBe(1);
  expect(await ask("home", "a caseopen")).toBe("a caseopen");
  expect(await ask("home", "a case", "decided")).toBe("a case and decided");
  expect(await ask("another's home", "a case", "open")).toBe("a case and open");
  expect(made).toBe(4);
  // Only what was given last stands beside what was asked.
  expect(await ask("home", "a case", "open")).toBe("a case and open");
  expect(await ask("home", "a case")).toBe("a case");
  expect(await ask("home", "a case", "open")).toBe("a case and open");
  expect(made).toBe(7);
});

test("answers are kept up to so many bytes, what they were made from included", async () => {
  const answers = new AnswerCache();
  for (let whose = 0; whose < 100; whose += 1)
    await answers.get(String(whose), ["x".repeat(MiB / 2)], () => "short");
  expect(answers.bytes).toBeGreaterThan(AnswerCache.maxBytes / 2);
  expect(answers.bytes).toBeLessThanOrEqual(AnswerCache.maxBytes);
});
