import type { Release, ReleasedMatter } from "@evenhand/shared/http/releases";
import { expect, test } from "vitest";
import { byMatter } from "./by-matter.ts";

const brakes: ReleasedMatter = {
  id: "brakes",
  severity: "danger",
  headline: "The brake pedal sinks",
  found: true,
};
const top: ReleasedMatter = { id: "top", severity: "repair", headline: "The top is worn", found: true };

const release = (id: string, matter: ReleasedMatter | null, comparison = "k"): Release => ({
  id,
  revision: 1,
  as: "dealer",
  vehicle: "v",
  comparison,
  entryIndex: 0,
  standsIn: null,
  entry: {
    item: "brakes.pedal-sink",
    position: "",
    atom: { of: "answer" },
    outcome: "differ",
    calls: { a: "good", b: "danger" },
    severity: "danger",
    marks: [],
    reason: "other-answer",
    direction: "stated-better",
    standing: "differs",
    firmness: { a: "asserted", b: "asserted" },
    finding: { a: 0, b: 0 },
  },
  a: null,
  b: null,
  matter,
  state: "released",
  looked: null,
  deadline: null,
  zone: null,
  thread: [],
  reason: null,
  releasedAt: "2026-05-04T15:00:00Z",
  answeredAt: null,
});

test("items of one matter stand together, the gravest matter first, those of none last", () => {
  const seen = byMatter([
    release("1", null),
    release("2", top),
    release("3", brakes),
    release("4", top),
    release("5", brakes, "other"),
  ]);
  expect(
    seen.map(({ matter, releases }) => [matter?.headline ?? null, releases.map(({ id }) => id)]),
  ).toEqual([
    ["The brake pedal sinks", ["3"]],
    ["The brake pedal sinks", ["5"]],
    ["The top is worn", ["2", "4"]],
    [null, ["1"]],
  ]);
});
