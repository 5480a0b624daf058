import type { Source } from "@evenhand/shared/sheet";

/** Federal in-use inspection standards, vehicles to 10,000 lb. Local inspection law decides. */
export const cfr570 = (text: string): Source => ({ kind: "regulation", text: `49 CFR ${text}` });

/** A default a firm may change. */
export const commonPractice: Source = { kind: "common-practice", text: "common practice, no source" };
