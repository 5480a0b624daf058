import { writeFileSync } from "node:fs";
import { sentence, sentenceContext } from "@evenhand/comparison/sentence";
import { findRule } from "@evenhand/handbook/rules";
import { sentence as ruleSentence } from "@evenhand/handbook/sentence";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import type { Comparison } from "@evenhand/shared/comparison";
import type { Report } from "@evenhand/shared/report";
import { pageOf } from "../page/index.ts";
import { done, unusable } from "../shell.ts";
import type { Shell } from "../shell.ts";
import { terminalLines } from "../terminal/index.ts";
import { viewOf } from "../view/index.ts";

const ruleTitle = (rule: string): string => findRule(rule)?.title ?? rule;

export type Presented = {
  readonly comparison: Comparison;
  readonly a: Report;
  readonly b: Report;
  /** File of the page; without one, the terminal. */
  readonly html: string | undefined;
};

/** Shows a comparison on the terminal, or writes it as a page. */
export const present = ({ comparison, a, b, html }: Presented, shell: Shell): number => {
  const view = viewOf({
    comparison,
    a,
    b,
    sheet: sheetVersion1,
    sentences: {
      entry: (entry) => sentence(entry, sentenceContext(entry, sheetVersion1, a, b)),
      crossCheck: ruleSentence,
      rule: ruleTitle,
    },
  });
  if (html === undefined) {
    shell.out(terminalLines(view, shell.terminal).join("\n"));
    return done;
  }
  try {
    writeFileSync(html, pageOf(view));
  } catch (error) {
    shell.error(`The page cannot be written: ${error instanceof Error ? error.message : String(error)}`);
    return unusable;
  }
  shell.error(`Written: ${html}`);
  return done;
};
