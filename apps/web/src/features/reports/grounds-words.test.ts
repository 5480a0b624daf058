import { clauseMessages } from "../../../../../libs/comparison/src/sentence/messages.ts";
import { expect, test } from "vitest";
import { en } from "../../strings/en.ts";

test("where no instrument is named the form says so in the words of the sentence, and never that eyes read it", () => {
  const words = en["grounds.no-instrument"];
  expect(clauseMessages.templates.unnamed).toBe(`{value} (${words})`);
  expect(words).not.toMatch(/eye/);
});
