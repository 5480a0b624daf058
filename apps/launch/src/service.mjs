// The service in a process of its own that ends with the one that started it: `node service.mjs serve`.
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { whenParentIsGone } from "./parent.mjs";
import { root } from "./root.mjs";

const letGo = whenParentIsGone(() => process.kill(process.pid, "SIGTERM"));
await import(pathToFileURL(join(root, "apps", "api", "dist", "main.js")).href);
letGo();
