import { z } from "zod";
import { Report } from "./report.ts";

/**
 * JSON Schema (draft 2020-12) of a report file as people and programs write it, defaults left out. It holds the form of a report;
 * whether items, positions and values exist on the sheet is checked by `@evenhand/sheet/check-report`.
 *
 * @example
 * reportSchema().$id; // "urn:evenhand:report:1"
 */
export function reportSchema(): z.core.JSONSchema.BaseSchema {
  const { $schema, ...rest } = z.toJSONSchema(Report, { io: "input", target: "draft-2020-12" });
  return {
    ...($schema === undefined ? {} : { $schema }),
    $id: "urn:evenhand:report:1",
    title: "Evenhand report",
    ...rest,
  };
}
