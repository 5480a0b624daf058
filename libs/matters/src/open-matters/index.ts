import { lowered } from "@evenhand/message/first-letter";
import { listed } from "@evenhand/message/listed";
import { matterId } from "@evenhand/shared/matter-id";
import type { Matter } from "@evenhand/shared/matter";
import { kindOf } from "../kinds/index.ts";

/** What must be answered for before a car is approved, with the lines that speak of it, by index, gravest first. */
export type OpenMatter = {
  readonly id: string;
  readonly name: string;
  readonly matters: readonly string[];
  readonly severity: "halt" | "danger";
  readonly headline: string;
  readonly found: string;
  readonly lines: readonly number[];
};

type Open = Matter & { readonly severity: "halt" | "danger" };

/** More than anybody goes through one by one with care. */
const MOST = 8;

const isOpen = (matter: Matter): matter is Open => matter.severity === "halt" || matter.severity === "danger";

const alone = (matter: Open): OpenMatter => ({
  id: matterId(matter),
  name: kindOf(matter.kind).name,
  matters: [matterId(matter)],
  severity: matter.severity,
  headline: matter.headline,
  found: matter.found,
  lines: matter.lines,
});

const together = (one: OpenMatter, other: OpenMatter): OpenMatter => ({
  id: one.id,
  name: listed([one.name, other.name]),
  matters: [...one.matters, ...other.matters],
  severity: one.severity,
  headline: listed([one.headline, lowered(other.headline)], "semicolon"),
  found: listed([one.found, other.found], "semicolon"),
  lines: [...one.lines, ...other.lines],
});

/** The last two of what can hurt somebody made one, until no more than `MOST` are left; what stops the money stays by itself. */
const folded = (open: readonly OpenMatter[]): readonly OpenMatter[] => {
  const dangers = open.filter(({ severity }) => severity === "danger");
  const [last, other] = [dangers.at(-2), dangers.at(-1)];
  if (open.length <= MOST || last === undefined || other === undefined) return open;
  return folded(
    open.filter((one) => one !== other).map((one) => (one === last ? together(last, other) : one)),
  );
};

/**
 * What must be gone through before a car is approved: the matters that stop the money or can hurt somebody, found or not known,
 * what stops the money first, else as they stand. About eight at most: where there are more, the last that can hurt somebody are
 * answered for together.
 *
 * @param all matters of a comparison, worst first
 * @example openMatters(matters)[0] // { id: "title", severity: "halt", headline: "There is no title", … }
 */
export const openMatters = (all: readonly Matter[]): readonly OpenMatter[] => {
  const open = all.filter(isOpen).map(alone);
  return folded([
    ...open.filter(({ severity }) => severity === "halt"),
    ...open.filter(({ severity }) => severity === "danger"),
  ]);
};
