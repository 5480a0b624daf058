import { name } from "./name.ts";
import type { Written } from "./name.ts";

/** Names of papers, wheels, brakes, gauges and lamps, and of what is measured of them. */
export const writtenMeasured: readonly Written[] = [
  name(
    "bill of sale; original bill of sale; original invoice; sales invoice; purchase invoice; first invoice",
    "identity.invoice",
  ),
  name("title", "identity.title-holder identity.title-brand identity.title-kind"),
  name(
    "vin; vin number; chassis number; serial number; frame number; vin plate",
    "identity.vin",
    "main-plate",
  ),
  name("engine number; engine serial", "identity.engine-number"),
  name(
    "odometer; odometer reading; miles; miles/km shown; indicated miles; kilometers; km",
    "identity.odometer",
  ),
  name(
    "dot; dot date; dot code; dot week; tire date; date of tire; tin; tire dot; tire week; week year",
    "wheels.tire-identification",
  ),
  name("tire size; size of tire; tire dimension", "wheels.tire-size"),
  name("tire psi; psi; tire pressure; inflation; air; cold pressure; tire inflation", "wheels.pressure"),
  name("tread; tire tread; tread remaining; tread left; tire depth", "wheels.tread-depth"),
  name(
    "wheel; rim; wheel condition; rim condition; alloy; wheel rim; road wheel; steel wheel; alloy wheel",
    "wheels.wheel-faults",
  ),
  name(
    "tire; tire condition; sidewall; tire wall; tire sidewall",
    "wheels.tire-faults wheels.tread-depth wheels.pressure",
  ),
  name("tire wear; wear pattern; wear", "wheels.tread-wear"),
  name(
    "pad; shoe; pad shoe; brake; brake pad/shoe/lining; pad thickness; lining; lining thickness; brake lining thickness; shoe thickness; brake material; lining left; friction material",
    "brakes.lining-thickness",
  ),
  name("rotor/disc thickness; rotor; disc", "brakes.disc-thickness"),
  name("run out; runout; disc/rotor run out", "brakes.disc-runout"),
  name("lateral run out/runout; wheel wobble; side runout", "wheels.runout-lateral"),
  name("radial run out/runout", "wheels.runout-radial"),
  name("bearing play; wheel bearing; bearing; hub play", "steering.wheel-bearing-play"),
  name("lug nut torque; wheel nut torque; wheel torque; lug torque", "wheels.torque"),
  name(
    "oil pressure hot idle; oil pressure idle; hot idle oil pressure; idle oil pressure; oil idle",
    "engine.oil-pressure-idle",
  ),
  name(
    "oil pressure 2000 rpm; oil pressure cruise; oil pressure running; oil pressure rev; oil pressure speed; oil pressure 2500; oil pressure 3000; oil pressure 3500; oil pressure 50 mph; oil pressure driving",
    "engine.oil-pressure-2000",
  ),
  name(
    "battery; battery voltage; battery rest/static; static voltage; standing voltage; battery engine off; open circuit voltage; resting volt",
    "electrics.volts-rest",
  ),
  name(
    "charging; alternator output; charge rate; charging voltage; running voltage; battery run; battery running; charging system; alternator; generator output; charge; dynamo; dynamo output; generator; alternator charging; dynamo charging",
    "electrics.volts-charging",
  ),
  name(
    "cranking; crank; starting voltage; voltage starting; starter voltage; battery starting; battery crank; cranking voltage; battery cranking; volt cranking",
    "electrics.volts-cranking",
  ),
  name(
    "paint; paint meter; paint gauge; thickness; paint reading; paint depth; micron; mil; film; coating",
    "body.paint-thickness",
  ),
  name("paint highest; highest paint reading; highest paint thickness", "body.paint-highest"),
  name("paint lowest; lowest paint reading; lowest paint thickness", "body.paint-thickness"),
  name("damage; dent; panel condition; defect; bodywork; rust; body damage; body", "body.faults"),
  name("finish; shine; gloss; paint finish; paint condition; paint quality", "body.finish"),
  name("magnet; magnet test", "body.magnet"),
  name(
    "temperature after 20 minute; temperature after drive; running temperature; operating temperature; coolant temperature; coolant after; coolant after minute; water temperature; temperature after 20 minute drive; engine temperature",
    "road.temperature-after-20",
  ),
  name(
    "block temperature over ambient; block above ambient; engine cold; block minus ambient; block over air",
    "visit.engine-cold",
  ),
  name("ambient; ambient temperature; air temperature; outside temperature", "visit.ambient-temperature"),
  name("heater fan; heater blower; fan speed; blower; blower motor; heater motor", "electrics.blower"),
  name("heater; heat", "electrics.heat"),
  name("air con; aircon; air conditioning; air conditioner; ac; a c", "electrics.air-conditioning"),
  name(
    "turn signal; indicator; direction indicator; blinker; flasher; signal; trafficator",
    "electrics.lamps",
    "left-front-turn right-front-turn left-rear-turn right-rear-turn",
  ),
  name("front turn signal; front indicator", "electrics.lamps", "left-front-turn right-front-turn"),
  name("rear turn signal; rear indicator", "electrics.lamps", "left-rear-turn right-rear-turn"),
  name(
    "headlamp; head lamp; main beam; high beam; low beam; dipped beam; dip beam",
    "electrics.lamps",
    "left-headlamp right-headlamp",
  ),
  name("brake lamp; stop lamp; brakelight; brakelamp", "electrics.lamps", "left-stop right-stop"),
  name("tail lamp; taillamp; taillight; rear lamp", "electrics.lamps", "left-tail right-tail"),
  name(
    "sidelight; side light; side lamp; parking lamp; sidelamp; park lamp",
    "electrics.lamps",
    "left-front-parking right-front-parking",
  ),
  name("reverse lamp; backup lamp; back up lamp; reversing lamp", "electrics.lamps", "reverse"),
  name(
    "plate lamp; license lamp; licence lamp; license plate lamp; number plate lamp; registration plate lamp; tag lamp",
    "electrics.lamps",
    "plate",
  ),
  name("interior lamp; dome lamp; courtesy lamp; cabin lamp", "electrics.lamps", "interior"),
  name(
    "instrument lamp; dash lamp; panel lamp; gauge lamp; dash illumination",
    "electrics.lamps",
    "instrument",
  ),
  name("side repeater; repeater; side marker", "electrics.lamps", "left-repeater right-repeater"),
  name("hazard; hazard lamp; four way flasher; hazard flasher", "electrics.hazard"),
  name("warning lamp; idiot lamp; telltale; dash warning", "electrics.warning-lamps"),
  name("rev counter; tachometer; tacho", "electrics.tachometer"),
  name("washer; screen washer; wash", "electrics.washers"),
  name("power/electric window; window; window motor; door window; window winder", "doors.regulators"),
  name("aerial; antenna", "electrics.antenna"),
  name(
    "parking brake; handbrake; hand brake; e brake; emergency brake; park brake; parking brake hold",
    "brakes.parking-brake",
  ),
];
