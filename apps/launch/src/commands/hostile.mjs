import { main as test } from "./test.mjs";

/** What every run sends some of: a hundred thousand generated requests, and files as large as are read at all. */
export function main(args) {
  process.env.HOSTILE = "full";
  return test(["--project", "hostile", ...(args.length > 0 ? args : ["generated", "readings"])]);
}
