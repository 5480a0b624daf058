import { main as test } from "./test.mjs";

/** The same tests that every run does briefly, as long as the measured goals ask for. */
export function main(args) {
  process.env.FAULTS = "full";
  return test(["--project", "faults", ...args]);
}
