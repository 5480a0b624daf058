import { expect, it } from "vitest";
import { median, medianRatio, timeBlocks } from "./blocks.ts";

/** A machine on which every work takes its own time, and clearing up takes as long as what was left since. */
const machine = () => {
  const said: string[] = [];
  let time = 0;
  let left = 0;
  const clearUp = (): void => {
    said.push("clear");
    time += left;
    left = 0;
  };
  return {
    said,
    work: (name: string, takes: number, leaves: number) => (): void => {
      said.push(name);
      time += takes;
      left += leaves;
    },
    meter: { now: () => time, clearUp },
  };
};

it("runs one work so often and then the other, each block cleared up before and within its time", () => {
  const { said, work, meter } = machine();
  timeBlocks([work("parse", 1, 0), work("compare", 1, 0)], { blocks: 2, runs: 2 }, meter);
  const parsing = ["clear", "parse", "parse", "clear"];
  const comparing = ["clear", "compare", "compare", "clear"];
  expect(said).toEqual([...parsing, ...comparing, ...parsing, ...comparing]);
});

it("lets each work pay for what it leaves, and for nothing another left", () => {
  const { work, meter } = machine();
  const tidy = work("tidy", 2, 0);
  const untidy = work("untidy", 1, 4);
  expect(timeBlocks([untidy, tidy], { blocks: 1, runs: 3 }, meter)).toEqual([[5, 2]]);
  untidy();
  expect(timeBlocks([tidy], { blocks: 1, runs: 3 }, meter)).toEqual([[2]]);
});

it("takes the middle one of the blocks' own ratios, whatever slows a whole block", () => {
  const blocks = [
    [1, 2],
    [10, 30],
    [1, 90],
  ];
  expect(medianRatio(blocks)).toBe(3);
  expect(median([4, 1, 3, 2])).toBe(3);
});
