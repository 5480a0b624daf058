import { runTool } from "./tools.mjs";

/** Needs the database client (`prepareClient`), whose types the service uses. */
export const types = { title: "types", packageName: "typescript", command: "tsc", args: ["-b"] };
const lint = { title: "lint", packageName: "oxlint", args: ["--type-aware", "--deny-warnings"] };
/** Files, packages and exports that nothing uses: `knip.jsonc` says who starts a file by its name. */
const unused = { title: "unused", packageName: "knip", args: ["--no-progress", "--no-config-hints"] };
const format = { title: "format", packageName: "prettier", args: ["--check", "--log-level", "warn", "."] };

/** What is checked without running the product: two lanes that go side by side, each about as long as the other. */
export const staticChecks = [[types], [lint, unused, format]];
/** What `npm run lint` checks. */
export const styleChecks = [lint, unused, format];

/** Runs one of them. Gives its exit code. */
export function check({ packageName, command, args }) {
  return runTool({ packageName, command, args });
}
