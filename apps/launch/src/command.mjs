// Runs one command of this folder on the Node that runs the product: `node command.mjs test --project unit`.
import { whenParentIsGone } from "./parent.mjs";
import { stopChildren } from "./process.mjs";

const modules = {
  demo: () => import("./commands/demo.mjs"),
  test: () => import("./commands/test.mjs"),
  browser: () => import("./commands/browser.mjs"),
  faults: () => import("./commands/faults.mjs"),
  hostile: () => import("./commands/hostile.mjs"),
  bench: () => import("./commands/bench.mjs"),
  mutation: () => import("./commands/mutation.mjs"),
  record: () => import("./commands/record.mjs"),
  migration: () => import("./commands/migration.mjs"),
  dev: () => import("./commands/dev.mjs"),
  generate: () => import("./commands/generate.mjs"),
  sbom: () => import("./commands/sbom.mjs"),
  lint: () => import("./commands/lint.mjs"),
  typecheck: () => import("./commands/typecheck.mjs"),
};

const letGo = whenParentIsGone(() => {
  stopChildren();
  process.emit("SIGTERM");
});

const [name, ...args] = process.argv.slice(2);
const { main } = await modules[name]();
try {
  process.exitCode = await main(args);
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  if (process.env.DEBUG !== undefined) console.error(error);
  process.exitCode = 1;
}
letGo();
