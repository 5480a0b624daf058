import { array, assert, constantFrom, property, uniqueArray } from "fast-check";
import { describe, expect, it } from "vitest";
import type { Matter } from "@evenhand/shared/matter";
import { SEVERITIES } from "@evenhand/shared/terms";
import { kinds } from "../kinds/index.ts";
import { openMatters } from "./index.ts";

const matter = (kind: string, severity: Matter["severity"], ...lines: number[]): Matter => ({
  kind,
  zone: null,
  severity,
  certainty: "seen",
  headline: `The ${kind}`,
  found: kind,
  decides: "",
  next: { step: "ask", words: "Ask" },
  question: "",
  admitted: false,
  lines,
  checks: [],
  costRows: [],
});

const sorted = (ids: string[]): string[] => ids.toSorted();

describe("openMatters", () => {
  it("keeps what stops the money or can hurt somebody, the money first", () => {
    const open = openMatters([
      matter("brakes", "danger", 4),
      matter("title", "halt", 9),
      matter("engine-wear", "worth", 2),
    ]);
    expect(open.map(({ id, severity, lines }) => [id, severity, lines])).toEqual([
      ["title", "halt", [9]],
      ["brakes", "danger", [4]],
    ]);
  });

  it("answers for the last together where there are more than eight", () => {
    const all = kinds.slice(0, 10).map(({ id }, at) => matter(id, at < 2 ? "halt" : "danger", at));
    const open = openMatters(all);
    expect(open).toHaveLength(8);
    expect(open.at(-1)?.lines).toEqual([7, 8, 9]);
    expect(open.at(-1)?.headline).toMatch(/^The .+; the .+; the .+$/);
  });

  const anyMatters = uniqueArray(constantFrom(...kinds.map(({ id }) => id)), { maxLength: 15 }).chain((ids) =>
    array(constantFrom(...SEVERITIES), { minLength: ids.length, maxLength: ids.length }).map((grave) =>
      ids.map((id, at) => matter(id, grave[at] ?? "small", at)),
    ),
  );

  it("loses no matter and no line of halt or danger, and folds nothing that stops the money", () => {
    assert(
      property(anyMatters, (all) => {
        const open = openMatters(all);
        const grave = all.filter(({ severity }) => severity === "halt" || severity === "danger");
        expect(sorted(open.flatMap(({ matters }) => matters))).toEqual(sorted(grave.map(({ kind }) => kind)));
        expect(open.flatMap(({ lines }) => lines)).toHaveLength(grave.length);
        const halts = open.filter(({ severity }) => severity === "halt");
        expect(halts.every(({ matters }) => matters.length === 1)).toBe(true);
        expect(open.length).toBeLessThanOrEqual(Math.max(8, halts.length + 1));
      }),
      { numRuns: 1000 },
    );
  });
});
