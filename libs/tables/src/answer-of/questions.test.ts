import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { expect, test } from "vitest";
import { readCsv } from "../read-csv/index.ts";
import { readTable } from "../read-table/index.ts";

const answer = (question: string, said: string): unknown => {
  const csv = `Question;Answer;Where\n${question};${said}\nHorn works?;Yes;\n`;
  const row = readTable({ form: "csv", grids: [readCsv(csv)], aside: [] }, sheetVersion1).rows[1];
  return row?.findings[0]?.finding.answer ?? row?.end;
};

test("yes to a question for trouble is bad, and no to it good", () => {
  expect(answer("Is the boot damp?", "Yes;")).toMatchObject({ option: "damp" });
  expect(answer("Does any warning light stay on?", "Yes;")).toMatchObject({ value: "no" });
  expect(answer("Does the radiator leak?", "No;")).toMatchObject({ option: "none" });
  expect(answer("Does it smoke on the overrun?", "Yes;puff")).toMatchObject({ option: "puff" });
  expect(answer("Is the battery tray free of rust?", "No;")).toMatchObject({
    found: [{ kind: "corrosion" }],
  });
  expect(answer("Is the battery tray free of rust?", "Yes;")).toMatchObject({ found: [] });
});

test("no to one trouble of several says nothing of the others", () => {
  for (const question of ["Is the oil milky?", "Does the clutch slip?", "Does it jump out of gear?"])
    expect(answer(question, "No;")).toBe("refused");
});

test("under a heading that asks whether it is in order, yes is good of noise and smoke too", () => {
  const csv = "Driving,OK?,Note\nVibration,Y,\nFuel smell,N,strong\nHorn,N,\n";
  const { rows } = readTable({ form: "csv", grids: [readCsv(csv)], aside: [] }, sheetVersion1);
  expect(rows.slice(1).map(({ findings }) => findings[0]?.finding.answer)).toMatchObject([
    { option: "none" },
    { value: "present" },
    { value: "no" },
  ]);
});
