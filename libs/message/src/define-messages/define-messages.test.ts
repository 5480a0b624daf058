import { expect, expectTypeOf, test } from "vitest";
import { defineMessages, messageCatalog } from "./index.ts";

const messages = defineMessages("shed", {
  open: "open",
  at: "at {place}, {count, plural, one {# day} other {# days}}",
});

test("a room's messages are said by their ids, each with its own places", () => {
  expect(messages.say("open")).toBe("open");
  expect(messages.say("at", { place: "Uthwick", count: 2 })).toBe("at Uthwick, 2 days");
  expectTypeOf<Parameters<typeof messages.say<"open">>>().toEqualTypeOf<["open"]>();
  expectTypeOf<Parameters<typeof messages.say<"at">>[1]>().toEqualTypeOf<
    Readonly<Record<"place" | "count", string | number>>
  >();
});

test("they stand in the catalog under the room's name, and no two under one", () => {
  expect(messageCatalog().get("shed.open")).toBe("open");
  expect(defineMessages("shed", { open: "open" }).say("open")).toBe("open");
  expect(() => defineMessages("shed", { open: "closed" })).toThrow("shed.open stands twice");
  expect(messageCatalog().get("shed.open")).toBe("open");
});
