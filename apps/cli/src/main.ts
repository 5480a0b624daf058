import { plainStyle, styleOf, widthOf } from "./terminal/style.ts";
import { compareCommand } from "./compare/index.ts";
import { checkCommand } from "./check/index.ts";
import { exportCommand } from "./export/index.ts";
import { judgedCommand } from "./judged/index.ts";
import { readCommand } from "./read/index.ts";
import { showCommand } from "./show/index.ts";
import { visitCommand } from "./visit/index.ts";
import { usage } from "./usage.ts";
import type { Shell } from "./shell.ts";

const shell: Shell = {
  out: (text) => process.stdout.write(`${text}\n`),
  error: (text) => process.stderr.write(`${text}\n`),
  terminal: {
    width: widthOf(process.stdout, process.env),
    style: process.stdout.isTTY ? styleOf(process.stdout) : plainStyle,
  },
};

const commands: Readonly<
  Record<string, (args: readonly string[], shell: Shell) => number | Promise<number>>
> = {
  compare: compareCommand,
  read: readCommand,
  export: exportCommand,
  show: showCommand,
  judged: judgedCommand,
  visit: visitCommand,
  check: checkCommand,
  bench: async (args, ownShell) => (await import("./bench.ts")).benchCommand(args, ownShell),
};

const [name = "", ...args] = process.argv.slice(2);
const command = commands[name];
if (command === undefined) shell.error(usage.all);
process.exitCode = command === undefined ? 2 : await command(args, shell);
