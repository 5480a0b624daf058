/** Choosing what is looked at, and why an hour is refused. */
export const brief = {
  "brief.title": "What is looked at",
  "brief.under":
    "Choose how deep the inspection goes, then add what matters to you. Each item takes minutes and may need the lift, daylight or the road.",
  "brief.depth": "How deep",
  "brief.depth.one": "{depth}, {time}",
  "brief.depth.first-look": "First look",
  "brief.depth.half-day": "Half a day",
  "brief.depth.day": "A day",
  "brief.depth.first-look.what":
    "Papers, numbers, the cold start, where rust begins, the road: what carries the price, by one person alone.",
  "brief.depth.half-day.what":
    "What most buyers pay for: the whole car by one person alone, with photographs.",
  "brief.depth.day.what":
    "With a helper: drums off, compression, leak-down, oil pressure, every gap. More than one day’s work where all of it is wanted.",
  "brief.core.show": "{count, plural, one {One item} other {All # items}} of it, {time}",
  "brief.further": "Add to it",
  "brief.search": "Search the items",
  "brief.search.hint": "American and British words for parts are understood",
  "brief.none": "No item fits “{q}”. Try another word for the part, or fewer words.",
  "brief.section":
    "{section}: {count, plural, one {one item} other {# items}}{chosen, plural, =0 {} other {, # chosen}}",
  "brief.item": "{minutes} min",
  "brief.total": "This visit",
  "brief.total.items": "{count, plural, one {One item} other {# items}}",
  "brief.total.time": "{time}",
  "brief.total.items.term": "Items",
  "brief.total.time.term": "Looking",
  "brief.total.plan.term": "With lifting, in all",
  "brief.total.need": "of which {need}",
  "brief.total.unsaved": "Not saved yet. The order and the length of the visit are worked out on saving.",
  "brief.left-out": "What is left out stands as unseen in the comparison.",
  "brief.save": "Save and find an hour",
  "brief.save.stay": "Save",
  "brief.saved": "Saved",
  "brief.problem.title": "This cannot be planned as it stands",
  "brief.problem.nothing-chosen": "Nothing is chosen yet. Choose at least one item.",
  "brief.problem.road-without-gate":
    "The road needs its gate looked at first: lift points, brakes, steering, tires, wheel fixings, fuel lines. Add what is missing there, or leave the road items out.",
  "brief.problem.stage-against-needs":
    "An item asks for a stage that its needs do not allow. Leave it out: {item}.",
  "brief.problem.impossible-minutes": "An item names no possible time. Leave it out: {item}.",
  "brief.problem.other": "An item cannot be fitted into the visit. Take the last one you added out again.",
  "brief.moved": "The brief was changed in the meantime. It was loaded again; choose again and save.",
  "why.title": "Why not another hour on {day}",
  "why.hint": "What is in the way at each start, and what would work.",
  "why.all": "For every inspector",
  "why.one": "{name}, {firm}",
  "why.offered": "{count, plural, one {one inspector} other {# inspectors}} offered",
  "why.close": "Close",
  "why.starts": "{from} to {to}",
  "why.start": "{from}",
  "why.none": "No start lies on this day.",
  "why.more": "Show what is in the way for single inspectors",
  "why.notice": "It is too soon. The earliest start is {earliest}.",
  "why.off-the-step": "Starts are on the quarter hour: {earlier} or {later}.",
  "why.site-closed":
    "The site is not open for the whole visit. Its nearest opening is {nearest}; the visit must lie within it.",
  "why.site-closed.none": "The site is not open, with no opening near. Try another week.",
  "why.dealer-closed": "The dealer gives no access from {start} to {end}. Choose an hour outside it.",
  "why.no-bay":
    "{bays, plural, =0 {The site has no lift. Leave out what needs the lift, or ask the dealer for another site.} one {The lift is taken from {start} to {end}. An hour before or after works.} other {All # lifts are taken from {start} to {end}. An hour before or after works.}}",
  "why.no-daylight":
    "There is no daylight for “{stage}” from {start} to {end}. Daylight that is long enough: {nearest}.",
  "why.no-daylight.none":
    "There is no daylight for “{stage}” from {start} to {end}. Leave out what needs daylight, or choose a lighter week.",
  "why.car-taken": "The car itself is booked from {start} to {end}.",
  "why.car-not-cold":
    "The engine would not be cold: it runs until {end}, and stands {time} first. An hour after that works.",
  "why.outside-hours": "Not at work for the whole visit and the way. The nearest time is {nearest}.",
  "why.outside-hours.none": "Not at work, with no time near. Try another week or another inspector.",
  "why.inspector-taken": "At another job from {start} to {end}. An hour before or after works.",
  "why.travel":
    "{direction, select, before {Cannot be here in time: the way takes {needed}, there are {available}. A later start works.} other {Cannot be at the next job in time: the way takes {needed}, there are {available}. An earlier start works.}}",
  "why.outside-radius":
    "The site is {distance} away; this inspector travels {radius}. Choose another inspector.",
  "why.lacks-skill":
    "Does not name {skills} among what they know. Leave that wish out, or choose another inspector.",
  "why.not-independent": "Not independent: {conflicts}. Choose another inspector.",
  "why.other-currency": "Charges in {currency}; you asked for {wanted}.",
  "why.price-changed": "The price is {total} now; {offered} was shown. Read the offer again.",
  "conflict.interest-in-dealer": "{kind} ({holder})",
  "conflict.dealt-with-car": "{dealing}",
  "lost.title": "Somebody else has that hour now",
  "lost.what": "Nothing was booked and nothing is owed.",
  "lost.fresh": "These are free at this moment:",
  "lost.none": "No other hour is free in these days. Choose later days.",
  "lost.take": "{when}, {total}",
} as const;
