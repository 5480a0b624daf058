import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { expect, test } from "vitest";
import { answerAfter, chosenOptions } from "./several-choices.ts";

const braking = sheetVersion1.items.find(({ id }) => id === "road.braking");
if (braking === undefined) throw new Error("the sheet asks for braking");
const press = (...pressed: readonly string[]) =>
  pressed.reduce<ReturnType<typeof answerAfter>>(
    (answer, id) => answerAfter(braking, answer ?? undefined, id),
    null,
  );

test("two that are true at once are one answer, in the order of the sheet", () => {
  expect(press("shudders", "pulls")).toEqual({ kind: "choice", option: "pulls", also: ["shudders"] });
});

test("what is good is so alone, and gives way to what is not", () => {
  expect(press("pulls", "shudders", "straight")).toEqual({ kind: "choice", option: "straight" });
  expect(press("straight", "shudders")).toEqual({ kind: "choice", option: "shudders" });
});

test("pressed again it is taken back; with none left there is no answer", () => {
  expect(chosenOptions(press("pulls", "shudders", "pulls") ?? undefined)).toEqual(["shudders"]);
  expect(press("pulls", "pulls")).toBeNull();
});
