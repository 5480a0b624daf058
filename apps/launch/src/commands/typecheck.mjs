import { prepareClient } from "../prepare.mjs";
import { check, types } from "../static-checks.mjs";

/** `npm run typecheck`: on a fresh clone the database client has to be made first, since the service's types need it. */
export async function main() {
  await prepareClient();
  return check(types);
}
