import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { expect, test } from "vitest";
import { readCsv } from "../read-csv/index.ts";
import { readTable } from "../read-table/index.ts";
import { draftReport } from "./index.ts";

const header = {
  kind: "inspection" as const,
  vehicle: {
    make: "Brandell",
    model: "Vesper",
    modelYear: 1978,
    identification: "BV1978-00412",
    form: {
      body: "coupe" as const,
      doors: 2,
      cylinders: 4,
      construction: "unit-body" as const,
      gearbox: "manual" as const,
      driven: "rear" as const,
      fuelSystem: "carburetor" as const,
      systemVolts: 12 as const,
      brakes: { front: "disc" as const, rear: "drum" as const },
    },
  },
  author: { organization: "Draft", role: "inspector" as const },
  visit: { started: "2026-05-06T13:10:00Z", zone: "America/Chicago" },
};
const draftOf = (csv: string) => readTable({ form: "csv", grids: [readCsv(csv)], aside: [] }, sheetVersion1);

test("a draft is a report of the sheet, and what the car does not have is left out and said", () => {
  const made = draftReport(
    draftOf("Item,Result\nHorn,ok\nCylinder 9 compression,120 psi\n"),
    header,
    sheetVersion1,
  );
  expect(made).toMatchObject({
    ok: true,
    report: { findings: [{ item: "electrics.horn" }] },
    leftOut: [{ row: 3 }],
  });
});

test("a header that is no header is said, and no report is made", () => {
  const wrong = { ...header, visit: { ...header.visit, started: "yesterday" } };
  expect(draftReport(draftOf("Item,Result\nHorn,ok\n"), wrong, sheetVersion1)).toMatchObject({ ok: false });
});
