import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { hasRightCheckDigit } from "@evenhand/handbook/check-digit";
import published from "../../fixtures/published/vin.json" with { type: "json" };

const root = new URL("../../", import.meta.url);
const TEXT = /\.(?:ts|tsx|mjs|json|md|txt|tsv)$/;
/** The judged cases are kept as they were given; their makers are invented too. */
const files = execFileSync("git", ["ls-files", "-z"], { cwd: root, encoding: "utf8" })
  .split("\0")
  .filter((file) => TEXT.test(file) && file !== "package-lock.json" && !file.startsWith("fixtures/judged/"));

/** Numbers of 17 characters that stand by themselves and carry a right check digit: what could be a real car's. */
const vehicleNumbers = (text: string): string[] =>
  (text.match(/\b[A-HJ-NPR-Z\d]{17}\b/g) ?? []).filter(
    (number) => /[A-Z]/.test(number) && hasRightCheckDigit(number),
  );

const withSource = new Set(published.valid.map(({ vin }) => vin));

/** No region of the world is given a first character 0 (ISO 3780, from memory), so such a number is nobody's; nor are all ones. */
const isInvented = (number: string): boolean => /^0|^[1A]+$/.test(number);

test("a vehicle's number is invented, or published with its source", () => {
  const real = files.flatMap((file) =>
    vehicleNumbers(readFileSync(new URL(file, root), "utf8"))
      .filter((number) => !isInvented(number) && !withSource.has(number))
      .map((number) => `${file}: ${number}`),
  );
  expect(real).toEqual([]);
});

test("numbers are found at all", () => {
  expect(vehicleNumbers('"1M8GDM9AXKP042788", 1M8GDM9AXKP042789')).toEqual(["1M8GDM9AXKP042788"]);
});
