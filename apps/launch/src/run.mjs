// What `npm run …` starts. Runs on the machine's own Node with nothing installed, so: no dependencies, no TypeScript.
import { fileURLToPath } from "node:url";
import { isInstalled, install } from "./install.mjs";
import { commands, describeCommands } from "./commands.mjs";
import { installerProblem, runtimeNode } from "./node-version.mjs";
import { run } from "./process.mjs";

const pathBeside = (word) =>
  /\.(mjs|ts)$/.test(word) ? fileURLToPath(new URL(word, import.meta.url)) : word;

async function main() {
  const [name, ...args] = process.argv.slice(2);
  const command = commands[name ?? ""];
  if (command === undefined) {
    console.error(describeCommands(name));
    return 2;
  }
  const problem = installerProblem(process.versions.node);
  if (problem !== null) {
    console.error(problem);
    return 1;
  }
  if (!isInstalled() && (await install()) !== 0) {
    return 1;
  }
  const node = runtimeNode();
  if (node.problem !== undefined) {
    console.error(node.problem);
    return 1;
  }
  // npm moves to the project's folder; files named on the command line are meant from where the person stands.
  const cwd = process.env.INIT_CWD ?? process.cwd();
  return run(node.path, [...command.script.map(pathBeside), ...args], {
    cwd,
    supervised: command.supervised,
  });
}

process.exitCode = await main();
