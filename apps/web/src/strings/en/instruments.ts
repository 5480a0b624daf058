/** What a firm measures with. */
export const instruments = {
  "own-instruments.title": "Our instruments",
  "own-instruments.under":
    "What your firm measures with. A report that is begun takes a copy of those in use; reports begun before keep theirs.",
  "own-instruments.hint":
    "An instrument’s smallest step and accuracy decide how firmly a reading can confirm or contradict. Enter them as its maker or its last calibration gives them.",
  "own-instruments.nobody": "Only dealers and inspection firms keep instruments",
  "own-instruments.nobody.what": "You belong to neither.",
  "own-instruments.read-only": "You can read the instruments of {firm}. Its administrators can change them.",
  "own-instruments.in-use": "In use",
  "own-instruments.retired": "Retired",
  "own-instruments.retired.hint": "New reports begin without them.",
  "own-instruments.none": "No instrument is in use.",
  "own-instruments.kind": "What it is",
  "own-instruments.kind.hint":
    "As the sheet calls it. A reading that is ordinarily taken with one then names yours by itself.",
  "own-instruments.kind.choose": "Choose what it is",
  "own-instruments.save": "Save",
  "own-instruments.change": "Change",
  "own-instruments.change.of": "Change {name}",
  "own-instruments.retire": "Retire",
  "own-instruments.retire.of": "Retire {name}",
  "own-instruments.use": "Use again",
  "own-instruments.use.of": "Use again: {name}",
  "own-instruments.remove": "Remove",
  "own-instruments.remove.of": "Remove {name}",
  "own-instruments.saved.keep": "{name} is saved.",
  "own-instruments.saved.retire": "{name} is retired. That is saved.",
  "own-instruments.saved.use": "{name} is in use again. That is saved.",
  "own-instruments.saved.remove": "{name} is removed. That is saved.",
};
