import { expect, test } from "vitest";
import { readCsv } from "../read-csv/index.ts";
import { carriedDown } from "./index.ts";

const values = (csv: string): (string | undefined)[] =>
  carriedDown(readCsv(csv).rows).map(({ cells }) => cells[1]?.text);

test("ditto is what stands above, however often; a title parts two rows", () => {
  expect(values('a,ok\nb,ditto\nc,""""\nd,as above\n')).toEqual(["ok", "ok", "ok", "ok"]);
  expect(values("a,ok\nENGINE\nb,ditto\n")).toEqual(["ok", undefined, "ditto"]);
  expect(values("a,ok\nb,as above but less so\n")).toEqual(["ok", "as above but less so"]);
});

test("below a unit an inch mark is inches", () => {
  expect(values('a,mm\nb,""""\n')).toEqual(["mm", '"']);
});
