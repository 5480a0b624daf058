import { expect, test } from "vitest";
import { failuresOf, lastLine, secondAttemptsOf, sum, tallyOfExit, tallyOfRun } from "./tally.mjs";

const file = (status, ...tests) => ({ status, assertionResults: tests.map((one) => ({ status: one })) });
const report = (over) => ({
  numPassedTests: 3,
  numFailedTests: 0,
  numPendingTests: 0,
  numTodoTests: 0,
  testResults: [],
  ...over,
});

test("a clean run counts its tests", () => {
  expect(tallyOfRun(report({}), 0)).toEqual({ passed: 3, failed: 0 });
});

test("a file that could not be run fails although no test of it did", () => {
  expect(tallyOfRun(report({ testResults: [file("failed"), file("passed", "passed")] }), 1)).toEqual({
    passed: 3,
    failed: 1,
  });
});

test("a file with failed tests is not counted again beside them", () => {
  const counts = { numFailedTests: 2, testResults: [file("failed", "failed", "failed")] };
  expect(tallyOfRun(report(counts), 1)).toEqual({ passed: 3, failed: 2 });
});

test("skipped tests and tests left to do count as failed", () => {
  expect(tallyOfRun(report({ numPendingTests: 1, numTodoTests: 1 }), 0)).toEqual({ passed: 3, failed: 2 });
});

test("a run that ends badly with no failed test still fails", () => {
  expect(tallyOfRun(report({}), 1)).toEqual({ passed: 3, failed: 1 });
  expect(tallyOfRun(null, 1)).toEqual({ passed: 0, failed: 1 });
});

test("the last line is the sum of everything", () => {
  expect(lastLine(sum([{ passed: 10, failed: 0 }, tallyOfExit(0), tallyOfExit(2)]))).toBe(
    "11 passed, 1 failed",
  );
});

test("what failed is told by file, test and the first line of what was said", () => {
  const failed = {
    status: "failed",
    name: "a.test.ts",
    message: "",
    assertionResults: [
      { status: "passed", fullName: "adds", failureMessages: [] },
      {
        status: "failed",
        fullName: "divides",
        failureMessages: ["AssertionError: 2 is not 3\n    at a.test.ts:4"],
      },
    ],
  };
  const broken = {
    status: "failed",
    name: "b.test.ts",
    message: "SyntaxError: no\nat b",
    assertionResults: [],
  };
  expect(failuresOf({ testResults: [failed, broken] }, "unit")).toEqual([
    "a.test.ts > divides: AssertionError: 2 is not 3",
    "b.test.ts: SyntaxError: no",
  ]);
  expect(failuresOf(null, "unit")).toEqual(["unit: the test runner left no readable result"]);
});

test("what passed at a second attempt only is told with what the first one said", () => {
  const tests = [
    { status: "passed", fullName: "books", failureMessages: [] },
    { status: "passed", fullName: "reads", failureMessages: ["Error: interrupted\n    at b.test.ts:9"] },
    { status: "failed", fullName: "seals", failureMessages: ["Error: no"] },
  ];
  const run = { testResults: [{ status: "failed", name: "b.test.ts", assertionResults: tests }] };
  expect(secondAttemptsOf(run)).toEqual(["b.test.ts > reads: Error: interrupted"]);
  expect(secondAttemptsOf(null)).toEqual([]);
  expect(sum([{ passed: 1, failed: 0, seconds: ["a"] }, tallyOfExit(0)]).seconds).toEqual(["a"]);
});
