/** What a collector car is sold by, in the order in which a seller says it; common practice, no source. */
export const SOLD_BY: readonly string[] = [
  "identity.title-holder",
  "identity.lien",
  "identity.title-brand",
  "identity.claimed-model",
  "identity.originality",
  "identity.miles-claim",
  "identity.odometer",
  "body.paint-history",
  "underbody.collision-repair",
  "underbody.rails",
  "underbody.floor-pans",
  "engine.rebuild-claim",
  "engine.noise",
  "brakes.pedal-sink",
  "wheels.tire-age",
];
