import type { Item } from "@evenhand/shared/sheet";
import { code, howOriginal, ranked, unranked } from "./answers.ts";
import { item, words } from "./draft.ts";

const identity = { consequence: "identity", costRow: null } as const;

/** Numbers, stampings and codes on the car. */
export const numbers: Item[] = [
  item(
    "identity.vin",
    words("VIN or chassis number", undefined, [
      "vehicle identification number",
      "serial number",
      "frame number",
    ]),
    "Copy the number character by character and photograph it straight on.",
    {
      ...identity,
      positions: "number-places",
      core: true,
      severity: "halt",
      minutes: 4,
      code: code("vin"),
    },
  ),
  item(
    "identity.plate-fixing",
    words("plate fixing and rivets", undefined, ["VIN plate rivets"]),
    "Look at the rivets or screws of the main plate and body tag, front and back where they show.",
    {
      ...identity,
      severity: "halt",
      minutes: 2,
      choice: ranked(
        ["as-built", words("as the maker fixed it", undefined, ["factory rivets"])],
        ["right-type-disturbed", "right type, disturbed", "halt"],
        ["other-fixing", "other rivets or screws", "halt"],
        ["plate-missing", "plate missing", "halt"],
      ),
    },
  ),
  item(
    "identity.stamping-surface",
    words("stamping surface", undefined, ["stamping pad", "deck surface"]),
    "Look along the pad under a low lamp: the maker's machining marks, grinding, or a coat over it.",
    {
      ...identity,
      positions: "numbered-units",
      minutes: 3,
      choice: unranked(
        ["machined", words("machined", undefined, ["broach marks"])],
        ["coated", "coated", "no-yardstick"],
        ["ground", words("ground", undefined, ["sanded", "decked"]), "worth"],
      ),
    },
  ),
  item("identity.engine-number", words("engine number"), "Copy it from the pad and photograph it.", {
    ...identity,
    core: true,
    minutes: 2,
    cautions: ["prop-hood"],
    code: code("chassis-number"),
  }),
  item(
    "identity.partial-vin",
    words("partial VIN", "partial chassis number", ["derivative number", "VIN derivative"]),
    "Copy the stamped part of the number.",
    {
      ...identity,
      positions: "numbered-units",
      equipment: true,
      minutes: 5,
      needs: ["lift"],
      code: code("chassis-number"),
    },
  ),
  item(
    "identity.casting-number",
    words("casting number"),
    "Copy the cast number of each part that can be seen.",
    {
      ...identity,
      positions: "cast-parts",
      minutes: 12,
      needs: ["lift"],
      code: code("casting-number"),
    },
  ),
  item(
    "identity.date-code",
    words("date code", undefined, ["casting date", "assembly date"]),
    "Copy the date code of each part as it stands, letters and all.",
    {
      ...identity,
      positions: "dated-parts",
      minutes: 12,
      needs: ["lift"],
      code: code("date-code"),
    },
  ),
  item(
    "identity.bill-date",
    words("date of the bill", undefined, ["invoice date of a part"]),
    "Copy the date of the bill the part was fitted with.",
    {
      ...identity,
      consequence: "papers",
      positions: "dated-parts",
      severity: "small",
      minutes: 5,
      code: code("date-code"),
    },
  ),
  item(
    "identity.originality",
    words("how original", undefined, ["matching numbers", "originality", "numbers matching"]),
    "Say no more than numbers, dates and type carry.",
    {
      ...identity,
      positions: "major-units",
      core: true,
      minutes: 3,
      choice: howOriginal,
    },
  ),
  item(
    "identity.paint-code",
    words("paint code", "colour code", ["color code"]),
    "Copy it from the body tag.",
    {
      ...identity,
      minutes: 1,
      code: code("paint-code"),
    },
  ),
  item("identity.trim-code", words("trim code"), "Copy it from the body tag.", {
    ...identity,
    minutes: 1,
    code: code("paint-code"),
  }),
  item(
    "identity.build-date",
    words("build date", undefined, ["scheduled build", "assembly date of the car"]),
    "Copy the date from the body tag or build sheet as it stands.",
    {
      ...identity,
      minutes: 1,
      code: code("date-code"),
    },
  ),
  item("identity.axle-code", words("axle code"), "Copy it from the body tag or the axle's own tag.", {
    ...identity,
    minutes: 2,
    code: code("text"),
  }),
  item(
    "identity.gearbox-code",
    words("gearbox code", undefined, ["transmission code"]),
    "Copy it from the body tag or the gearbox's own tag.",
    {
      ...identity,
      minutes: 2,
      code: code("text"),
    },
  ),
];
