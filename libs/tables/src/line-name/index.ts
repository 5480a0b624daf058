import { MOST_LINE_NAME } from "@evenhand/shared/http/readings";
import { folded } from "../folded/index.ts";
import type { Claim } from "../table-claims/index.ts";

/**
 * What a sheet calls a line: the headings above it, its own name, its place and its column, however spaced and capitalized. The value is no
 * part of it, so that the same line of the same sheet on another car has the same name.
 *
 * @param around words of the headings above
 */
export const lineName = (claim: Pick<Claim, "names" | "where">, around: readonly string[]): string => {
  const own = [claim.names[0], ...claim.where].map((label) => folded(label?.text ?? ""));
  return [around.join(" "), ...new Set(own)]
    .filter((text) => text !== "")
    .join(" · ")
    .slice(0, MOST_LINE_NAME);
};
