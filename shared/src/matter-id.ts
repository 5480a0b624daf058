import type { Matter } from "./matter.ts";

/**
 * What a matter of a comparison is called by: its kind, and its place where it has one. No two matters of a comparison share it.
 *
 * @example matterId({ kind: "structure", zone: "right-front" }) // "structure:right-front"
 */
export const matterId = ({ kind, zone }: Pick<Matter, "kind" | "zone">): string =>
  zone === null ? kind : `${kind}:${zone}`;
