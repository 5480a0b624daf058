import { defineConfig } from "vitest/config";

/**
 * What mutation testing runs for libs/handbook: its own tests, without the three that draw thousands of
 * readings or reports. Those would take minutes for every mutant, so the score is won without them.
 */
export default defineConfig({
  test: {
    name: "unit",
    include: ["libs/handbook/src/**/*.test.ts"],
    exclude: [
      "libs/handbook/src/rules/growth.test.ts",
      "libs/handbook/src/rules/exact-claims.test.ts",
      "libs/handbook/src/cross-checks/units.test.ts",
    ],
    maxWorkers: 1,
  },
});
