import type { Answer } from "@evenhand/shared/answer";
import * as fc from "fast-check";
import { expect, test } from "vitest";
import { openFaults } from "./index.ts";

const works = (value: "yes" | "no" | "intermittent"): Answer => ({ kind: "working", value });
const horn = { item: "electrics.horn", position: "" };
const fault = { ...horn, release: "r", since: 100, stated: works("yes") };
const says = (answer: Answer, sealed = 200) => ({ sealed, findings: [{ ...horn, answer }] });

test.each([
  ["no statement", null],
  ["the same as then", says(works("yes"))],
  ["nothing of the place", { sealed: 200, findings: [] }],
  ["something else, sealed before the fault was accepted", says(works("no"), 100)],
])("%s answers no fault", (_, statement) => {
  expect(openFaults([fault], statement)).toEqual([fault]);
});

test("something else, sealed afterwards, answers it, and only at its place", () => {
  const other = { ...fault, item: "electrics.wipers", release: "s" };
  expect(openFaults([fault, other], says(works("no")))).toEqual([other]);
});

test("where nothing was stated, any claim sealed afterwards answers it", () => {
  expect(openFaults([{ ...fault, stated: null }], says(works("no")))).toEqual([]);
});

test("a statement that leaves every claim as it was answers nothing, in whatever order its keys are written", () => {
  const value = fc.constantFrom("yes" as const, "no" as const, "intermittent" as const);
  fc.assert(
    fc.property(fc.array(value, { minLength: 1, maxLength: 6 }), (values) => {
      const places = values.map((one, at) => ({ item: `electrics.lamp-${at}`, position: "", one }));
      const faults = places.map(({ one, ...place }) => ({
        ...place,
        release: "r",
        since: 1,
        stated: works(one),
      }));
      const findings = places.map(({ one, ...place }) => ({
        ...place,
        answer: { value: one, kind: "working" as const },
      }));
      expect(openFaults(faults, { sealed: 2, findings })).toEqual(faults);
    }),
    { numRuns: 1_000 },
  );
});
