import { expect, test } from "vitest";
import { isLoopback } from "./loopback.ts";
import { mailedLink } from "./mailed-pages.ts";

test("a token stays one part of the address", () => {
  expect(mailedLink("https://evenhand.example", "invitation", "a/b?c")).toBe(
    "https://evenhand.example/invitation/a%2Fb%3Fc",
  );
});

test.each(["localhost", "127.0.0.1", "127.9.9.9", "::1", "[::1]"])(
  "%s leads to this machine only",
  (host) => {
    expect(isLoopback(host)).toBe(true);
  },
);

test.each([
  "0.0.0.0",
  "::",
  "127.0.0.1.example.org",
  "localhost.example.org",
  "evenhand.example",
  "10.0.0.1",
  "",
])("%s may lead elsewhere", (host) => {
  expect(isLoopback(host)).toBe(false);
});
