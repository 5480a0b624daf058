// Runs one command of this folder on the Node that runs the product: `node command.mjs test --project unit`.
import { stopChildren } from "./process.mjs";

const modules = {
  demo: () => import("./commands/demo.mjs"),
  test: () => import("./commands/test.mjs"),
  mutation: () => import("./commands/mutation.mjs"),
  dev: () => import("./commands/dev.mjs"),
  generate: () => import("./commands/generate.mjs"),
  lint: () => import("./commands/lint.mjs"),
};

if (process.channel) {
  // The process that started this one is gone, killed perhaps: leave nothing running behind it.
  process.once("disconnect", () => {
    stopChildren();
    process.emit("SIGTERM");
  });
  process.channel.unref();
}

const [name, ...args] = process.argv.slice(2);
const { main } = await modules[name]();
try {
  process.exitCode = await main(args);
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  if (process.env.DEBUG !== undefined) console.error(error);
  process.exitCode = 1;
}
if (process.connected) process.disconnect();
