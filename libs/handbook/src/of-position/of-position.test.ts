import { expect, it } from "vitest";
import { ofPosition, saidPosition } from "./index.ts";

it("works out each position once", () => {
  const asked: string[] = [];
  const lengthOf = ofPosition((position) => {
    asked.push(position);
    return position.length;
  });
  expect(["left", "right", "left"].map(lengthOf)).toEqual([4, 5, 4]);
  expect(asked).toEqual(["left", "right"]);
});

it("starts over rather than hold more positions than any sheet has, and gives the same", () => {
  const lengthOf = ofPosition((position) => position.length);
  const positions = Array.from({ length: 5000 }, (_, index) => `place-${index}`);
  expect(positions.map(lengthOf)).toEqual(positions.map(({ length }) => length));
  expect(lengthOf("place-0")).toBe(7);
});

it("says a position by its words", () => {
  expect(saidPosition("right-rear-door")).toBe("right rear door");
  expect(saidPosition("")).toBe("");
});
