import { readdirSync, readFileSync } from "node:fs";
import { createIntl } from "react-intl";
import { expect, test } from "vitest";
import { en } from "./en";

/** A value for every name in braces, nested ones too. */
const valuesFor = (message: string): Record<string, number> =>
  Object.fromEntries([...message.matchAll(/\{\s*(\w+)/g)].map(([, name = ""]) => [name, 3]));

test("every message of the catalog holds together and says something", () => {
  const failed: string[] = [];
  const intl = createIntl({
    locale: "en-US",
    messages: en,
    onError: (error) => failed.push(error.message),
  });
  for (const [id, message] of Object.entries(en)) {
    if (intl.formatMessage({ id }, valuesFor(message)).trim() === "") failed.push(`${id} is empty`);
  }
  expect(failed).toEqual([]);
});

test("no two files of the catalog say one thing: the later would speak for both", () => {
  const folder = new URL("en/", import.meta.url);
  const ids = readdirSync(folder).flatMap((file) =>
    [...readFileSync(new URL(file, folder), "utf8").matchAll(/^  "([\w.-]+)":/gm)].map(([, id]) => id),
  );
  expect(ids.length).toBeGreaterThan(1000);
  expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
});
