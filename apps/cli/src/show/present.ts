import { writeFileSync } from "node:fs";
import { answer } from "@evenhand/matters/answer";
import { matters } from "@evenhand/matters/matters";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sentence, sentenceContext } from "@evenhand/comparison/sentence";
import { findRule } from "@evenhand/handbook/rules";
import { sentence as ruleSentence } from "@evenhand/handbook/sentence";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import type { Comparison } from "@evenhand/shared/comparison";
import { dearerFirst } from "@evenhand/shared/dearer-first";
import type { Report } from "@evenhand/shared/report";
import { answerCost, type Pricing } from "../costs/index.ts";
import { answerLines } from "../answer/terminal.ts";
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
  /** Every line on the terminal, and not page one. */
  readonly all: boolean;
  /** File of the page; without one, the terminal. */
  readonly html: string | undefined;
  /** What putting right is priced by; `null` where no table was named. */
  readonly pricing: Pricing | null;
};

/** Page one and what putting right may cost, the dearer of two equally grave matters first. */
const pricedAnswer = ({ comparison, a, b, pricing }: Presented) => {
  const reports = { a, b, sheet: compileSheet(sheetVersion1) };
  const page = answer({ comparison, matters: matters(comparison, reports), reports });
  const priced = answerCost({ comparison, b, answer: page }, pricing);
  return { page: dearerFirst(page, priced), priced };
};

/** Shows the answer or every line of a comparison on the terminal, or writes both as a page. */
export const present = (presented: Presented, shell: Shell): number => {
  const { comparison, a, b, all, html } = presented;
  if (html === undefined && !all) {
    const { page, priced } = pricedAnswer(presented);
    shell.out(answerLines(page, shell.terminal, priced).join("\n"));
    return done;
  }
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
    const { page, priced } = pricedAnswer(presented);
    writeFileSync(html, pageOf(view, page, priced));
  } catch (error) {
    shell.error(`The page cannot be written: ${error instanceof Error ? error.message : String(error)}`);
    return unusable;
  }
  shell.error(`Written: ${html}`);
  return done;
};
