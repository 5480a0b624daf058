import type { Entry } from "@evenhand/shared/comparison";
import { Outcome, Standing } from "@evenhand/shared/outcome";
import { expect, test } from "vitest";
import { firstTicked, wholeMatter } from "./whole-matter";

const entry = (more: Partial<Pick<Entry, "outcome" | "standing" | "direction">>) => ({
  item: "electrics.horn",
  position: "",
  atom: { of: "answer" } as const,
  outcome: more.outcome ?? "differ",
  standing: more.standing ?? "differs",
  direction: more.direction ?? "stated-better",
  severity: "worth" as const,
  calls: { a: "good", b: "worth" } as const,
});
const entries = [
  entry({}),
  entry({ direction: "found-better" }),
  entry({ outcome: "doubtful" }),
  entry({ outcome: "unseen" }),
  entry({ outcome: "unstated" }),
  entry({ outcome: "doubtful", standing: "contradicted-by-figures" }),
];

test("of a matter every line that may be laid is, and what lies there already is not laid again", () => {
  const whole = wholeMatter(entries, [0, 1, 2, 3, 4, 5], new Set([4]));
  expect(whole.lines.map(({ at }) => at)).toEqual([0, 2, 5]);
  expect(whole.left).toBe(2);
});

test("what is in doubt is laid only where somebody ticks it, unless the figures contradict it", () => {
  expect([...firstTicked(wholeMatter(entries, [0, 2, 5], new Set()))]).toEqual([0, 5]);
});

test("a matter of what nobody saw has nothing to lay", () => {
  expect(wholeMatter(entries, [1, 3], new Set())).toEqual({ lines: [], left: 2 });
});

test("what was found better is never offered, whatever else is said of it, alone or among others", () => {
  const better = Outcome.options.flatMap((outcome) =>
    Standing.options.map((standing) => entry({ outcome, standing, direction: "found-better" })),
  );
  const all = [...better, entry({})];
  const places = all.map((_, at) => at);
  expect(better.length).toBe(Outcome.options.length * Standing.options.length);
  expect(wholeMatter(all, places, new Set()).lines.map(({ at }) => at)).toEqual([better.length]);
  expect(wholeMatter(better, places.slice(0, -1), new Set())).toEqual({ lines: [], left: better.length });
});
