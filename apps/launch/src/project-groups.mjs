/** Kinds of test that start no server run together first. */
const pure = ["unit", "published", "architecture"];
/** Kinds that try one thing after the other and mostly wait: one run each, side by side. */
const patient = ["demo", "hostile", "faults"];

/**
 * The order in which kinds of test run: steps one after the other, each a list of runs that go side by side, each run
 * a list of kinds.
 *
 * @example stepsOf(["api", "unit", "published", "browser"]) // [[["unit", "published"]], [["api"]], [["browser"]]]
 */
export function stepsOf(names) {
  const among = (kinds) => names.filter((name) => kinds.includes(name));
  const steps = [
    [among(pure)],
    ...names.filter((name) => !pure.includes(name) && !patient.includes(name)).map((name) => [[name]]),
    among(patient).map((name) => [name]),
  ];
  return steps.map((runs) => runs.filter((run) => run.length > 0)).filter((runs) => runs.length > 0);
}
