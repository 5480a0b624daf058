import { expect, it } from "vitest";
import { Matter } from "@evenhand/shared/matter";
import { comparisonOf, line, silent } from "../../testing/lines.ts";
import { matters } from "../matters/index.ts";
import { inWords } from "./index.ts";

it("gives a matter its words where somebody reads them, and not before", () => {
  const [brakes, ...others] = matters(comparisonOf([line("brakes.hoses@left-front")]), silent);
  expect(others).toEqual([]);
  if (brakes === undefined) throw new Error("no matter was joined");
  expect(brakes).not.toHaveProperty("headline");
  expect(brakes).not.toHaveProperty("found");
  const { group: _group, ...codes } = brakes;
  const matter = inWords(brakes, silent);
  expect(Matter.parse(matter)).toEqual(matter);
  expect(matter).toMatchObject(codes);
  expect(matter.headline).toBe("Brake hoses are damaged");
  expect(matter.found).toMatch(/^brake hoses, left front: /);
});
