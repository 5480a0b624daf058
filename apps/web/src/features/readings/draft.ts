import type { useDraft } from "../../offline/use-draft";

/** The draft that what is accepted goes into. */
export type Draft = ReturnType<typeof useDraft>;
