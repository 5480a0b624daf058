import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { expect, test } from "vitest";
import { compileLexicon } from "../compile-lexicon/index.ts";
import { findMentions } from "../find-mentions/index.ts";
import { lexiconVersion1 } from "../lexicon-version-1/index.ts";
import { firmLexicon } from "./index.ts";

const subjectsIn = (text: string, lexicon = lexiconVersion1): string[] =>
  findMentions(text, compileLexicon(lexicon, sheetVersion1)).mentions.flatMap((one) =>
    one.is === "subject" ? one.subjects.map(({ id }) => id) : [],
  );

test("a firm's word for a part is found beside the trade's, and nowhere else", () => {
  const firm = firmLexicon(lexiconVersion1, {
    subjects: { rocker: ["bottom rail"], "electrics.clock": ["time piece"] },
    slips: { "bottle rail": "bottom rail" },
  });
  expect(subjectsIn("the bottom rail and the sill", firm)).toEqual(["rocker", "rocker"]);
  expect(subjectsIn("bottle rail", firm)).toEqual(["rocker"]);
  expect(subjectsIn("time piece", firm)).toEqual(["electrics.clock"]);
  expect(subjectsIn("bottom rail")).not.toContain("rocker");
});

test("a firm's word for an option is one", () => {
  const firm = firmLexicon(lexiconVersion1, { options: { "engine.oil": { milky: ["like a latte"] } } });
  const { mentions } = findMentions("oil like a latte", compileLexicon(firm, sheetVersion1));
  expect(
    mentions.some(
      (one) =>
        one.is === "said" && one.meanings.some((said) => said.is === "option" && said.option === "milky"),
    ),
  ).toBe(true);
});
