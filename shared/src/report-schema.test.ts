import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import addFormats from "ajv-formats";
import { describe, expect, it } from "vitest";
import { reportSchema } from "./report-schema.ts";

function read(path: string): Record<string, unknown> {
  return JSON.parse(readFileSync(new URL(path, import.meta.url), "utf8"));
}
const published = read("../schema/report.schema.json");
const ajv = new Ajv2020({ strict: false, allErrors: true });
addFormats.default(ajv);
const validate = ajv.compile(published);
const good = read("../../fixtures/sheet/one-of-each.json");

describe("the published JSON Schema of a report file", () => {
  it("is fresh: node shared/schema/write.mjs changes nothing", () => {
    expect(published).toEqual(JSON.parse(JSON.stringify(reportSchema())));
  });

  it("takes a report with one answer of each kind", () => {
    expect(validate(good)).toBe(true);
  });

  it.each([
    ["another format", { format: "report" }],
    ["another version", { version: 2 }],
    ["a kind of report there is not", { kind: "rumor" }],
    ["a missing list of findings", { findings: undefined }],
    ["a field there is not", { price: 5 }],
    [
      "a unit there is not",
      { findings: [{ item: "a.b", answer: { kind: "reading", unit: "furlong", values: [{ value: 1 }] } }] },
    ],
    [
      "a reading without values",
      { findings: [{ item: "a.b", answer: { kind: "reading", unit: "mm", values: [] } }] },
    ],
    ["a kind of answer there is not", { findings: [{ item: "a.b", answer: { kind: "guess" } }] }],
    ["a time that is none", { visit: { started: "yesterday", zone: "UTC" } }],
  ])("refuses %s", (_, change) => {
    expect(validate(JSON.parse(JSON.stringify({ ...good, ...change })))).toBe(false);
  });
});
