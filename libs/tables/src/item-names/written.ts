import type { Written } from "./name.ts";
import { writtenAsked } from "./written-asked.ts";
import { writtenMeasured } from "./written-measured.ts";
import { writtenParts } from "./written-parts.ts";

/** All that is written in sheets and seldom said; of two names alike the earlier is meant. */
export const written: readonly Written[] = [...writtenAsked, ...writtenMeasured, ...writtenParts];
