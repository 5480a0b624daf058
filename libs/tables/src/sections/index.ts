import { labelOf } from "../label/index.ts";

/** What inspectors call the parts of their sheets, and the sections of the sheet those are. No source: common practice. */
const SECTIONS: readonly (readonly [words: string, sections: string])[] = [
  [
    "body;bodywork;exterior;outside;paint;paintwork;paint and panel;panel;body and paint;external;body exterior;body structure;coachwork",
    "body gaps brightwork doors trunk underbody",
  ],
  [
    "interior;inside;cabin;interior trim;trim;interior and trim;upholstery;seats and trim",
    "interior doors brightwork",
  ],
  [
    "electrical;electric;electrics;lights and electrical;lights;lighting;instrument;gauge;lamp and electrical;lamp;electrics and instrument;lamp and electric;lighting and electrical;work",
    "electrics doors",
  ],
  [
    "engine;engine bay;under hood;under bonnet;underhood;motor;engine compartment;mechanical;engine test;cooling",
    "engine electrics driveline road",
  ],
  ["brake;brakes;braking system;brake system", "brakes road"],
  ["steering;suspension;steering and suspension;front end;chassis", "steering underbody"],
  [
    "wheel;tire;tire and wheel;wheel and tire;tire and brake;wheel and brake;tires;wheels",
    "wheels brakes steering",
  ],
  [
    "underside;underneath;underbody;under car;under body;chassis and underbody;structure;frame;undercarriage;under vehicle",
    "underbody driveline steering brakes",
  ],
  ["drivetrain;transmission;driveline;gearbox;drive train;axle;transmission and driveline", "driveline road"],
  ["road;road test;test drive;driving;drive;on road;on the road;dynamic", "road brakes steering"],
  [
    "paper;papers;paperwork;document;documentation;identity;identification;history;vehicle detail",
    "identity",
  ],
  ["trunk;boot;luggage area;luggage;cargo;boot area", "trunk"],
  ["glass;glass and seal;chrome;brightwork;trim and glass", "brightwork"],
];

const byWords: ReadonlyMap<string, readonly string[]> = new Map(
  SECTIONS.flatMap(([words, sections]) =>
    words
      .split(";")
      .map((word) => [[...new Set(labelOf(word).stems)].sort().join(" "), sections.split(" ")] as const),
  ),
);

/**
 * The sections of the sheet that a heading such as `LIGHTS & ELECTRICAL` is about; none where it is about something else.
 *
 * @example sectionsOf("Road test") // ["road", "brakes", "steering"]
 */
export const sectionsOf = (heading: string): readonly string[] => {
  const stems = [...new Set(labelOf(heading).stems)].filter(
    (stem) => !["check", "inspection", "system", "item", "section"].includes(stem),
  );
  return stems.length === 0 ? [] : (byWords.get(stems.sort().join(" ")) ?? []);
};
