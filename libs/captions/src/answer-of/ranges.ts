/** What a number without a unit may be, by item, in the unit it is then taken in. Common practice, no source. */
export const plainRanges: Readonly<Record<string, readonly [number, number, string]>> = {
  "engine.compression": [40, 320, "psi"],
  "engine.leak-down": [0, 100, "%"],
  "engine.vacuum": [4, 30, "inHg"],
  "engine.oil-pressure-idle": [2, 120, "psi"],
  "engine.oil-pressure-2000": [5, 120, "psi"],
  "engine.timing": [0, 40, "deg"],
  "engine.dwell": [20, 70, "deg"],
  "electrics.volts-rest": [5, 15, "V"],
  "electrics.volts-cranking": [3, 14, "V"],
  "electrics.volts-charging": [5, 16, "V"],
  "electrics.vent-temperature": [0, 90, "deg?"],
  "road.temperature-after-20": [50, 260, "deg?"],
  "visit.ambient-temperature": [-20, 120, "deg?"],
  "road.idle": [300, 2000, "rpm"],
  "identity.odometer": [1000, 999999, "mi"],
  "wheels.pressure": [10, 70, "psi"],
  "wheels.tread-depth": [1, 20, "1/32in"],
  "body.paint-thickness": [40, 3000, "um"],
  "body.paint-highest": [40, 5000, "um"],
  "gaps.width-top": [1, 15, "mm"],
  "gaps.width-bottom": [1, 15, "mm"],
  "brakes.lining-thickness": [1, 20, "mm"],
  "brakes.disc-thickness": [5, 40, "mm"],
  "driveline.axle-ratio": [2, 7.5, "1"],
  "driveline.axle-ratio-tag": [2, 7.5, "1"],
  "brakes.disc-runout": [0, 0.5, "mm"],
  "steering.king-pin-play": [0, 10, "mm"],
  "brakes.fluid-boiling-point": [80, 600, "deg?"],
};

/** From which figure on a degree without a scale is one of Fahrenheit, by item; below it Celsius. */
export const fahrenheitFrom: Readonly<Record<string, number>> = {
  "electrics.vent-temperature": 25,
  "road.temperature-after-20": 130,
  "visit.ambient-temperature": 45,
  "brakes.fluid-boiling-point": 300,
};
