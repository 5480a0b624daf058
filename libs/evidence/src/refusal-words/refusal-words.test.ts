import { FileRefusal } from "@evenhand/shared/evidence";
import { expect, test } from "vitest";
import { type FileRefused, refusalWords } from "./index.ts";

const figures = { most: 40, found: 55, width: 1, height: 2, least: 64 };
/** Every reason with every figure any sentence names. */
const every = FileRefusal.options.map((reason): FileRefused => ({ ...figures, reason }));

test.each(every)("$reason is said in whole sentences that fill every place", (refused) => {
  const words = refusalWords(refused);
  expect(words).toMatch(/^[A-Z].*\.$/);
  expect(words).not.toMatch(/[{}]|undefined/);
});

test("what is too much is said with both figures", () => {
  expect(refusalWords({ reason: "bytes", found: 55, most: 40 })).toContain("55 MiB, and 40 MiB are the most");
});

test("a HEIC photograph is answered with how to send a JPEG", () => {
  expect(refusalWords({ reason: "heic" })).toMatch(/Most Compatible.*JPEG/);
});
