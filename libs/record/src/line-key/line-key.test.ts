import { expect, it } from "vitest";
import { lineKey } from "./index.ts";

it("tells lines apart by place and atom, and not by where they stand in a report", () => {
  const place = { item: "body.panel-faults", position: "left-front" };
  const fault = (kind: string, spot: string | undefined, a: number) =>
    lineKey({ ...place, atom: { of: "fault", kind, a, ...(spot === undefined ? {} : { spot }) } });
  const keys = [
    lineKey({ ...place, atom: { of: "answer" } }),
    lineKey({ ...place, position: "right-front", atom: { of: "answer" } }),
    lineKey({ ...place, atom: { of: "denial", kind: "dent", by: "a" } }),
    fault("dent", undefined, 0),
    fault("dent", "c3", 0),
    fault("chip", "c3", 0),
  ];
  expect(new Set(keys).size).toBe(keys.length);
  expect(fault("dent", "c3", 4)).toBe(fault("dent", "c3", 0));
});
