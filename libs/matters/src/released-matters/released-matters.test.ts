import type { ReleasedFinding } from "@evenhand/shared/http/releases";
import { expect, test } from "vitest";
import { line, sheet } from "../../testing/lines.ts";
import { releasedMatters } from "./index.ts";

const choice = (place: string, option: string): ReleasedFinding => ({
  item: place.split("@")[0] ?? "",
  position: place.split("@")[1] ?? "",
  answer: { kind: "choice", option },
  firmness: "asserted",
  basis: "seen",
  instrumentName: null,
});

const pedal = {
  entry: line("brakes.pedal-sink", { finding: { a: 211, b: 340 } }),
  a: choice("brakes.pedal-sink", "holds"),
  b: choice("brakes.pedal-sink", "to-floor"),
};
const hose = {
  entry: line("brakes.hoses@left-front", { finding: { a: null, b: 12 }, outcome: "unstated" }),
  a: null,
  b: choice("brakes.hoses@left-front", "cracked"),
};
const title = {
  entry: line("identity.title-holder", { severity: "halt" }),
  a: choice("identity.title-holder", "seller-in-hand"),
  b: choice("identity.title-holder", "other-name"),
};

test("each released line is of a matter that is named by what was released", () => {
  expect(releasedMatters([title, pedal], sheet)).toEqual([
    { id: "title", severity: "halt", headline: "The title is in another person's name", found: true },
    { id: "brakes", severity: "danger", headline: "The brake pedal sinks", found: true },
  ]);
});

test("what was not released is in no word of it", () => {
  expect(releasedMatters([hose], sheet)).toEqual([
    { id: "brakes", severity: "danger", headline: "Brake hoses are damaged", found: true },
  ]);
  expect(releasedMatters([pedal], sheet)[0]?.headline).not.toMatch(/hose/);
});

test("what passes, though it is not as stated, could only be grave", () => {
  const passes = { ...pedal, entry: { ...pedal.entry, calls: { a: "good", b: "good" } as const } };
  expect(releasedMatters([passes], sheet)[0]?.found).toBe(false);
  expect(releasedMatters([passes, hose], sheet)[0]?.found).toBe(true);
});

test("lines of one cause are of one matter, in the order given", () => {
  const [first, second, third] = releasedMatters([hose, title, pedal], sheet);
  expect(first).toEqual(third);
  expect(second?.id).toBe("title");
});

test("a line that is of no matter stands by itself", () => {
  const agreed = line("electrics.horn", {
    outcome: "agree",
    severity: null,
    calls: { a: "good", b: "good" },
  });
  expect(releasedMatters([{ entry: { ...agreed, standing: "confirmed" }, a: null, b: null }], sheet)).toEqual(
    [null],
  );
});
