import { expect, test } from "vitest";
import { askedPlaces, lookedAt } from "./look-again";

const askedAt = "2026-05-04T17:00:00Z";
const asked = askedPlaces({
  askedAt,
  places: [
    { item: "electrics.horn", position: "" },
    { item: "wheels.tread-depth", position: "left-front" },
  ],
});

test("nothing was asked where nobody asked", () => {
  expect(askedPlaces(undefined).size).toBe(0);
  expect(askedPlaces(null).size).toBe(0);
});

test("a place is looked at again once its finding says so, and other places are none of it", () => {
  const keys = [...asked, "electrics.clock@"];
  const places = keys.map((key) => ({ key }));
  const [horn = "", tire = ""] = keys;
  const { again, open } = lookedAt(
    places,
    asked,
    new Map([
      [horn, { finding: { look: "second" } }],
      [tire, { finding: {} }],
      ["electrics.clock@", { finding: { look: "second" } }],
    ]),
  );
  expect(again.map(({ key }) => key)).toEqual([horn]);
  expect(open.map(({ key }) => key)).toEqual([tire]);
});
