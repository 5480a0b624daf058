// Runs one command of this folder on the Node that runs the product: `node command.mjs test --project unit`.
import { stopChildren } from "./process.mjs";

const modules = {
  test: () => import("./commands/test.mjs"),
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
process.exitCode = await main(args);
if (process.connected) process.disconnect();
