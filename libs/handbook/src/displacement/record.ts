import { practice } from "../limit-record/index.ts";
import { arithmetic, breaks, cannotTell, defineRecord, holds } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const displacementRecord = defineRecord("displacement", {
  title: "Displacement",
  reads: "bore, stroke, number of cylinders, displacement claimed",
  formula: "π/4 × bore² × stroke × cylinders",
  limits: {
    "displacement.overbore": practice(
      "an engine is usually bored over by at most this",
      0.06,
      "in",
      [0.02, 0.125],
    ),
    "displacement.share": practice("displacement from the claimed one, as a share", 0.01, "1", [0.002, 0.05]),
  },
  source: arithmetic,
  consequence: "identity",
  over: "both-reports",
  strength: "contradicts",
  cautions: [],
  outcomes: {
    "as-claimed": holds(
      "Bore {bore}, stroke {stroke} and {cylinders} cylinders make {displacement}, the claimed {claimed}.",
    ),
    overbored: holds(
      "Bore {bore}, stroke {stroke} and {cylinders} cylinders make {displacement}: the nominal {claimed}, bored over by no more than is usual.",
    ),
    "not-as-claimed": breaks(
      "worth",
      "Bore {bore}, stroke {stroke} and {cylinders} cylinders make {displacement}, not the claimed {claimed}.",
    ),
    "range-covers": cannotTell(
      "Bore {bore}, stroke {stroke} and {cylinders} cylinders make {displacement}: neither clearly the claimed {claimed} nor clearly another.",
    ),
    "no-claim": cannotTell("Bore {bore}, stroke {stroke} and {cylinders} cylinders make {displacement}."),
  },
});
