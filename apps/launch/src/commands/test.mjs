import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { stepsOf } from "../project-groups.mjs";
import { prepareBrowser } from "../browser.mjs";
import { prepareProduct } from "../prepare.mjs";
import { check, staticChecks } from "../static-checks.mjs";
import { runTool } from "../tools.mjs";
import { failuresOf, lastLine, secondAttemptsOf, sum, tallyOfExit, tallyOfRun } from "../tally.mjs";

async function timed(title, work) {
  const start = performance.now();
  console.log(`\n── ${title}`);
  const tally = await work();
  const seconds = ((performance.now() - start) / 1000).toFixed(1);
  console.log(`   ${title}: ${lastLine(tally)} (${seconds} s)`);
  return tally;
}

function readReport(file) {
  try {
    return JSON.parse(readFileSync(file, "utf8"));
  } catch (error) {
    console.error(`The test runner left no readable result: ${error.message}`);
    return null;
  }
}

/** Names of the projects of vitest.config.ts. */
async function projectNames() {
  const { default: config } = await import("../../../../vitest.config.ts");
  return config.test.projects.map(({ test }) => test.name);
}

async function runTests(args, title) {
  const folder = mkdtempSync(join(tmpdir(), "evenhand-test-"));
  const file = join(folder, "result.json");
  try {
    const reporters = ["--reporter=default", "--reporter=json", `--outputFile.json=${file}`];
    const code = await runTool({ packageName: "vitest", args: ["run", ...reporters, ...args] });
    const report = readReport(file);
    return {
      ...tallyOfRun(report, code),
      failures: failuresOf(report, title),
      seconds: secondAttemptsOf(report),
    };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function runCheck(one) {
  const tally = tallyOfExit(await check(one));
  return { ...tally, failures: tally.failed > 0 ? [`${one.title}: see above`] : [] };
}

/** One run of the test runner over some kinds of test. */
function runKinds(kinds) {
  const title = kinds.join(", ");
  const args = kinds.flatMap((kind) => ["--project", kind]);
  return timed(`tests: ${title}`, () => runTests(args, title));
}

async function runEverything() {
  const tallies = [];
  const checked = staticChecks.map(async (lane) => {
    for (const one of lane) {
      tallies.push(await timed(one.title, () => runCheck(one)));
    }
  });
  await Promise.all(checked);
  for (const runs of stepsOf(await projectNames())) {
    tallies.push(...(await Promise.all(runs.map(runKinds))));
  }
  return sum(tallies);
}

function printNames(title, names = []) {
  if (names.length > 0) console.log(`\n${title}:\n  ${names.join("\n  ")}`);
}

/** With arguments only the test runner runs, with these arguments; without, everything. */
export async function main(args) {
  await prepareProduct();
  await prepareBrowser();
  const tally = args.length > 0 ? await runTests(args, args.join(" ")) : await runEverything();
  // A run is long and its end is what is read: what failed stands there by name.
  printNames("Passed at the second attempt only", tally.seconds);
  printNames("Failed", tally.failures);
  console.log(`\n${lastLine(tally)}`);
  return tally.failed === 0 && tally.passed > 0 ? 0 : 1;
}
