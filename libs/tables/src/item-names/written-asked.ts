import { name } from "./name.ts";
import type { Written } from "./name.ts";

/** Names as lists of questions, garages and road tests write them. */
export const writtenAsked: readonly Written[] = [
  name("start at once cold; engine start at once cold", "road.cold-start"),
  name("start at once hot; engine start at once hot", "road.hot-restart"),
  name(
    "idle smooth; idle smoothly; idle evenly; idle even; idle steady; idle steadily; smooth idle; run smoothly idle; idle quality; quality of idle; run evenly; run smoothly",
    "road.idle-quality",
  ),
  name("coolant rusty; rusty coolant", "engine.coolant"),
  name(
    "paper seller name; title seller name; paper in seller name; document seller name",
    "identity.title-holder",
  ),
  name(
    "written off; write off; salvage; salvaged; written off or salvaged; insurance loss",
    "identity.title-brand",
  ),
  name("prop joint; play prop joint; propshaft joint", "driveline.joint-play"),
  name("pedal sink; pedal sink held; pedal sinks; pedal creep", "brakes.pedal-sink"),
  name(
    "pedal firm; pedal spongy; pedal soft; pedal hard; firm pedal; spongy pedal; soft pedal",
    "brakes.pedal-feel",
  ),
  name("gear grind; gear crunch; gearbox crunch", "road.shifts"),
  name("heater blow hot; heater hot; heat output", "electrics.heat"),
  name("tire crack; tire cracked; tire perished; sidewall crack; tire bulge", "wheels.tire-faults"),
  name(
    "tire over ten year; tire ten year; tire over ten year old; tire over six year; tire over six year old",
    "wheels.tire-age",
  ),
  name("filler sill; filler rocker; filler in sill", "body.faults", "left-rocker right-rocker"),
  name(
    "miles showing; mileage showing; recorded mileage; indicated mileage; current mileage; mileage shown; speedometer mileage; mileage at inspection",
    "identity.odometer",
  ),
  name(
    "title in hand; title present; logbook present; document present; title with seller",
    "identity.title-holder",
  ),
  name("color code; paint code; body color code", "identity.paint-code"),
  name(
    "engine original; original engine; matching engine; engine matching; number matching engine; engine number match",
    "identity.originality",
    "engine",
  ),
  name("bonnet/hood release/latch/catch/lock; bonnet/hood safety catch", "doors.lid-latches", "hood"),
  name("boot/trunk release/latch/catch/lock", "doors.lid-latches", "trunk-lid"),
  name("tailgate/hatch release/latch/catch/lock", "doors.lid-latches", "tailgate"),
  name("bonnet/hood stay/strut/prop/support", "doors.lid-supports", "hood"),
  name("boot/trunk stay/strut/support", "doors.lid-supports", "trunk-lid"),
  name("tailgate/hatch stay/strut/support", "doors.lid-supports", "tailgate"),
  name("boot/trunk trim/carpet/lining/mat", "trunk.lining"),
  name("floor carpet; carpet set; interior carpet; carpet and mat", "interior.carpet"),
  name("head lining; headcloth; roof trim; roof cloth", "interior.headliner"),
  name("facia; fascia; dash board; dashboard top; instrument panel top", "interior.dash-top"),
  name(
    "seat belt operation; seat belt function; seat belt latch/lock/catch/buckle/mechanism; belt latch; belts lock; seat belt retract",
    "interior.belt-latch",
  ),
  name("demist; demister; windscreen demist; defog; defroster", "electrics.defrost"),
  name("washer jet; washer nozzle; washer pump; screen wash; washer bottle", "electrics.washers"),
  name("heater control; heating control; heater valve; heater tap; heating", "electrics.heat"),
  name(
    "seat adjustment; seat adjuster; seat slide; seat runner; seat track; seat movement; seat recline; seat mechanism",
    "interior.seat-adjusters",
  ),
  name("audio; audio system; cassette; radio cassette; sound system", "electrics.radio"),
  name(
    "headlamp main dip; headlamp high low; headlamp main and dip; main and dipped beam; headlamp dip and main; head lamp dip",
    "electrics.lamps",
    "left-headlamp right-headlamp",
  ),
  name(
    "instrument illumination; gauge illumination; instrument lighting; dash lighting; panel illumination; panel lighting",
    "electrics.lamps",
    "instrument",
  ),
  name("hazard warning lamp; hazard warning; way flasher; hazard switch", "electrics.hazard"),
  name(
    "rear box; back box; exhaust box; silencer box; rear silencer; rear muffler",
    "driveline.exhaust",
    "mufflers",
  ),
  name("center box; middle box; centre silencer; exhaust joint", "driveline.exhaust"),
  name("exhaust downpipe; down pipe; front pipe; exhaust front pipe", "driveline.exhaust", "head-pipes"),
  name(
    "flexible fuel pipe/line/hose; rubber fuel pipe/line/hose; fuel flexible; fuel hose; petrol hose",
    "driveline.fuel-hoses",
  ),
  name("tre; track rod end; steering rod end; outer tie rod", "steering.tie-rod-ends"),
  name("road spring; suspension spring", "steering.springs"),
  name("m cylinder; brake m cylinder", "brakes.master-cylinder"),
  name(
    "oil color; oil appearance; engine oil color; oil level and color; oil level and condition",
    "engine.oil",
  ),
  name(
    "auxiliary belt; aux belt; alternator belt; serpentine belt; dynamo belt; water pump belt; ancillary belt",
    "engine.belts",
  ),
  name("smoke start; start smoke; smoke starting; smoke first start", "engine.smoke-cold"),
  name("mechanical noise; unusual engine noise; engine rattle; top end noise; engine knock", "engine.noise"),
  name(
    "fuel odor; petrol odor; gas odor; smell fuel; smell petrol; smell gas",
    "engine.fuel-smell interior.smell",
  ),
  name("hot starting; starting hot; starting warm; start hot; start warm", "road.hot-restart"),
  name("starting cold; cold starting", "road.cold-start"),
  name(
    "gear selection; gear engagement; gearbox operation; gears; all gear; transmission operation; transmission shifting; gear changing",
    "road.shifts",
  ),
  name(
    "brake road; brake on road; braking road; road brake; brake road test; brake performance",
    "road.braking",
  ),
  name(
    "directional stability; stability; steers straight; holds straight; steering on road",
    "road.tracking",
  ),
  name("vibration speed; vibration road; steering wheel vibration; wheel vibration", "road.vibration"),
  name(
    "tire type; tire construction; type of tire; radial crossply; radial or crossply",
    "wheels.tire-construction",
  ),
  name("tire age; age of tire; tire year; year of tire", "wheels.tire-age"),
  name("wheel trim; trim ring; hub cap and trim; wheel cover", "wheels.hub-caps"),
  name("wheel nut; lug nut; wheel stud; wheel bolt; wheel fixing", "wheels.fixings"),
  name(
    "accident repair; crash damage; accident damage; collision; previous accident",
    "underbody.collision-repair",
  ),
  name("engine bay; engine compartment; under bonnet; under hood; engine bay presentation", "engine.finish"),
  name("gearbox oil level; transmission fluid color; gearbox oil condition", "driveline.gearbox-fluid"),
  name("coolant color; coolant level; antifreeze color; coolant level and color", "engine.coolant"),
  name("brake servo; servo; booster; power brake; brake assistance", "brakes.servo"),
  name("oil filler; oil filler cap; oil cap; filler cap inside", "engine.oil engine.blow-by"),
  name("fluid type; fluid kind; brake fluid kind; brake fluid grade; brake fluid spec", "brakes.fluid-kind"),
  name("electric/power window", "electrics.power-windows doors.regulators"),
  name("lamp; all lamp; exterior lamp; external lamp", "electrics.lamps"),
];
