import { defineConfig } from "vitest/config";

/**
 * What mutation testing runs for libs/comparison: its own tests, without the properties over thousands of generated
 * reports. Those would take minutes for every mutant, so the score is won without them.
 */
export default defineConfig({
  test: {
    name: "unit",
    include: ["libs/comparison/src/**/*.test.ts"],
    exclude: ["libs/comparison/src/**/*.property.test.ts"],
    maxWorkers: 1,
    testTimeout: 60_000,
  },
});
