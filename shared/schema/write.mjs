// Writes the JSON Schema of a report file: `node shared/schema/write.mjs`. A test fails when it was forgotten.
import { writeFileSync } from "node:fs";
import { reportSchema } from "../src/report-schema.ts";

const file = new URL("report.schema.json", import.meta.url);
writeFileSync(file, `${JSON.stringify(reportSchema(), null, 2)}\n`);
