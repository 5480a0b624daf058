import { expect, test } from "vitest";
import { accessBody, mayConfirm, nothingAnswered, withPermission } from "./access.ts";

const plugs = { car: "car-1", item: "spark-plugs" };
const otherPlugs = { car: "car-2", item: "spark-plugs" };
const zone = "America/Denver";

test("a visit is confirmed once access is and every permission has its answer, a no as good as a yes", () => {
  const access = { ...nothingAnswered, access: true };
  expect(mayConfirm(access, [])).toBe(true);
  expect(mayConfirm(access, [plugs])).toBe(false);
  expect(mayConfirm(withPermission(access, plugs, false), [plugs])).toBe(true);
  expect(mayConfirm(withPermission(nothingAnswered, plugs, true), [plugs])).toBe(false);
});

test("the same item of another car has its own answer", () => {
  const answers = withPermission({ ...nothingAnswered, access: true }, plugs, true);
  expect(mayConfirm(answers, [plugs, otherPlugs])).toBe(false);
  const both = withPermission(answers, otherPlugs, false);
  expect(accessBody(both, [plugs, otherPlugs], zone).permissions).toEqual([
    { ...plugs, allowed: true },
    { ...otherPlugs, allowed: false },
  ]);
});

test("how long the car is kept from sale goes as an instant of the site's clock, or not at all", () => {
  expect(accessBody(nothingAnswered, [], zone)).toEqual({ access: true, permissions: [] });
  expect(accessBody({ ...nothingAnswered, heldUntil: "2026-12-04T18:00" }, [], zone)).toMatchObject({
    heldFromSaleUntil: "2026-12-05T01:00:00Z",
  });
});
