import { join, resolve } from "node:path";
import { root } from "../root.mjs";

/** Where the demo keeps its database and its mail: `./.data`, or the folder that `EVENHAND_DATA` names. */
export const dataFolder =
  process.env.EVENHAND_DATA === undefined ? join(root, ".data") : resolve(process.env.EVENHAND_DATA);
