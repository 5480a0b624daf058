import { expect, it } from "vitest";
import { warmUp } from "./warm-up.ts";

/** Times of two works, round by round; the last round's go on. */
const told = (rounds: readonly (readonly number[])[]) => {
  let next = 0;
  return (): readonly number[] => {
    const times = rounds[Math.min(next, rounds.length - 1)] ?? [];
    next += 1;
    return times;
  };
};

it("goes on while any work still grows faster, and past one round that does not", () => {
  const rounds = [
    [1, 5],
    [1, 4],
    [1, 4],
    [1, 3],
    [1, 3],
    [1, 2.99],
  ];
  expect(warmUp(told(rounds))).toBe(1200);
});

it("stops after the second round without a gain", () => {
  expect(warmUp(told([[1, 1]]))).toBe(600);
});

it("takes a busy moment of the machine for no beginning to gain from", () => {
  expect(warmUp(told([[1], [3], [2], [1]]))).toBe(600);
});

it("ends where a work never stops growing faster", () => {
  let time = 1;
  expect(warmUp(() => [(time *= 0.9)])).toBe(4000);
});
