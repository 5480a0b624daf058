import { of } from "./option-words.ts";
import type { OptionWords } from "./option-words.ts";

/** Underbody and driveline: what each option is called when it is spoken of, beside the sheet's own words. No source: the trade's own words. */
export const underOptions: readonly OptionWords[] = [
  ...of("underbody.lift-points", {
    sound: "sound; solid; good; healthy; strong; clean; no rust",
    "surface-corrosion": "surface rust; surface corrosion; light rust; rusty",
    patched: "patched; repaired; welded; plated",
    soft: "soft; rotten; perforated; rusted through; gone; rot; hole",
  }),
  ...of("underbody.floor-repair", {
    "as-built":
      "original; as built; factory floor; never been replaced; original floor; completely original; untouched; as it left the factory; like it left the factory; never been touched; factory; all factory; is factory; are factory",
    replaced:
      "new pan; welded in new pan; new metal; new; all new; brand new; replaced; new floor; been replaced; replacement",
    patched:
      "patched; been patched; plated; plate welded in; patch welded in; weld a patch in; put a patch; has a patch; got a patch; is a patch; patch in it; patch on it; small/little/one/big patch; been welded; was welded; were welded; got welded; a welded plate; the welded plate; plate in it; had a plate; plate let in; patch let in; welded patch; welded up",
    "covered-over": "new sheet over old; sheet over the old; covered over",
  }),
  ...of(
    "underbody.collision-repair",
    {
      none: "never been hit; never hit; no accident; accident free; never been in an accident; nobody ever hit it; never crashed; never wrecked; no accident damage; no crash damage; not been hit; no collision damage; never been wrecked; no damage history",
      "repaired-well":
        "repaired well; well repaired; hit in the rear and it was repaired well; properly repaired",
      "repaired-poorly": "repaired poorly; badly repaired; poor repair",
      unrepaired: "unrepaired",
    },
    true,
  ),
  ...of(
    "underbody.welds-and-sealer",
    {
      "as-built": "factory weld; factory seam sealer; original spot welds",
      neat: "neat weld; neat repair",
      rough: "rough weld; ugly weld; bird poop weld",
      failing: "sealer cracked; sealer lifting",
    },
    true,
  ),
  ...of("underbody.body-mounts", {
    sound: "sound; good; solid; new",
    cracked: "cracked; flat",
    gone: "gone; rotted",
  }),
  ...of("underbody.subframe-bushings", {
    sound: "sound; good; solid; new",
    cracked: "cracked",
    gone: "gone; metal on metal; shot",
  }),
  ...of("underbody.tie-down-points", { sound: "sound; good; there", unsound: "not sound; rusted" }),
  ...of("driveline.joint-play", {
    none: "no play; none; tight; good",
    slight: "slight play; little play; bit of play; some play",
    clear: "clear play; lot of play; loose; bad; worn",
    rough: "rough; rusty; notchy",
  }),
  ...of("driveline.limited-slip", {
    works:
      "limited slip works; work; fitted; working; has limited slip; has a limited slip; got limited slip; got a limited slip",
    open: "open; open axle; open differential; open diff",
    worn: "worn; does not work; slips",
  }),
  ...of("driveline.mounts", {
    sound: "sound; good; solid; new; fine",
    cracked: "cracked; crack",
    "oil-soaked": "oil soaked; soaked in oil",
    separated: "broken; separated; split; gone",
  }),
  ...of("driveline.gearbox-fluid", {
    clean: "clean; clean and full; red and clean; pink; fresh; full and clean",
    dark: "dark; brown; a bit dark; dirty",
    low: "low",
    burnt: "burnt; burned; smells burnt; smell burnt",
    metal: "metal in it; metal",
  }),
  ...of("driveline.tank-inside", {
    clean: "clean; clean inside; no rust; cleaned",
    coated: "coated; sealed; lined",
    rusty: "rusty; rust; rust in it",
  }),
  ...of("driveline.center-bearing", {
    sound: "sound; good; new; quiet",
    cracked: "cracked",
    loose: "loose; noisy",
  }),
  ...of("driveline.clutch-hydraulics", {
    dry: "dry; no leak; not leak; good",
    damp: "damp; weep; seep",
    leaks: "leak; leaking; drip",
    falls: "pedal falls; falls to the floor",
  }),
];
