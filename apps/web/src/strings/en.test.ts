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
