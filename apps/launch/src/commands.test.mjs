import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { commands } from "./commands.mjs";

test("every command of this folder that is offered can be run", () => {
  const runner = readFileSync(new URL("command.mjs", import.meta.url), "utf8");
  const own = Object.keys(commands).filter((name) => commands[name].script[0] === "command.mjs");
  expect(own.length).toBeGreaterThan(5);
  const runs = (name) => runner.includes(`  ${name}: () => import("./commands/${name}.mjs"),`);
  expect(own.filter((name) => !runs(name))).toEqual([]);
});
