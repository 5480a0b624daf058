/** How a dealer's statements held up, over cars. */
export const records = {
  "record.title": "How this dealer’s statements held up",
  "record.how":
    "{cars, plural, one {# car} other {# cars}} of this dealer have been inspected and set against what was stated. Counted are cars, not items: in a section a car held up when nothing stated there was found worse. It was confirmed when, besides, the inspection bore out at least one statement; otherwise it could only not be contradicted.",
  "record.interval":
    "Each bar runs from 0 to 100%. The mark is the share; the band is its 90% interval: a dealer’s true share lies within such a band about nine times in ten.",
  "record.pooled":
    "Shares are drawn a little toward those of other dealers, so that a run of luck counts for less; a share can therefore differ from the count of cars below it.",
  "record.heldUp": "Held up",
  "record.confirmed": "Confirmed",
  "record.share": "{share} ({low} to {high})",
  "record.cars":
    "{n, plural, one {# car} other {# cars}}: confirmed in {confirmedCars}, only not contradicted in {notContradicted}, something found worse in {fell}",
  "record.too-few": "too few cars to say ({n} of {needed})",
  "record.nothing":
    "{cars, plural, =0 {None of this dealer’s cars has been inspected yet} one {# of this dealer’s cars has been inspected so far} other {# of this dealer’s cars have been inspected so far}}; nothing is said of how their statements held up before {needed} cars were tested in the same section.",
  "record.caution":
    "This is no rating of the dealer and no promise for this car: it says how statements on the cars inspected so far fared, and nothing of what is true of this one.",
} as const;
