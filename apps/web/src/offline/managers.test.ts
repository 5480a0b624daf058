import "fake-indexeddb/auto";
import { problemType } from "@evenhand/shared/http/problem-codes";
import { expect, test } from "vitest";
import { Refusal, unreachable } from "../service/refusal.ts";
import { whyFailed } from "./managers.ts";

const refusal = (type: string, status: number) => new Refusal({ type, title: "", status, detail: "" });

test("no answer at all is no signal; a sealed report is sealed; everything else is a refusal", () => {
  expect(whyFailed(new Refusal(unreachable))).toBe("lose-signal");
  expect(whyFailed(refusal(problemType("report-sealed"), 409))).toBe("seal");
  expect(whyFailed(refusal(problemType("not-found"), 404))).toBe("refuse");
  expect(whyFailed(refusal("unreachable", 502))).toBe("refuse");
  expect(whyFailed(new Error("no room"))).toBe("refuse");
});
