import type { Entry } from "@evenhand/shared/comparison";
import type { Acknowledgement, OpenMatterKind } from "@evenhand/shared/summary";
import { MATTERS } from "./kinds.ts";

/** A matter that stops the money or can hurt somebody, with the lines that speak of it, by index. */
export type OpenMatter = {
  readonly matter: OpenMatterKind;
  readonly severity: "halt" | "danger";
  readonly entries: readonly number[];
};

export type Unanswered = { readonly matter: OpenMatterKind; readonly because: "not-answered" | "no-words" };

const byMember = new Map(
  MATTERS.flatMap(({ matter, members }) => members.map((member) => [member, matter] as const)),
);
const byKind = new Map(MATTERS.map(({ matter, words }) => [matter, words]));

/**
 * The matter an item of the sheet belongs to.
 *
 * @example matterOf("road.braking") // "brakes"
 * @example matterOf("underbody.rails") // "structure"
 */
export const matterOf = (item: string): OpenMatterKind =>
  byMember.get(item) ?? byMember.get(item.slice(0, item.indexOf("."))) ?? "equipment";

/**
 * How a matter is called.
 *
 * @example matterWords("water") // "flood and water"
 */
export const matterWords = (matter: OpenMatterKind): string => byKind.get(matter) ?? matter;

type Open = Entry & { readonly severity: "halt" | "danger" };

/**
 * Whether a line keeps a matter open: it is of halt or danger, bad, in doubt or unseen. What was found and has no yardstick is no
 * finding against the car.
 */
const isOpen = (entry: Entry): entry is Open =>
  (entry.severity === "halt" || entry.severity === "danger") &&
  entry.coverageOnly !== true &&
  (!entry.marks.includes("no-yardstick") || entry.standing === "contradicted-by-figures");

/**
 * What must be gone through before a car is approved, each matter once, whatever number of lines speak of it: what stops the money
 * first, then what can hurt somebody, in the order of the kinds. Settled by severity alone: an item of the brakes that costs money
 * and hurts nobody is none of it, a flooded car is.
 *
 * @example openMatters(comparison.entries)[0] // { matter: "title", severity: "halt", entries: [14] }
 */
export const openMatters = (entries: readonly Entry[]): OpenMatter[] => {
  const found = new Map<OpenMatterKind, { severity: "halt" | "danger"; entries: number[] }>();
  for (const [index, entry] of entries.entries()) {
    if (!isOpen(entry)) continue;
    const kind = matterOf(entry.item);
    const matter = found.get(kind) ?? { severity: entry.severity, entries: [] };
    matter.entries.push(index);
    if (entry.severity === "halt") matter.severity = "halt";
    found.set(kind, matter);
  }
  const inOrder = MATTERS.flatMap(({ matter }) => {
    const one = found.get(matter);
    return one === undefined ? [] : [{ matter, ...one }];
  });
  return [
    ...inOrder.filter(({ severity }) => severity === "halt"),
    ...inOrder.filter(({ severity }) => severity === "danger"),
  ];
};

/**
 * Which open matters nobody has answered for. What stops the money, and what is taken as it is, asks for the buyer's own words.
 *
 * @example
 * unanswered([{ matter: "brakes", severity: "danger" }], [{ matter: "brakes", answer: "first" }]) // []
 */
export const unanswered = (
  matters: readonly Pick<OpenMatter, "matter" | "severity">[],
  given: readonly Acknowledgement[],
): Unanswered[] =>
  matters.flatMap(({ matter, severity }): Unanswered[] => {
    const answer = given.findLast((each) => each.matter === matter);
    if (answer === undefined) return [{ matter, because: "not-answered" }];
    const needsWords = severity === "halt" || answer.answer === "as-it-is";
    return needsWords && answer.words === undefined ? [{ matter, because: "no-words" }] : [];
  });
