import type { DrawnReading } from "../draws/index.ts";
import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { PanelColorInput } from "./index.ts";
import type { panelColorRecord } from "./record.ts";

const panels = (apart: number, standardUncertainty: number) => ({
  panels: [
    { panel: "hood", color: { L: 50, a: 10, b: 10 }, standardUncertainty },
    { panel: "left fender", color: { L: 50 + apart, a: 10, b: 10 }, standardUncertainty },
  ],
  neighbors: [["hood", "left fender"]] as const,
});
const lab = (read: DrawnReading, name: string, L: number) => ({
  panel: name,
  color: { L: read(L, 0.3).value, a: read(3, 0.3).value, b: read(4, 0.3).value },
  standardUncertainty: 0.3,
});

export const examples: Examples<typeof panelColorRecord, PanelColorInput> = {
  "not-noticed": panels(0.5, 0.05),
  noticeable: panels(4, 0.05),
  "range-covers": panels(2.1, 0.2),
  "metallic-one-angle": { ...panels(4, 0.05), metallicOneAngle: true },
  "too-few": { panels: [], neighbors: [] },
};

export const trueClaims: TrueClaims<PanelColorInput> = {
  "two panels exactly 2 apart": (read) => ({
    panels: [lab(read, "hood", 50), lab(read, "cowl", 52.05)],
    neighbors: [["hood", "cowl"]],
  }),
};

export const growth: Growth<PanelColorInput> = {
  numbers: (n, u) => ({
    panels: [
      { panel: "hood", color: { L: 50, a: 10, b: 10 }, standardUncertainty: u },
      {
        panel: "cowl",
        color: { L: 50 + 6 * (n[0] ?? 0), a: 10, b: 10 + 3 * (n[1] ?? 0) },
        standardUncertainty: u,
      },
    ],
    neighbors: [["hood", "cowl"]],
  }),
};
