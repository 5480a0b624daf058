import { expect, test } from "vitest";
import { videoSecond } from "./video-second.ts";

test("a second of a recording is a fragment of its address, in place of another", () => {
  expect(videoSecond(" https://example.com/walk#t=3 ", 75.9)).toBe("https://example.com/walk#t=75");
});

test.each(["", "walk", "javascript:alert(1)", "data:text/html,x", "file:///etc/hostname"])(
  "%s is no address of a page",
  (address) => {
    expect(videoSecond(address, 1)).toBeUndefined();
  },
);
