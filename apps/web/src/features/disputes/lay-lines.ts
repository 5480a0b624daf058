import { call } from "../../service/client";

/** Lays lines of a comparison before the dealer, by their places. */
export const layLines = (comparison: string, lines: ReadonlySet<number>) =>
  call("releases.create", {
    params: { id: comparison },
    body: { entries: [...lines].sort((a, b) => a - b) },
  });
