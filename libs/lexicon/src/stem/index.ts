/** American for British spelling, and the commonest misspellings. */
const SPELLINGS: Readonly<Record<string, string>> = {
  tyre: "tire",
  aluminium: "aluminum",
  colour: "color",
  centre: "center",
  metre: "meter",
  millimetre: "millimeter",
  centimetre: "centimeter",
  kilometre: "kilometer",
  micrometre: "micrometer",
  litre: "liter",
  grey: "gray",
  mould: "mold",
  moulding: "molding",
  kerb: "curb",
  kerbed: "curbed",
  carburettor: "carburetor",
  carburetter: "carburetor",
  carburator: "carburetor",
  carb: "carburetor",
  odour: "odor",
  guage: "gauge",
  gage: "gauge",
  vapour: "vapor",
  fibre: "fiber",
  calliper: "caliper",
  mileometer: "odometer",
  milometer: "odometer",
  accelarator: "accelerator",
  disk: "disc",
  mouldy: "moldy",
  grill: "grille",
  bumber: "bumper",
  winscreen: "windscreen",
  rockar: "rocker",
  corosion: "corrosion",
  speedometre: "speedometer",
  gearboxe: "gearbox",
  tappit: "tappet",
  weeping: "weep",
  seeping: "seep",
  dripping: "drip",
  sweating: "sweat",
  started: "start",
  fired: "fire",
  goe: "go",
  yep: "yes",
  yeah: "yes",
  yup: "yes",
  aye: "yes",
  nope: "no",
  nah: "no",
};

/** Short words that end in s and are no plural. */
const KEPT = new Set(
  "is was has does this its us yes plus as gas bus less minus always perhaps towards across chassis lens his hers gas axis".split(
    " ",
  ),
);

const singular = (word: string): string => {
  if (word.length < 4 || KEPT.has(word)) return word;
  if (/(?:ss|us|is|as)$/u.test(word)) return word;
  if (/[a-z]ies$/u.test(word) && word.length > 4) return `${word.slice(0, -3)}y`;
  if (/(?:ss|ch|sh|x|zz)es$/u.test(word)) return word.slice(0, -2);
  return word.endsWith("s") ? word.slice(0, -1) : word;
};

/**
 * One word as the lexicon knows it: lower case, accents off, American spelling, singular.
 *
 * @example
 * stem("Tyres"); // "tire"
 */
export const stem = (word: string): string => {
  const plain = word.normalize("NFD").replaceAll(/\p{M}/gu, "").toLowerCase();
  const one = singular(plain);
  return Object.hasOwn(SPELLINGS, one) ? (SPELLINGS[one] ?? one) : one;
};
