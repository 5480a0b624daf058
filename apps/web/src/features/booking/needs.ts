import type { Need } from "@evenhand/shared/sheet";
import type { z } from "zod";

export const needs = [
  "lift",
  "daylight",
  "road",
  "cold-engine",
  "hot-engine",
  "dismantling",
  "permission",
] as const satisfies readonly z.infer<typeof Need>[];
