/** What a buyer goes through before money moves. */
export const beforeMoney = {
  "case.money.before": "Before money moves",
  "before.title": "Before money moves",
  "before.under":
    "Only you see this page. It sets what the record says beside what you have seen to yourself.",
  "before.plain":
    "This is a reminder. It is no legal advice, no contract and no escrow, and it cannot tell you that a payment is safe. Local law decides; where a line is not clear to you, ask a lawyer there before you pay.",
  "before.not-bought":
    "You have not approved this car, and no offer on it is agreed. You can go through the list all the same.",
  "before.state.stopped": "Stopped: send no money",
  "before.state.stopped.what":
    "{count, plural, one {One line stands} other {# lines stand}} open at which the record has something that stops the money: {lines}. Each says below what it is and how it could end.",
  "before.state.open": "{count, plural, one {One line is} other {# lines are}} still open",
  "before.state.open.what": "Open: {lines}.",
  "before.state.unknown": "No inspection is compared yet",
  "before.state.unknown.what":
    "The record cannot say whether anything stops the money here, so this list stays open whatever you answer.",
  "before.state.answered": "You have answered every line",
  "before.state.answered.what":
    "That is your own word, as saved on {date}; nobody has checked it here. What the record says against the car still stands beside it, and the lines open again if something new comes up.",
  "before.line.title": "Title seen, and in the seller’s name",
  "before.line.brand": "Brand on the title known",
  "before.line.lien": "Lien paid, or released by letter",
  "before.line.numbers": "Numbers equal everywhere",
  "before.line.border": "Export and import checked",
  "before.line.payee": "Who receives the money",
  "before.line.law": "Local law, and a lawyer’s word where due",
  "before.line.other": "What else stops the money",
  "before.hint.title":
    "You, or somebody you trust, held the title itself or saw both sides. Whoever signs it over is named on it, or has papers to sign for whoever is.",
  "before.hint.brand": "Salvage, rebuilt, flood, buy-back and the like, in every place it was titled.",
  "before.hint.lien":
    "Ask the holder of the lien, not the seller; a release names this car’s number and carries a date.",
  "before.hint.numbers": "The same on title, plate, engine and invoice, as far as the make put it on each.",
  "before.hint.border":
    "Where the car was never abroad and stays in its country, say so in your words. Otherwise ask the customs on both sides.",
  "before.hint.payee":
    "Call a number you knew before, or found for yourself, and have the bank details read to you. Never call the number in the mail that carries them: whoever forged the one forged the other. Details that change at the last moment are a reason to stop.",
  "before.hint.law":
    "Contract, taxes, transfer of title and what you could do afterwards are local. The dearer the car and the farther away, the more a lawyer’s hour is worth.",
  "before.hint.other": "None of the lines above speaks of these, and each stops the money all the same.",
  "before.record": "The record says",
  "before.record.none": "The record has nothing against this line. That is not a check of it.",
  "before.record.not-on": "The record does not speak of this.",
  "before.halt": "Stops the money",
  "before.ends": "How it could end: {words}",
  "before.say": "Your word",
  "before.say.none": "not answered",
  "before.say.done": "done",
  "before.say.not-due": "not due",
  "before.words": "In your own words: what you saw or were told, and why it is enough",
  "before.by": "By whom",
  "before.on": "When",
  "before.payee.name": "Who receives it, by name (no account numbers here)",
  "before.payee.from": "The number that was called",
  "before.payee.from.none": "nobody has called",
  "before.payee.from.known-before": "one I knew before",
  "before.payee.from.looked-up": "one I found for myself",
  "before.payee.from.same-mail": "one in the mail with the bank details",
  "before.field.of": "{line}: {field}",
  "before.closed.done": "Done, in your word",
  "before.closed.not-due": "Not due, in your word",
  "before.open": "Open: {why}",
  "before.open.not-answered": "not answered",
  "before.open.no-words": "say it in your own words, ten letters at least",
  "before.open.same-words":
    "these words stand at another line already; say what you know of this one by itself",
  "before.open.nobody": "say by whom",
  "before.open.no-day": "say when",
  "before.open.day-to-come": "that day is still to come",
  "before.open.halt-not-done": "what stops the money here ends only when it is done, in your own words",
  "before.open.new-halt": "the record has something here you had not read when you answered; answer it anew",
  "before.open.always-due": "this cannot be left out as not due",
  "before.open.no-payee": "say who receives the money",
  "before.open.no-call": "nobody has called to verify it",
  "before.open.number-of-the-mail":
    "a call to the number in the same mail verifies nothing; call one you knew before or found for yourself",
  "before.save": "Save the list",
  "before.saved": "The list is saved as version {revision}",
  "before.saved.what": "Above it says what still stands open. Earlier versions are kept.",
  "before.wrong": "Not saved: say “done” or “not due” where you have written something.",
  "before.wrong.say": "Done, or not due?",
} as const;
