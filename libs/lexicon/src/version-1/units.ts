/** Words of a unit; `factor` makes the number one in that unit ("five thou" is five times 0.001 in). */
export type UnitWords = { readonly unit: string; readonly factor: number; readonly words: readonly string[] };

const unit = (symbol: string, words: string, factor = 1): UnitWords => ({
  unit: symbol,
  factor,
  words: words.split(";").map((one) => one.trim()),
});

/** Units as they are said. `deg?` is a degree without a scale, `years` is none of the sheet's. */
export const unitWords: readonly UnitWords[] = [
  unit(
    "1/32in",
    "thirty second (of an inch); 32nd; 32 nd; 32 nds; / 32; thirty second inch; thirty seconds of an inch; 30 second; thirty seconds",
  ),
  unit("in", 'inch; in; "; of an inch; inches; inch long'),
  unit("in", "thou; thousandth; thousandth of an inch", 0.001),
  unit("mm", "mm; millimeter; mill; millimeters"),
  unit("mil", "mil; mils"),
  unit("cm", "cm; centimeter; centi"),
  unit("um", "micron; micrometer; um; mic; microns; mics"),
  unit("ft", "foot; feet; ft"),
  unit(
    "psi",
    "psi; pound; lb; pounds per square inch; p s i; lbs; pound of pressure; pound of air; pound per square inch",
  ),
  unit("bar", "bar; atmosphere"),
  unit("kPa", "kpa; kilopascal"),
  unit("V", "volt; v"),
  unit("%", "percent; per cent; %"),
  unit("degC", "celsius; degree celsius; degree c; centigrade; degree centigrade"),
  unit("degF", "fahrenheit; degree fahrenheit; degree f"),
  unit("deg?", "degree; deg"),
  unit("rpm", "rpm; rev; revolution; revs; r p m; revs a minute; revs per minute"),
  unit("mi", "mile; mi; mls"),
  unit("km", "km; kilometer; k m; kms"),
  unit("mph", "mph; mile an hour; mile per hour; miles an hour"),
  unit("km/h", "km h; kilometer an hour; kilometer per hour; kph"),
  unit("inHg", "inch of vacuum; inch of mercury; in hg; inhg"),
  unit("cm3", "cc; cubic centimeter; c c; ccm"),
  unit("in3", "cubic inch; ci; cid; cube; cubes"),
  unit("l", "liter; l"),
  unit("lbf.ft", "foot pound; ft lb; lb ft; pound foot"),
  unit("N.m", "newton meter; nm"),
  unit("years", "year; year old; yr"),
  unit("min", "minute"),
  unit("dollars", "dollar; pounds sterling; buck; euro; grand"),
];
