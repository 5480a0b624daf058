/** What a mark, a bare word or a bare figure of a checklist says of an item, where its options alone do not tell. Common practice, no source. */
export type Marks = {
  /** Items whose good answers tell kinds apart (original or another's, how old, whose): a tick is none of them. */
  readonly ofKind: readonly string[];
  /** The good answer that a tick stands for, where there are several and the first claims more. */
  readonly good: Readonly<Record<string, string>>;
  /** Items that are trouble by their own name: "pedal sinks: no" is good. */
  readonly trouble: readonly string[];
  /** Words behind a figure that make it another reading than the item's: `175 wet` beside `165 dry`. */
  readonly otherFigure: Readonly<Record<string, readonly string[]>>;
  /** Words one of which stands in what answers an item by a text of its own; a sentence of a test is none. */
  readonly codeWords: Readonly<Record<string, RegExp>>;
  /** What is asked again once the car was driven. */
  readonly afterDrive: Readonly<Record<string, string>>;
};

export const marks: Marks = {
  ofKind: [
    "identity.originality",
    "identity.claimed-model",
    "identity.title-kind",
    "identity.stood",
    "identity.miles-claim",
    "identity.restoration-claim",
    "interior.trim-history",
    "body.paint-history",
    "body.panel-material",
    "brightwork.emblems",
    "wheels.wheel-kind",
    "wheels.tire-age",
    "engine.rebuild-claim",
    "engine.as-built",
    "engine.fuel-age",
    "driveline.limited-slip",
  ],
  good: {
    "identity.keys": "full-set",
    "engine.smoke-cold": "none",
    "engine.smoke-warm": "none",
  },
  trouble: ["brakes.pedal-sink"],
  otherFigure: { "engine.compression": ["wet", "with oil", "after oil", "oil added", "oil in"] },
  codeWords: {
    "identity.gearbox-kind":
      /\b(?:manual|auto\w*|\d[- ]?speed|(?:three|four|five|six)[- ]?speed|overdrive|pre-?selector)\b/iu,
  },
  afterDrive: { "driveline.leaks-before": "driveline.leaks-after" },
};
