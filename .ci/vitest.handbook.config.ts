import { defineConfig } from "vitest/config";

/**
 * What mutation testing runs for libs/handbook: its own tests, without the two that draw tens of thousands of
 * readings. Those would take minutes for every mutant, so the score is won without them.
 */
export default defineConfig({
  test: {
    name: "unit",
    include: ["libs/handbook/src/**/*.test.ts"],
    exclude: ["libs/handbook/src/rules/growth.test.ts", "libs/handbook/src/rules/exact-claims.test.ts"],
    maxWorkers: 1,
  },
});
