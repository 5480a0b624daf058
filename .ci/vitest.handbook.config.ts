import { defineConfig } from "vitest/config";

/**
 * What mutation testing runs for the rules of libs/handbook: their own tests, without the two that draw tens of
 * thousands of readings, which would take minutes for every mutant. How the rules find their inputs is mutated apart.
 */
export default defineConfig({
  test: {
    name: "unit",
    include: ["libs/handbook/src/**/*.test.ts"],
    exclude: [
      "libs/handbook/src/rules/growth.test.ts",
      "libs/handbook/src/rules/exact-claims.test.ts",
      "libs/handbook/src/cross-checks/**",
    ],
    maxWorkers: 1,
  },
});
