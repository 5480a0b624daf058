// The service in a process of its own that ends with the one that started it: `node service.mjs serve`.
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { root } from "./root.mjs";

process.once("disconnect", () => process.kill(process.pid, "SIGTERM"));
process.channel?.unref();
await import(pathToFileURL(join(root, "apps", "api", "dist", "main.js")).href);
if (process.connected) process.disconnect();
