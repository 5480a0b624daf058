import { env } from "node:process";
import { defineConfig } from "vitest/config";

/** The tests by which a mutant must be noticed: a path a line, set by `npm run mutation`. */
const paths = (name: string): string[] => (env[name] ?? "").split("\n").filter((path) => path !== "");

export default defineConfig({
  test: {
    name: "unit",
    include: paths("MUTATION_TESTS"),
    exclude: paths("MUTATION_TESTS_LEFT_OUT"),
    setupFiles: ["tests/setup/draws.ts"],
    maxWorkers: 1,
    isolate: false,
    testTimeout: 60_000,
  },
});
