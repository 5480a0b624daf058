import type { Finding } from "@evenhand/shared/finding";

/** A finding that needs nothing explained: the horn was seen, and works. */
export const hornWorks: Finding = {
  item: "electrics.horn",
  position: "",
  answer: { kind: "working", value: "yes" },
  firmness: "asserted",
  basis: "seen",
};
