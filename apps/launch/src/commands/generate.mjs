import { prepareClient } from "../prepare.mjs";
import { run } from "../process.mjs";
import { root } from "../root.mjs";

/** Everything that is generated and committed, by the script that writes it. */
const scripts = [
  "shared/schema/write.mjs",
  "fixtures/demo/generate/main.ts",
  "fixtures/demo/generate/pictures/draw.ts",
  "fixtures/golden/generate.ts",
];

/** `npm run generate`: makes it all again; a test fails where what is committed is older. */
export async function main() {
  await prepareClient();
  for (const script of scripts) {
    console.log(script);
    const code = await run(process.execPath, [script], { cwd: root });
    if (code !== 0) return code;
  }
  return 0;
}
