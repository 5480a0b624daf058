import { main as test } from "./test.mjs";

/** The journeys that every run goes, what there is beside them, and every screen in every look. */
export function main(args) {
  process.env.BROWSER = "full";
  return test(["--project", "browser", ...args]);
}
