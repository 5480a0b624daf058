import { expect, test } from "vitest";
import { aboutOf, begunComplaint, withPart } from "./complaint-form";

const begun = begunComplaint("a firm");

test("a complaint is about what was chosen, or about the first that its field shows", () => {
  expect(aboutOf(begun, "first visit")).toEqual({ kind: "appointment", id: "first visit" });
  expect(aboutOf(withPart(begun, { chosen: "other visit" }), "first visit").id).toBe("other visit");
  expect(aboutOf(begun, undefined).id).toBeNull();
});

test("a visit that was chosen is not taken for a car", () => {
  const turned = withPart(withPart(begun, { chosen: "other visit" }), { kind: "vehicle" });
  expect(aboutOf(turned, "first car")).toEqual({ kind: "vehicle", id: "first car" });
});

test("a complaint about something else names nothing", () => {
  expect(aboutOf(withPart(begun, { kind: "other" }), "first visit")).toEqual({ kind: "other", id: null });
});

test("what is typed stays while the rest is changed", () => {
  expect(withPart(withPart(begun, { text: "It rained in." }), { kind: "vehicle" }).text).toBe(
    "It rained in.",
  );
});
