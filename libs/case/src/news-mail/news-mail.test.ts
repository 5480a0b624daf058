import { NewsMail, NoticeKind } from "@evenhand/shared/http/notices";
import { expect, it } from "vitest";
import { mailTime } from "./index.ts";

it.each(NoticeKind.options)("%s is mailed as was chosen, and a deadline always at once", (kind) => {
  const chosen = NewsMail.options.map((choice) => mailTime(kind, choice));
  expect(chosen).toEqual(kind === "deadline-near" ? ["now", "now", "now"] : ["now", "morning", "never"]);
});
