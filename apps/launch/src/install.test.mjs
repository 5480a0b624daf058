import { expect, test } from "vitest";
import { differences, isInstalled } from "./install.mjs";
import { installerProblem, isAtLeast } from "./node-version.mjs";

const wanted = {
  "": { name: "project" },
  "libs/sheet": { name: "@evenhand/sheet" },
  "node_modules/a": { version: "1.0.0" },
  "node_modules/a/node_modules/b": { version: "2.0.0" },
  "node_modules/other-platform": { version: "1.0.0", optional: true },
  "node_modules/@evenhand/sheet": { link: true },
};
const installed = {
  "node_modules/a": { version: "1.0.0" },
  "node_modules/a/node_modules/b": { version: "2.0.0" },
  "node_modules/@evenhand/sheet": { link: true },
};

test("what is installed as the lockfile says differs in nothing; packages of other platforms may be missing", () => {
  expect(differences(wanted, installed)).toEqual([]);
});

test("another version, a missing package and a missing workspace differ", () => {
  expect(differences(wanted, { "node_modules/a": { version: "1.0.1" } })).toEqual([
    "node_modules/a",
    "node_modules/a/node_modules/b",
    "node_modules/@evenhand/sheet",
  ]);
});

test("the folder these tests run in is installed", () => {
  expect(isInstalled()).toBe(true);
});

test("an old Node is told what is needed and a new one is not", () => {
  expect(installerProblem("18.20.4")).toMatch(
    /needs Node 20\.19\.0 or newer to install itself; this is Node 18\.20\.4/,
  );
  expect(installerProblem("20.19.0")).toBeNull();
  expect(installerProblem("24.1.0")).toBeNull();
});

test("versions are compared number by number", () => {
  expect(isAtLeast([20, 19, 0], [20, 19, 0])).toBe(true);
  expect(isAtLeast([20, 9, 9], [20, 19, 0])).toBe(false);
  expect(isAtLeast([21, 0, 0], [20, 19, 0])).toBe(true);
});
