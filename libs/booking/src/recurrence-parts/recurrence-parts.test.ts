import { describe, expect, it } from "vitest";
import { findPartProblem } from "./index.ts";

describe("findPartProblem", () => {
  it("has the results its examples state", () => {
    expect(findPartProblem("FREQ=WEEKLY;BYDAY=1MO")?.reason).toMatch(
      /^a numbered day needs FREQ=MONTHLY or YEARLY, /,
    );
    expect(findPartProblem("FREQ=WEEKLY;BYDAY=MO,TU")).toBeNull();
  });

  it.each([
    ["FREQ=DAILY;FOO=1", "FOO=1"],
    ["FREQ=DAILY;BYHOUR=9", "BYHOUR=9"],
    ["FREQ=YEARLY;BYWEEKNO=20", "BYWEEKNO=20"],
    ["FREQ=HOURLY", "FREQ=HOURLY"],
    ["BYDAY=MO", "FREQ"],
    ["FREQ=DAILY;BYMONTH=13", "BYMONTH=13"],
    ["FREQ=DAILY;BYMONTH=0", "BYMONTH=0"],
    ["FREQ=DAILY;BYMONTH=-1", "BYMONTH=-1"],
    ["FREQ=MONTHLY;BYMONTHDAY=32", "BYMONTHDAY=32"],
    ["FREQ=MONTHLY;BYMONTHDAY=1,-32", "BYMONTHDAY=1,-32"],
    ["FREQ=MONTHLY;BYMONTHDAY=", "BYMONTHDAY="],
    ["FREQ=YEARLY;BYMONTH=2,4;BYMONTHDAY=31", "BYMONTHDAY=31"],
    ["FREQ=YEARLY;BYYEARDAY=367", "BYYEARDAY=367"],
    ["FREQ=DAILY;INTERVAL=0", "INTERVAL=0"],
    ["FREQ=DAILY;INTERVAL=1,2", "INTERVAL=1,2"],
    ["FREQ=DAILY;COUNT=0", "COUNT=0"],
    ["FREQ=DAILY;COUNT=101", "COUNT=101"],
    ["FREQ=DAILY;BYMONTHDAY=1;BYSETPOS=2", "BYSETPOS=2"],
    ["FREQ=WEEKLY;BYDAY=MO,TU;BYSETPOS=-8", "BYSETPOS=-8"],
    ["FREQ=DAILY;UNTIL=20260304", "UNTIL=20260304"],
    ["FREQ=DAILY;UNTIL=20260231T000000Z", "UNTIL=20260231T000000Z"],
    ["FREQ=DAILY;WKST=XX", "WKST=XX"],
    ["FREQ=DAILY;BYDAY=MO;BYDAY=TU", "BYDAY=TU"],
    ["FREQ=WEEKLY;BYDAY=XX", "BYDAY=XX"],
    ["FREQ=WEEKLY;BYDAY=1MO", "BYDAY=1MO"],
    ["FREQ=DAILY;BYDAY=-1FR", "BYDAY=-1FR"],
    ["FREQ=MONTHLY;BYDAY=6MO", "BYDAY=6MO"],
    ["FREQ=MONTHLY;BYDAY=0MO", "BYDAY=0MO"],
    ["FREQ=YEARLY;BYDAY=53SA", "BYDAY=53SA"],
    ["FREQ=YEARLY;BYMONTH=3;BYDAY=6SA", "BYDAY=6SA"],
    ["FREQ=MONTHLY;BYDAY=1MO,TU", "BYDAY=1MO,TU"],
    ["FREQ=YEARLY;BYYEARDAY=100;BYDAY=TU", "BYYEARDAY=100"],
    ["FREQ=MONTHLY;BYYEARDAY=100", "BYYEARDAY=100"],
    ["FREQ=WEEKLY;BYMONTHDAY=1", "BYMONTHDAY=1"],
    ["FREQ=DAILY;BYSETPOS=1", "BYSETPOS=1"],
    ["FREQ=MONTHLY;BYDAY=MO;BYSETPOS=0", "BYSETPOS=0"],
  ])("refuses %s, naming %s", (rrule, part) => {
    const problem = findPartProblem(rrule);
    expect(problem?.part).toBe(part);
    expect(problem?.reason.length).toBeGreaterThan(10);
  });

  it.each([
    "FREQ=DAILY",
    "FREQ=DAILY;INTERVAL=2;COUNT=10;WKST=SU",
    "FREQ=WEEKLY;BYDAY=MO,TU;UNTIL=20280229T000000Z",
    "FREQ=MONTHLY;BYDAY=-1FR,+2MO",
    "FREQ=MONTHLY;BYDAY=MO,TU,WE,TH,FR;BYSETPOS=-1",
    "FREQ=MONTHLY;BYMONTHDAY=31,-1",
    "FREQ=YEARLY;BYMONTH=2,12;BYMONTHDAY=31",
    "FREQ=YEARLY;BYDAY=52SA,-52MO",
    "FREQ=YEARLY;BYYEARDAY=1,366,-1",
  ])("takes %s", (rrule) => expect(findPartProblem(rrule)).toBeNull());
});
