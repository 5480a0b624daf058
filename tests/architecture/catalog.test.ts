import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { messageCatalog } from "@evenhand/message/define-messages";
import { formatMessage, placesOf } from "@evenhand/message/format-message";
import { headline } from "@evenhand/matters/headline";
import { matters } from "@evenhand/matters/matters";
import { sentence } from "@evenhand/comparison/sentence";
import { letter } from "@evenhand/wording/letter";
import { orderEndAfter } from "@evenhand/booking/parties";
import { sentence as ruleSentence } from "@evenhand/handbook/sentence";
import { putTogether } from "./put-together.ts";

const root = join(import.meta.dirname, "../..");

/** What is read by persons and put together from messages alone; the lists too. */
const CORE = [
  "booking",
  "case",
  "comparison",
  "decision",
  "handbook",
  "matters",
  "paper",
  "record",
  "wording",
].map((library) => `libs/${library}/src`);
/** The same, where a list of what the reader entered may still be joined where it is shown. */
const SCREENS = ["apps/web/src", "apps/cli/src/page", "apps/cli/src/terminal", "apps/cli/src/view"].concat(
  ["who-says-what", "words", "worklist"].map((folder) => `apps/cli/src/${folder}`),
);

/**
 * Refusals of what a form or a program sent (RFC 9457: `detail` and the reason at a field) name the field and what would work where
 * they are found; and the Handbook page and its reasons are Markdown for a file.
 */
const ELSEWHERE = [
  "libs/booking/src/recurrence/index.ts",
  "libs/booking/src/recurrence-parts/index.ts",
  "libs/handbook/src/handbook-page/index.ts",
  // Templates of messages, put together from a template.
  "libs/handbook/src/ratio-zone/outcomes.ts",
  // A key that nobody reads.
  "libs/handbook/src/one-fact/index.ts",
];

const filesOf = (folder: string): readonly string[] =>
  readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
    .map((file) => `${folder}/${file}`)
    .filter((file) => /\.tsx?$/.test(file) && !/\.test\.|examples\.ts$|\/testing\//.test(file))
    .filter((file) => !ELSEWHERE.includes(file));

const foundIn = (folders: readonly string[], marks: boolean): readonly string[] =>
  folders.flatMap(filesOf).flatMap((file) => {
    const lines = putTogether(file, readFileSync(join(root, file), "utf8"), { marks });
    return lines.map((line) => `${file}:${line}`);
  });

describe("no sentence is put together outside the catalog", () => {
  test.each([
    ["a template string", "const a = `${count} of them`;"],
    ["a sum", 'const a = name + " is missing";'],
    ["a list joined by a word", 'const a = names.join(" and ");'],
    ["an element's text", "const a = <p>{`Seen by ${name}`}</p>;"],
    ["a place in markup", "const a = html`<p>${`Seen by ${name}`}</p>`;"],
  ])("%s is found", (_, text) => {
    expect(putTogether("a.tsx", text)).toEqual([1]);
  });

  test.each([
    ["an id", "const a = say(`grade.${grade}`);"],
    ["an error", "throw new RangeError(`no limit ${id}`);"],
    ["markup itself", "const a = html`<p>Seen by ${name}</p>`;"],
    ["a text over two lines", 'const a = "one half " + "and the other";'],
    ["a class", "const a = <p className={`${one} no-print`} />;"],
  ])("%s is not", (_, text) => {
    expect(putTogether("a.tsx", text, { marks: true })).toEqual([]);
  });

  test("a list is found where lists count", () => {
    const text = 'const a = names.join(", ");\nconst b = `${place}: ${said}`;';
    expect([putTogether("a.ts", text), putTogether("a.ts", text, { marks: true })]).toEqual([[], [1, 2]]);
  });

  test("the core has none", () => {
    expect(foundIn(CORE, true)).toEqual([]);
  });

  test("pages and terminal have none", () => {
    expect(foundIn(SCREENS, false)).toEqual([]);
  });
});

describe("the catalog", () => {
  const loaded = [headline, matters, sentence, letter, orderEndAfter, ruleSentence];

  test("holds every room's messages, and each is one that ICU reads and fills", () => {
    expect(loaded).not.toContain(undefined);
    const rooms = new Set([...messageCatalog().keys()].map((id) => id.split(".")[0]));
    for (const room of ["term", "line", "headline", "found", "rule", "matter", "letter", "visit", "list"]) {
      expect(rooms).toContain(room);
    }
    expect(messageCatalog().size).toBeGreaterThan(900);
    for (const [id, template] of messageCatalog()) {
      const values = Object.fromEntries(placesOf(template).all.map((place) => [place, 2]));
      expect(`${id}: ${formatMessage<string>(template, values)}`).not.toMatch(/[{}]|undefined/);
    }
  });
});
