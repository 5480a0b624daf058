/** Photographs and papers. */
export const evidence = {
  "evidence.add.camera": "Take a photograph",
  "evidence.add.files": "Choose files",
  "evidence.here": "Photographs and papers here",
  "evidence.waiting": "Kept on this device; goes next",
  "evidence.offline": "No connection. Kept on this device, and sent by itself when there is one",
  "evidence.sending": "Sending: {sent} of {all} MB",
  "evidence.progress": "How much of {name} has gone",
  "uploads.title": "Photographs and papers on their way",
  "uploads.going":
    "{count, plural, one {# photograph or paper is} other {# photographs and papers are}} being sent: {left} MB to go",
  "uploads.offline":
    "No connection. {count, plural, one {# photograph or paper is} other {# photographs and papers are}} kept on this device ({left} MB), and sent by itself when there is one",
  "uploads.resting":
    "{count, plural, one {# photograph or paper waits} other {# photographs and papers wait}} on this device: {left} MB",
  "uploads.not-taken": "{count, plural, one {# was} other {# were}} not taken",
  "uploads.see": "See them on the sheet",
  "evidence.take-again": "Take it again",
  "evidence.elsewhere": "Only part of it has arrived. It goes on from the device it was taken with",
  "evidence.looked-at": "Arrived; the service is looking at it",
  "evidence.ready": "Arrived",
  "evidence.not-taken": "Not taken: {why}",
  "evidence.open": "Show {name} large",
  "draw.tools": "Draw over the picture",
  "draw.tool.circle": "Circle",
  "draw.tool.arrow": "Arrow",
  "draw.tool.text": "Words",
  "draw.undo": "Take back the last",
  "draw.words": "Words on the picture",
  "draw.middle": "Put it in the middle of what is seen",
  "draw.how.circle": "Or draw from the middle of the circle outward, on the picture.",
  "draw.how.arrow": "Or draw to what it points to, on the picture.",
  "draw.how.text": "Or press where they stand, on the picture.",
  "evidence.take-away": "Take away {name}",
  "evidence.removed": "{name} was taken away.",
  "evidence.put-back": "Put it back",
  "evidence.no-room": "This device cannot keep the photograph",
  "evidence.no-room.what":
    "It was not added. Free up room on this device, or leave private browsing, then take it again.",
  "evidence.questions": "{count, plural, one {One question} other {# questions}} about this picture",
  "evidence.whole-car": "The car as a whole",
  "evidence.alt":
    "{place}: {side, select, statement {photograph of the statement} other {photograph of the inspection}}",
  "evidence.alt.caption": "{what}, “{caption}”",
  "evidence.alt.taken": "{what}, taken {time}",
  "evidence.paper": "Paper (PDF), kept by its owner",
  "evidence.film": "Film, kept by its owner",
  "evidence.count": "{count, plural, one {# photograph} other {# photographs}}",
  "evidence.count.sides":
    "{stated, plural, =0 {No photograph} one {# photograph} other {# photographs}} of the statement, {found, plural, =0 {none} other {#}} of the inspection",
  "evidence.compare": "Look at them side by side",
  "gallery.title": "Photographs: {of}",
  "gallery.title.bare": "Photographs",
  "gallery.under":
    "{count, plural, one {# photograph or paper} other {# photographs and papers}}, by place on the car",
  "gallery.order": "Order",
  "gallery.order.place": "By place",
  "gallery.order.time": "As they were taken",
  "gallery.none": "No photographs yet",
  "gallery.none.hint":
    "They are taken on the sheet, at the place they show, and stand here once the report is sealed.",
  "gallery.report": "Photographs of this report",
  "gallery.of-draft": "Photographs",
  "gallery.of-draft.title":
    "{kind, select, inspection {inspection} other {statement}} of the {year, number, ::group-off} {make} {model}",
  "gallery.draft.none.hint":
    "They are taken on the sheet, at the place they show: open a line and take a photograph there.",
  "gallery.asked": "What the sheet asks for by name",
  "gallery.asked.all": "Everything the sheet asks for is there.",
  "gallery.asked.missing":
    "{count, plural, one {One picture is missing} other {# pictures are missing}}. None of them keeps the report from being sealed; who reads it will look for them.",
  "gallery.on-way":
    "{count, plural, one {# more is} other {# more are}} on the way, or not taken: they stand on the sheet.",
  "gallery.back.sheet": "Back to the sheet",
  "evidence.all": "See all photographs and papers",
  "gallery.back.car": "Back to the car",
  "gallery.back.case": "Back to the case",
  "gallery.back.report": "Back to the report",
  "gallery.keys": "Arrows go from one to the next, Enter shows one large, Escape closes it.",
  "viewer.larger": "Look closer",
  "viewer.smaller": "Look less close",
  "viewer.whole": "The whole picture",
  "viewer.before": "The picture before",
  "viewer.after": "The next picture",
  "viewer.nth": "{nth} of {count}",
  "viewer.close": "Close",
  "viewer.beside": "Side by side",
  "viewer.caption":
    "{side, select, statement {Of the statement} other {Of the inspection}}{caption, select, none {} other {: {caption}}}",
  "viewer.taken": "Taken {time} by the camera’s clock",
  "seal.files":
    "{count, plural, one {# photograph or paper is} other {# photographs and papers are}} still on {count, plural, one {its} other {their}} way: {names}",
  "seal.files.missing":
    "{count, plural, one {# picture the sheet asks for is} other {# pictures the sheet asks for are}} not there: {names}",
  "seal.files.not-taken":
    "{count, plural, one {# photograph or paper was} other {# photographs and papers were}} not taken, and will not be part of it: {names}",
};
