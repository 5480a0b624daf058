/** What people write short in a list of findings, with its point where it is no word without. No source: the trade's own habits. */
const SHORT: Readonly<Record<string, string>> = {
  "n/w": "not working",
  inop: "not working",
  "inop.": "not working",
  wkg: "working",
  "wkg.": "working",
  wrkg: "working",
  "w/ing": "working",
  gd: "good",
  "gd.": "good",
  "v.": "very",
  "v.gd": "very good",
  "sl.": "slight",
  lt: "light",
  "lt.": "light",
  surf: "surface",
  "surf.": "surface",
  corr: "corrosion",
  "corr.": "corrosion",
  "inst.": "instant",
  exc: "except",
  "exc.": "except",
  "b/s": "both sides",
  saggy: "sagging",
  btm: "bottom",
  thru: "through",
  "w/o": "without",
  "repl.": "replaced",
  "repl'd": "replaced",
  "rpl'd": "replaced",
  "rpr'd": "repaired",
  "intermit.": "intermittent",
};

const WORD = /[A-Za-z][A-Za-z'/]*(?:\.[A-Za-z]+)*\.?/g;

/** `Pulls L` is to the left. */
const PULLS = /\b(pull(?:s|ing)?\s+(?:to\s+)?(?:the\s+)?)(L|R|LH|RH|n\/s|o\/s)(?![\w/])/gi;

/**
 * Findings written short, in whole words.
 *
 * @example withoutShorthand("sl. wander, horn n/w") // "slight wander, horn not working"
 */
export const withoutShorthand = (text: string): string =>
  text
    .replaceAll(
      PULLS,
      (_, pulls: string, side: string) => `${pulls}${/^[ln]/i.test(side) ? "left" : "right"}`,
    )
    .replaceAll(WORD, (word) => {
      const key = word.toLowerCase();
      return Object.hasOwn(SHORT, key) ? (SHORT[key] ?? word) : word;
    });
