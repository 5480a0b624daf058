import { runTool } from "./tools.mjs";

/**
 * Needs the database client (`prepareClient`), whose types the service uses. The compiler's native build (version 7) checks in a fifth
 * of the time; version 6 stays beside it for what reads the compiler's own interface, which the native one has not. One checker a project:
 * several would each work out the database client's types anew, and the lane beside this one has the other core.
 */
export const types = {
  title: "types",
  packageName: "typescript-native",
  command: "tsc",
  args: ["-b", "--checkers", "1"],
};
const lint = { title: "lint", packageName: "oxlint", args: ["--type-aware", "--deny-warnings"] };
/** Files, packages and exports that nothing uses: `knip.jsonc` says who starts a file by its name. */
const unused = { title: "unused", packageName: "knip", args: ["--no-progress", "--no-config-hints"] };
const format = { title: "format", packageName: "prettier", args: ["--check", "--log-level", "warn", "."] };

/** What is checked without running the product: two lanes that go side by side, each about as long as the other. */
export const staticChecks = [
  [types, format],
  [lint, unused],
];
/** What `npm run lint` checks. */
export const styleChecks = [lint, unused, format];

/** Runs one of them. Gives its exit code. */
export function check({ packageName, command, args }) {
  return runTool({ packageName, command, args });
}
