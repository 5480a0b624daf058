/** How a dealer's statements held up, over cars. */
export const records = {
  "record.title": "How this dealer’s statements held up",
  "record.how":
    "{cars, plural, one {# car} other {# cars}} of this dealer have been inspected and set against what was stated. Counted are statements, of those that an inspection could test: one fell where the car was found worse and figures show it, a second look found it again, or the dealer accepted it. What one look alone found worse is open: it is not in the share, but stands beside it.",
  "record.interval":
    "The mark is the share and the band its 90% interval, in which a dealer’s true share lies about nine times in ten. It goes by whole cars, since the statements of one car stand or fall together, and by this dealer’s cars alone. Bars of what fell run from 0 to {top}, of what was stated from 0 to 100%.",
  "record.silence":
    "Whoever states little has little that can fall; how much was stated stands beside it: of the places on the sheet that apply to the cars, those of which anything was said.",
  "record.whole": "The whole car",
  "record.fallen": "Fell",
  "record.fallenIfAllOpen": "If all that is open should fall",
  "record.stated": "Stated",
  "record.share": "{share} ({low} to {high})",
  "record.counts":
    "{cars, plural, one {# car} other {# cars}}, {tested, plural, one {# statement} other {# statements}} tested: {fell, plural, =0 {none fell} other {# fell}}; beside them {open, plural, =0 {none found worse that is open} other {# found worse by one look and open}}, {notContradicted, plural, =0 {none} other {#}} only not contradicted{settledByMoney, plural, =0 {} other {, # settled by money}}.",
  "record.others":
    "In the middle of {dealers, plural, one {# other dealer} other {# other dealers}}: {fallen} fell, {stated} stated.",
  "record.no-others": "Too little is known of other dealers to set beside it.",
  "record.too-few": "too few cars to say ({n} of {needed})",
  "record.nothing":
    "{cars, plural, =0 {None of this dealer’s cars has been inspected yet} one {# of this dealer’s cars has been inspected so far} other {# of this dealer’s cars have been inspected so far}}; nothing is said of how their statements held up before {needed} cars were tested.",
  "record.caution":
    "This is no rating of the dealer and no promise for this car: it says how statements on the cars inspected so far fared, and nothing of what is true of this one.",
} as const;
