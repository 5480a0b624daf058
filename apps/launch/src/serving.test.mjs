import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { root } from "./root.mjs";
import { servingFlags, workingFlags } from "./serving.mjs";

test("the image serves with what Node is told everywhere else", () => {
  const [, command] = /^CMD (.*)$/m.exec(readFileSync(join(root, "apps/api/Dockerfile"), "utf8"));
  expect(JSON.parse(command)).toEqual(["node", ...servingFlags, "apps/api/dist/main.js", "serve"]);
});

test("the worker of the composition works with what Node is told there", () => {
  const [, command] = /command: (\[.*"work"\])$/m.exec(
    readFileSync(join(root, "docker-compose.yml"), "utf8"),
  );
  expect(JSON.parse(command)).toEqual(["node", ...workingFlags, "apps/api/dist/main.js", "work"]);
});
