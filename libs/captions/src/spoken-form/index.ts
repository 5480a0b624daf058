import type { VehicleForm } from "@evenhand/shared/report";

const has = (text: string, pattern: RegExp): boolean => pattern.test(text);

const bodyOf = (text: string): VehicleForm["body"] => {
  if (has(text, /\b(?:pick-?up|half-?ton|short bed|long bed|tailgate.*bed|bed side)\b|\btruck\b/iu))
    return "pickup";
  if (has(text, /\b(?:wagon|estate car|estate|kombi|shooting brake|traveller)\b/iu)) return "wagon";
  if (has(text, /\b(?:roadster|spider|spyder|side-?curtains?|side ?screens?|tonneau)\b/iu)) return "roadster";
  if (has(text, /\b(?:convertible|soft top|drop-?top|tourer|drophead|cabriolet)\b/iu)) return "convertible";
  if (has(text, /\b(?:camper|panel van|minibus)\b/iu)) return "van";
  if (has(text, /\b(?:tailgate|lift-?gate|hatch|hatchback)\b/iu)) return "wagon";
  return has(text, /\b(?:sedan|saloon|four[- ]door|rear doors?|back doors?)\b/iu) ? "sedan" : "coupe";
};

const doorsOf = (text: string, body: VehicleForm["body"]): number => {
  const four = has(
    text,
    /\b(?:four|4|five|5)[- ]door\b|\b(?:rear|back) doors?\b|(?:left|right) (?:rear|back) door/iu,
  );
  if (body === "sedan") return has(text, /\btwo[- ]door\b/iu) ? 2 : 4;
  if (body === "wagon") return has(text, /\b(?:three|3|two|2)[- ]door\b/iu) ? 3 : 5;
  return four ? 4 : 2;
};

const CYLINDERS: readonly (readonly [pattern: RegExp, count: number])[] = [
  [/\b(?:v-?12|twelve cylinders?)\b/iu, 12],
  [/\b(?:v-?8|v eight|eight cylinders?|straight eight|all eight)\b/iu, 8],
  [
    /\b(?:v-?6|v six|six[- ]cylinders?|straight six|inline six|flat six|all six|number six|cylinders one through six)\b/iu,
    6,
  ],
  [/\bfive[- ]cylinders?\b/iu, 5],
  [/\b(?:three[- ]cylinders?)\b/iu, 3],
  [/\b(?:twin cylinder|two[- ]cylinders?)\b/iu, 2],
];
const USUAL_CYLINDERS = 4;

/**
 * What of a car can be told from how it is spoken of, where nobody has entered it: its body, doors, cylinders, gearbox, brakes, wheel.
 * The rest is as on most cars. It decides only which places a draft can speak of, and is to be put right with the draft.
 *
 * @example
 * spokenForm("a four-door saloon with a straight six").cylinders; // 6
 */
export const spokenForm = (text: string): VehicleForm => {
  const body = bodyOf(text);
  const allDrums =
    has(text, /\bdrum/iu) && !has(text, /\b(?:discs?|disks?|rotors?|calipers?|callipers?|pads?)\b/iu);
  const rearDiscs = has(
    text,
    /\b(?:rear|back) (?:discs?|calipers?|rotors?)|discs? (?:all round|on all four|all around)|four[- ]wheel discs?/iu,
  );
  return {
    body,
    doors: doorsOf(text, body),
    cylinders: CYLINDERS.find(([pattern]) => pattern.test(text))?.[1] ?? USUAL_CYLINDERS,
    construction:
      has(text, /\b(?:frame rails?|chassis (?:legs?|rails?)|ladder|body mounts?)\b/iu) || body === "pickup"
        ? "body-on-frame"
        : "unit-body",
    gearbox: has(
      text,
      /\bautomatic (?:gearbox|transmission)|\b(?:three|four)-speed automatic|torque converter/iu,
    )
      ? "automatic"
      : "manual",
    driven: has(text, /\b(?:front[- ]wheel drive|cv boots?)\b/iu)
      ? "front"
      : has(text, /\b(?:transfer (?:case|box)|four[- ]wheel drive)\b/iu)
        ? "all"
        : "rear",
    fuelSystem: has(text, /\b(?:fuel injection|injectors?|injected)\b/iu) ? "injection" : "carburetor",
    systemVolts: has(text, /\b(?:six|6)[- ]?v(?:olts?)?\b/iu) ? 6 : 12,
    brakes: { front: allDrums ? "drum" : "disc", rear: rearDiscs ? "disc" : "drum" },
    leftHandDrive: !has(text, /\b(?:right[- ]hand[- ]drive|rhd|near-?side|off-?side)\b/iu),
  };
};
