import { defineConfig } from "vitest/config";

/** What mutation testing runs for the way the handbook's rules find their inputs: the stories, not the property test. */
export default defineConfig({
  test: {
    name: "unit",
    include: ["libs/handbook/src/cross-checks/*.test.ts"],
    exclude: ["libs/handbook/src/cross-checks/units.test.ts"],
    maxWorkers: 1,
  },
});
