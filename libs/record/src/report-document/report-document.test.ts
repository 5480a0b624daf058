import { expect, test } from "vitest";
import { inSheetOrder, newHeader } from "./index.ts";

const body = (item: string, position = "") => ({ item, position, body: `${item} ${position}` });

test("findings stand in the sheet's order, positions by name, and what the sheet does not know stands last", () => {
  const tires = ["right-front", "left-front"].map((position) => body("wheels.tread-depth", position));
  const given = [body("no-such.item"), ...tires, body("electrics.horn")];
  const order = inSheetOrder(given);
  expect(order.at(-1)).toBe("no-such.item ");
  expect(order.indexOf("wheels.tread-depth left-front")).toBeLessThan(
    order.indexOf("wheels.tread-depth right-front"),
  );
  expect(inSheetOrder(given.toReversed())).toEqual(order);
});

test("a new report is on the sheet of today, with nothing in it that was not said", () => {
  const visit = { started: "2026-05-04T15:00:00Z", ended: "2026-05-04T18:40:00Z", zone: "America/Chicago" };
  expect(newHeader({ visit })).toEqual({
    sheet: { id: expect.any(String), version: expect.anything() },
    visit,
    instruments: [],
    persons: [],
    scales: [],
  });
});
