import { describe, expect, it } from "vitest";
import { BOOKING_HORIZON_MS, datesRefusal, LOOKING_BACK_MS } from "./index.ts";

const NOW = Date.UTC(2026, 5, 1);
const on = (at: number): string => new Date(at).toISOString().slice(0, 10);
const ask = (from: string, until: string, most = 62) => datesRefusal(from, until, NOW, most);

describe("dates that calendars are laid out over", () => {
  it("are one day or as many as may be, the first not after the last", () => {
    expect(ask("2026-06-01", "2026-06-01", 1)).toBeNull();
    expect(ask("2026-06-01", "2026-08-01")).toBeNull();
    expect(ask("2026-06-01", "2026-08-02")).toEqual({ code: "not-a-stretch", days: 62 });
    expect(ask("2026-06-02", "2026-06-01")).toEqual({ code: "not-a-stretch", days: 62 });
    expect(ask("2026-06-xx", "2026-06-01")).toEqual({ code: "not-a-stretch", days: 62 });
  });

  it("lie at most 250 days ahead and three years back, and the one that does not is named", () => {
    const [last, first] = [on(NOW + BOOKING_HORIZON_MS), on(NOW - LOOKING_BACK_MS)];
    expect([ask(last, last), ask(first, first)]).toEqual([null, null]);
    const beyond = on(NOW + BOOKING_HORIZON_MS + 86_400_000);
    expect(ask(last, beyond)).toEqual({ code: "too-far-ahead", at: "until", days: 250 });
    const before = on(NOW - LOOKING_BACK_MS - 86_400_000);
    expect(ask(before, first)).toEqual({ code: "too-far-back", at: "from" });
  });
});
