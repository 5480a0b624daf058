import type { QueryClient } from "@tanstack/react-query";
import { becomes } from "./queries";

/** Nobody is signed in any more. The page is loaded anew, so that nothing of this account stays in its memory. */
export const signedOut = (queries: QueryClient): void => {
  becomes(queries, null);
  globalThis.location.assign("/sign-in");
};
