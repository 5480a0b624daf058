import type { RuleStrength } from "@evenhand/shared/cross-check";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { figureText, timeWord } from "../figure-text/index.ts";
import { limits } from "../limits/index.ts";
import type { LimitId } from "../limits/index.ts";
import { rules } from "../rules/index.ts";
import type { HandbookRule } from "../rules/index.ts";

const STRENGTHS: Readonly<Record<RuleStrength, string>> = {
  contradicts: "A break contradicts the claim.",
  hint: "A break is a hint: it asks for a look and contradicts nobody.",
  reminder: "A reminder, never advice.",
};

const limitLine = (id: LimitId): string => {
  const { words, value, unit, source, firmMaySet } = limits[id];
  const figure = figureText({ value, unit });
  const asYear = unit === "a" && value > 1000;
  const number = asYear ? figure : `${figure}${timeWord(unit)}`;
  return `- ${words}: **${number}** (${source.text}${firmMaySet ? "; a firm may set its own" : ""})`;
};

/** The sheet's own words, so that a caution reads the same wherever it stands. */
const cautionLines = ({ cautions }: HandbookRule): string =>
  sheetVersion1.cautions
    .filter(({ id }) => cautions.includes(id))
    .map(({ text }) => `- Caution: ${text}`)
    .join("\n");

const section = (rule: HandbookRule): string =>
  [
    `## ${rule.title}`,
    `\`${rule.id}\` · ${rule.consequence} · ${rule.over === "one-report" ? "one report" : "both reports"}`,
    `Reads ${rule.reads}.`,
    `Formula: ${rule.formula}.`,
    `Source: ${rule.source.text}.`,
    ...(rule.limits.length === 0 ? [] : [rule.limits.map(limitLine).join("\n")]),
    STRENGTHS[rule.strength],
    ...(rule.cautions.length === 0 ? [] : [cautionLines(rule)]),
    ...(rule.note === undefined ? [] : [rule.note]),
  ].join("\n\n");

const INTRODUCTION = `# Handbook

What readings and codes give away by themselves. Each rule holds, breaks, or cannot tell: a value is judged by its two-sided 99 % interval, equality passes, and where the interval covers a boundary nothing is said.

Nothing here is a certificate of roadworthiness, a valuation or legal advice: local law and the licensed mechanic decide. A maker's own figure, entered with its source, goes before any figure marked common practice.

This page is made from the rules themselves.`;

/**
 * The Handbook as Markdown: every rule with its formula, limits and source, from the rules' own records.
 *
 * @example handbookPage().startsWith("# Handbook") // true
 */
export const handbookPage = (): string => `${[INTRODUCTION, ...rules.map(section)].join("\n\n")}\n`;
