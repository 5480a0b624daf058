import { describe, expect, it } from "vitest";
import { sheetVersion1 as sheet } from "./index.ts";

/** What each section asked for from the first, and must always be able to read, and how each is answered: reading, color, grade, working, presence, choice, code, faults. */
const asked: Record<string, string> = {
  visit:
    "light:choice body-surface:choice ambient-temperature:reading engine-cold:reading battery-on-charger:presence warmed-beforehand:presence washed-beforehand:presence plugs-allowed:choice drums-allowed:choice carpet-allowed:choice present:code calibration:choice",
  identity:
    "vin:code plate-fixing:choice stamping-surface:choice engine-number:code partial-vin:code casting-number:code date-code:code bill-date:code originality:choice paint-code:code trim-code:code build-date:code axle-code:code gearbox-code:code title-holder:choice title-number:code title-brand:choice lien:choice lien-release-date:code market-label:presence import-papers:choice odometer:reading odometer-on-papers:reading odometer-disclosure:choice build-sheet:presence invoice:presence restoration-bills:presence restoration-photographs:presence keys:choice",
  body: "paint-thickness:reading paint-highest:reading paint-history:choice panel-material:choice color:color finish:grade faults:faults magnet:choice patch-edges:presence spot-welds:presence fender-inner-face:choice",
  gaps: "width-top:reading width-bottom:reading flushness:reading bolts-disturbed:presence",
  brightwork:
    "bumpers:grade bumper-faults:faults grille:grade moldings:grade emblems:choice lenses:faults mirrors:grade glass-faults:faults glass-date:code seals:grade",
  doors:
    "hinge-play:reading drop:reading latches:working locks:working regulators:working lid-latches:working lid-hinges:grade extra-fasteners:presence lid-supports:working drains:choice bottoms:faults jambs:faults first-color:code",
  trunk:
    "floor:faults wheel-wells:faults lid-underside:faults channels:faults lining:grade spare:presence jack:presence damp:choice",
  interior:
    "seats:grade seat-faults:faults seat-adjusters:working trim-history:choice carpet:grade headliner:grade dash-top:grade door-panels:grade console:grade steering-wheel:grade steering-wheel-diameter:reading pedals:grade belt-webbing:grade belt-latch:working belt-date:code smell:choice water-marks:presence flood-line:presence silt:presence top:grade",
  electrics:
    "speedometer:working odometer-works:working fuel-gauge:working temperature-gauge:working oil-gauge:working charge-gauge:working tachometer:working clock:working warning-lamps:working lamps:working hazard:working horn:working wipers:working washers:working blower:working heat:working defrost:working air-conditioning:working vent-temperature:reading radio:working power-windows:working power-top:working starter:working volts-rest:reading volts-cranking:reading volts-charging:reading system-voltage:choice polarity:choice charger-kind:choice",
  underbody:
    "lift-points:choice rails:faults rail-joints:faults torque-boxes:faults floor-pans:faults floor-repair:choice cross-members:faults inner-rockers:faults pinch-welds:faults spring-hangers:faults towers:faults rear-rails-over-axle:faults outer-wheelhouses:faults jacking-damage:faults collision-repair:choice welds-and-sealer:choice fresh-undercoat:presence wheelbase:reading diagonals:reading",
  driveline:
    "leaks-before:choice leaks-after:choice driveshaft:faults joint-play:choice half-shaft-boots:faults axle-ratio:reading axle-ratio-tag:reading axle-turns:reading ring-teeth:reading pinion-teeth:reading limited-slip:choice pinion-seal:choice mounts:choice gearbox-fluid:choice exhaust:faults tank-outside:faults tank-inside:choice fuel-hoses:faults fuel-hose-date:code lines:faults parking-brake-cable:grade",
  steering:
    "free-play:reading linkage-play:reading ball-joint-play:reading ball-joint-seals:faults wheel-bearing-play:reading tie-rod-ends:choice bushings:choice anti-roll-bar:grade springs:faults dampers:choice damper-bounce:choice ride-height:reading toe:reading box-leak:choice alignment-sheet:presence",
  brakes:
    "pedal-reserve:reading pedal-sink:choice pedal-feel:choice servo:working parking-brake:working pull:choice lining-thickness:reading lining-kind:choice disc-thickness:reading disc-runout:reading drum-diameter:reading drum-cast-figure:reading fluid-boiling-point:reading hoses:faults master-cylinder:choice wheel-cylinders:choice calipers:choice",
  wheels:
    "tire-size:code tire-construction:choice tire-identification:code tire-age:choice tread-depth:reading tread-wear:choice tire-faults:faults pressure:reading wheel-kind:choice wheel-faults:faults runout-lateral:reading runout-radial:reading fixing-kind:choice fixings:choice torque:reading rollout:reading",
  engine:
    "compression:reading leak-down:reading leak-down-path:choice vacuum:reading vacuum-needle:choice oil-pressure-idle:reading oil-pressure-2000:reading combustion-gas:presence freeze-point:reading timing:reading dwell:reading oil:choice coolant:choice belts:grade hoses:faults radiator:choice wiring:choice fuel-smell:presence smoke-cold:choice smoke-warm:choice noise:choice finish:grade as-built:choice bore:reading stroke:reading displacement:reading rebuild-claim:choice carburetor-number:code",
  road: "cold-start:choice hot-restart:choice idle:reading idle-quality:choice take-up:choice shifts:choice gear:choice gear-ratio:reading lock-up:choice revolutions:reading indicated-speed:reading gps-speed:reading braking:choice tracking:choice vibration:choice noise:choice temperature-after-20:reading",
};

describe("the sections of version 1", () => {
  it("are sixteen, in the order of the sheet", () => {
    expect(sheet.sections.map(({ id }) => id)).toEqual(Object.keys(asked));
  });

  it.each(Object.entries(asked))("%s still reads all of this", (section, items) => {
    const inSection = new Set(
      sheet.items
        .filter((item) => item.section === section)
        .map(({ id, answer }) => `${id.slice(section.length + 1)}:${answer}`),
    );
    expect(items.split(" ").filter((each) => !inSection.has(each))).toEqual([]);
  });

  it.each([
    ["identity.vin", "number-places", "identity"],
    ["body.paint-thickness", "panels", "appearance"],
    ["gaps.width-top", "gaps", "appearance"],
    ["engine.compression", "cylinders", "mechanical"],
    ["wheels.tread-depth", "corners-and-spare", "safety"],
    ["brakes.lining-thickness", "corners-under", "safety"],
    ["brakes.drum-diameter", "drum-corners", "safety"],
    ["brakes.disc-runout", "disc-corners", "safety"],
    ["steering.ball-joint-play", "ball-joints", "safety"],
    ["underbody.floor-pans", "floor-quarters", "structure"],
    ["underbody.lift-points", "floor-quarters", "safety"],
    ["brightwork.glass-faults", "glasses", "safety"],
    ["identity.title-brand", undefined, "papers"],
  ])("%s stands at %s and is a matter of %s", (id, positions, consequence) => {
    expect(sheet.items.find((item) => item.id === id)).toMatchObject({ consequence });
    expect(sheet.items.find((item) => item.id === id)?.positions).toBe(positions);
  });

  it.each([
    ["engine.compression", ["hot-engine", "dismantling", "permission"], ["warm", "throttle-open"]],
    ["engine.leak-down", ["hot-engine", "dismantling", "permission"], ["test-pressure"]],
    ["engine.vacuum", ["hot-engine"], ["height", "engine-speed"]],
    ["engine.oil-pressure-idle", ["hot-engine"], ["oil-temperature", "engine-speed"]],
    ["electrics.volts-rest", [], ["charger-off"]],
    ["steering.ride-height", [], ["fuel-load"]],
    ["steering.ball-joint-play", ["lift"], ["loaded"]],
    ["visit.engine-cold", ["cold-engine"], []],
    ["brakes.lining-thickness", ["lift", "dismantling"], []],
    ["road.braking", ["road"], []],
    ["body.faults", ["daylight"], []],
    ["identity.odometer-on-papers", [], ["entry-date"]],
    ["driveline.axle-turns", ["lift"], ["both-wheels"]],
  ])("%s needs %j and notes %j", (id, needs, conditions) => {
    const item = sheet.items.find((candidate) => candidate.id === id);
    expect(item?.needs.toSorted()).toEqual(needs.toSorted());
    expect(item?.conditions.toSorted()).toEqual(conditions.toSorted());
  });
});
