import { access } from "@evenhand/shared/access";
import { expect, test } from "vitest";
import { askedFirst, askEarly, comparisonAt, takeEarly } from "./early.ts";

const id = "01a1cc4d-9940-7000-8001-59165ddd66ee";
const addressOf = (route: "account.get" | "comparisons.get" | "comparisons.answer"): string =>
  `/api/v1${access[route].path.replace(":id", id)}`;

test("what is asked early has the addresses by which it is taken", () => {
  expect(askedFirst("/cars")).toEqual([addressOf("account.get")]);
  expect(askedFirst(`/comparisons/${id}`)).toEqual([
    addressOf("account.get"),
    addressOf("comparisons.get"),
    addressOf("comparisons.answer"),
  ]);
});

test.each([
  [`/comparisons/${id}`, id],
  [`/comparisons/${id}/`, id],
  [`/comparisons/${id}/more`, undefined],
  ["/comparisons", undefined],
  [`/cases/${id}`, undefined],
])("%s opens the comparison %s", (pathname, opened) => expect(comparisonAt(pathname)).toBe(opened));

test("what could not be asked fails for whoever takes it, and is asked anew after that", async () => {
  expect(await takeEarly(addressOf("account.get"))).toBeUndefined();
  // Outside a page an address without its site cannot be asked for.
  askEarly("/cars");
  await expect(takeEarly(addressOf("account.get"))).rejects.toThrow(TypeError);
  expect(await takeEarly(addressOf("account.get"))).toBeUndefined();
});
