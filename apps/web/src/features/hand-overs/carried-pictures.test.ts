import { expect, test } from "vitest";
import { isAt, type Waiting, waitingAfter } from "./carried-pictures";

const at = { stage: "collection", item: "body.faults", position: "hood" } as const;
const one = (key: string): Waiting => ({
  key,
  at,
  file: new File(["1"], "a.jpg"),
  url: `blob:${key}`,
  error: null,
});

test("what was taken or left out waits no more; what failed says why, and is forgotten when it is tried again", () => {
  const all = waitingAfter([], { act: "add", waiting: [one("a"), one("b")] });
  const failed = waitingAfter(all, { act: "fail", key: "b", error: new Error("no signal") });
  expect(failed.map(({ key, error }) => [key, error?.message])).toEqual([
    ["a", undefined],
    ["b", "no signal"],
  ]);
  expect(waitingAfter(failed, { act: "fail", key: "b", error: null })).toEqual(all);
  expect(waitingAfter(failed, { act: "drop", key: "a" }).map(({ key }) => key)).toEqual(["b"]);
});

test("a place of one report is not the same place of the other", () => {
  expect(isAt(at, { ...at })).toBe(true);
  expect(isAt(at, { ...at, stage: "delivery" })).toBe(false);
  expect(isAt(at, { ...at, position: "" })).toBe(false);
});
