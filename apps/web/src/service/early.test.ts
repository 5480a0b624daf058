import { access, accessTable, type RouteId } from "@evenhand/shared/access";
import { expect, test } from "vitest";
import { askedFirst, askEarly, comparisonAt, takeEarly } from "./early.ts";

const id = "01a1cc4d-9940-7000-8001-59165ddd66ee";
const addressOf = (route: RouteId): string => `/api/v1${access[route].path.replace(":id", id)}`;

test("what is asked early has the addresses by which it is taken", () => {
  expect(askedFirst("/cars")).toEqual({ byAll: [addressOf("account.get")], byBuyers: [] });
  expect(askedFirst(`/comparisons/${id}`)).toEqual({
    byAll: [
      addressOf("account.get"),
      addressOf("comparisons.get"),
      addressOf("comparisons.answer"),
      addressOf("cases.ofPart"),
    ],
    byBuyers: [
      addressOf("comparisons.cost"),
      `${addressOf("summaries.list")}?${new URLSearchParams({ comparison: id, limit: "10" })}`,
    ],
  });
});

const kinds = (route: RouteId) => accessTable[route].who.map(({ kind }) => kind).toSorted();

test("of whoever opens a comparison at first, nothing is asked that only some of them may", () => {
  expect(kinds("cases.ofPart")).toEqual(kinds("comparisons.get"));
  for (const route of ["comparisons.cost", "summaries.list"] as const)
    expect(kinds(route)).toEqual(["buyer"]);
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
