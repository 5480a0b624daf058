import { main as test } from "./test.mjs";

/** The same hostile requests that every run sends some of, a hundred thousand of them. */
export function main(args) {
  process.env.HOSTILE = "full";
  return test(["--project", "hostile", ...(args.length > 0 ? args : ["generated"])]);
}
