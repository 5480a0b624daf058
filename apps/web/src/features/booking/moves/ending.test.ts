import { expect, test } from "vitest";
import { cancelBody, declineBody, noEnding } from "./ending.ts";

test("who declines need give no cause and no word", () => {
  expect(declineBody({ ...noEnding, note: "  " })).toEqual({});
  expect(declineBody({ ...noEnding, cause: "car-sold", note: " sold on Friday " })).toEqual({
    cause: "car-sold",
    note: "sold on Friday",
  });
});

test("only an inspector's cancelling says what work was done", () => {
  const ending = { ...noEnding, setOut: true, minutes: 45 };
  expect(cancelBody(ending, "weather", true)).toEqual({
    cause: "weather",
    work: { setOut: true, minutesDone: 45 },
  });
  expect(cancelBody(ending, "weather", false)).toEqual({ cause: "weather" });
});

test("a field of minutes that was emptied says none", () => {
  expect(cancelBody({ ...noEnding, minutes: "" }, "weather", true).work).toEqual({
    setOut: false,
    minutesDone: 0,
  });
});
