import { sentence, sentenceContext } from "@evenhand/comparison/sentence";
import { findRule } from "@evenhand/handbook/rules";
import { sentence as ruleSentence } from "@evenhand/handbook/sentence";
import type { CrossCheck } from "@evenhand/shared/cross-check";
import { plainSlash } from "../../ui/plain-slash";
import type { ComparisonSource, Row } from "./model";

/** The one sentence of a line, worded where every page and the command line take it from. */
export const entrySentence = ({ index, a, b }: ComparisonSource, { entry }: Row): string =>
  plainSlash(sentence(entry, sentenceContext(entry, index.sheet, a, b)));

/** What a rule of the handbook says of what it read. */
export const checkSentence = (check: CrossCheck): string => plainSlash(ruleSentence(check));

export const checkTitle = ({ rule }: CrossCheck): string => findRule(rule)?.title ?? rule;
export const checkSource = ({ rule }: CrossCheck): string | undefined => findRule(rule)?.source.text;
