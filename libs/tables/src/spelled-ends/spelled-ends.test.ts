import { expect, test } from "vitest";
import { readCsv } from "../read-csv/index.ts";
import { spelledEnds } from "./index.ts";

const names = (csv: string): (string | undefined)[] =>
  spelledEnds(readCsv(csv)).rows.map(({ cells }) => cells[0]?.text);

test("R is the rear beside F, and the right beside L", () => {
  expect(names("F bumper,ok\nR bumper,ok\n")).toEqual(["F bumper", "Rear bumper"]);
  expect(names("L mirror,ok\nR mirror,ok\n")).toEqual(["L mirror", "R mirror"]);
  expect(names("Mirror R,ok\nHorn,ok\n")).toEqual(["Mirror R", "Horn"]);
});
