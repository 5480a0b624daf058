import { readFileSync } from "node:fs";
import { join } from "node:path";
import { DemoScenario } from "@evenhand/shared/demo-scenario";
import { Report } from "@evenhand/shared/report";
import { projectFolder } from "../platform/config/project-folder.ts";

export type Scenario = DemoScenario & { readonly files: ReadonlyMap<string, Report> };

const folder = () => join(projectFolder(), "fixtures", "demo");
const read = (file: string): unknown => JSON.parse(readFileSync(join(folder(), file), "utf8"));

/** The invented world of `fixtures/demo`, with every report file it names. */
export function readScenario(): Scenario {
  const scenario = DemoScenario.parse(read("scenario.json"));
  const files = new Map(scenario.reports.map(({ key, file }) => [key, Report.parse(read(file))]));
  return { ...scenario, files };
}
