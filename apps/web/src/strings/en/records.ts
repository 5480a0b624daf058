/** How a dealer's statements held up, over cars; what was sealed and what is held, to take away. */
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
  "record.stated-worse":
    "To the dealer’s credit: {count, plural, one {# fault was} other {# faults were}} stated worse than found. It stands by itself and changes no share.",
  "record.others":
    "In the middle of {dealers, plural, one {# other dealer} other {# other dealers}}: {fallen} fell, {stated} stated.",
  "record.no-others": "Too little is known of other dealers to set beside it.",
  "record.too-few": "too few cars to say ({n} of {needed})",
  "record.nothing":
    "{cars, plural, =0 {None of this dealer’s cars has been inspected yet} one {# of this dealer’s cars has been inspected so far} other {# of this dealer’s cars have been inspected so far}}; nothing is said of how their statements held up before {needed} cars were tested.",
  "record.caution":
    "This is no rating of the dealer and no promise for this car: it says how statements on the cars inspected so far fared, and nothing of what is true of this one.",
  "proof.title": "The seal",
  "proof.seal": "Sealed · SHA-256 {seal}",
  "proof.receipt":
    "Receipt: signed with key {key} on {at}. The record of the organization it belongs to had {size, plural, one {# entry} other {# entries}} then, this one among them.",
  "proof.none":
    "There is no receipt: this was sealed before the service signed any. It can’t be checked elsewhere; its SHA-256 is all there is to know it by.",
  "proof.unknown": "Whether there is a receipt could not be asked just now.",
  "proof.withheld":
    "It can be downloaded once all of it is shown to you; what you are shown now is not the text that was sealed.",
  "proof.download": "Download to check it elsewhere",
  "proof.download.what":
    "One file with the sealed text, this receipt and the service’s public keys. “npm run record -- check FILE” checks it without this service: that it is what was sealed then, not that what it says of the car is true.",
  "proof.other": "No file was made",
  "proof.other.what":
    "What the service sent is not the text under this SHA-256. It may be withheld from you by now, or it was changed on its way. Load the page again; if it stays so, tell whoever runs the service.",
  "export.title": "Take away what the organization holds",
  "export.in":
    "In it: name and place, members with their mail addresses, cars, inspection orders, visits, what was laid before a dealer, decisions, drafts of reports and decisions, cost tables, transport rates, landed costs and what was gone through before money moved as each was saved, hand-overs, questions as they were asked, complaints, sites, calendars, and the organization’s record with the receipts and keys that prove it. One JSON file.",
  "export.out":
    "Not in it: the texts of sealed reports and summaries, and of what was signed at a hand-over. It has their seals and addresses; each is downloaded from its own page, where it is noted who was shown what before an inspection. Other parties’ people are not named. Nothing else is in it either, such as comparisons, photographs, payments, instruments, a firm’s own figures, and how people sign in.",
  "export.do": "Export what the organization holds",
} as const;
