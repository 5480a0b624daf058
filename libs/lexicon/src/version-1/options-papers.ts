import { of } from "./option-words.ts";
import type { OptionWords } from "./option-words.ts";

/** Identity, papers and the visit: what each option is called when it is spoken of, beside the sheet's own words. No source: the trade's own words. */
export const papersOptions: readonly OptionWords[] = [
  ...of("identity.originality", {
    "original-to-car":
      "matching number; numbers matching; original to the car; original; original engine; number match; numbers match; one it left with; one it left the works with; it was born with; born with; the one it came with; first engine; matches the logbook; same one it was born with; original unit; it came with from new; came with it from new; number in the logbook; one in the logbook; one in the log book; one on the logbook; same as the logbook; agree with the logbook; match the logbook; matches the log book; matches the title; on the logbook; same number as the logbook; one the factory fitted; one the factory put in; one the works fitted",
    "right-type-and-date":
      "date correct; date code correct; right type and date; correct date code; right year; right size and the right year; right year and size",
    "right-type":
      "right type; right size; correct size; correct replacement; right replacement; correct unit; correct engine; correct type; period correct; from the right type; correct for the year; same type; correct style",
    "other-type":
      "other type; another type; wrong type; different type; crate motor; crate; swapped in; been swapped; later one; later; later unit; newer; later five speed; later four speed; later three speed; later replacement; swapped; later replacement of another type; not the one it was born with; not the one it came with; not the one it left with; not the one the factory fitted; not the correct type; not correct; bigger truck; crate engine; out of a bigger; out of a different; not original; not the original; replacement of another type; newer one",
  }),
  ...of("identity.title-holder", {
    "seller-in-hand":
      "in my name; wife/husband/father/mother/his/her s name and mine; his/her name and mine; wife/husband s name and my name; hold a clear title; hold the title; hold a title; hold clear title; name and mine; name and my name; both our name; in the seller name; in the owner name; in my drawer; in the drawer; in my hand; in my wife and my name; have it here; we have it; have it in the office; in the office; got it here; it is here; here at the store; here in the office; title here; in the file; in our possession; in hand; in seller s name; in the seller s name; seller s name; in the dealer s name; in dealer s name; in the dealership s name; in the consignor s name; in the consigner s name; in the company s name; in the store s name; in the shop s name; in owner s name; in the owner s name; in seller name; in our name; my name; seller s name in hand; in hand seller s name; in my name in hand; title in hand; have the title; i have it here; got the title; title in my name; i have title; our name; on my name; to my name; under my name; in my desk; in my drawer; in the drawer; in my safe; in the safe; desk drawer",
    "seller-not-in-hand":
      "in my name but; waiting on the title; title is coming; title on the way; bank holds the title; title is in the mail; not in hand",
    "other-name":
      "estate s name; in the previous owner s name; another name; open title; not in my name; somebody else s name; still in the; in his name; previous owner s name; in the name of; jumped title; in her name; wife s name; father s name; dad s name; mother s name; husband s name; brother s name; late father s name; late husband s name; in the estate s name; still in the estate s name; in the estate s; in the estate still; boss s name; boss has the title; my late wife s; my wife s; my husband s; my late husband s; my father s; my dad s; my mother s; my mum s; my brother s; my son s",
    "no-title":
      "no title; bill of sale only; there is no title; does not have a title; without a title; no papers; lost the title; title is lost; no v5; no log book; no logbook; no paperwork; no registration document",
  }),
  ...of(
    "identity.title-holder",
    {
      "seller-in-hand":
        "in the seller s name; in my name; in our name; in seller s name; in the dealer s name; on my name; registered to me; registered in my name; registered on my name; titled to me; titled in my name",
    },
    true,
  ),
  ...of("identity.title-brand", {
    clean:
      "clean title; clean; clear; nothing on it; no brand; title is clean; title s clean; not branded; unbranded; clean clear title; clear title",
    rebuilt: "rebuilt title; reconstructed title; rebuilt; reconstructed",
    salvage: "salvage title; salvage; write off; category",
    flood: "flood title",
    odometer: "odometer brand",
  }),
  ...of("identity.title-kind", {
    original: "original title",
    duplicate: "duplicate title; duplicate",
    electronic: "electronic title; held electronically",
    bonded: "bonded title; bonded",
    "bill-of-sale": "bill of sale only",
  }),
  ...of("identity.lien", {
    none: "no lien; none; no lien on it; lien free; no finance; no money owed; nothing owed; no outstanding finance; free of lien; no loan; no finance on it; finance free; clear of finance; nothing owing; nothing owing on it; owned outright; own it outright; free and clear; no loans against it; no credit on the car; no credit; no credit on it; no debt; no debt on it; free of debt",
    released:
      "released; lien released; paid off; released it; been released; lien has been paid; got the release; satisfied; been settled; settled",
    "release-promised":
      "will be released; will be paid off; be paid off at closing; get paid off; release is coming; release promised; to be paid off",
    open: "has a lien; still a lien; bank still; money owed; open; still owe; lien on it; open lien; owing on it; owing; outstanding",
  }),
  ...of(
    "identity.lien",
    {
      none: "no debt on it; no credit on it; no finance on it; no loan on it; free and clear; owned outright; own it outright; nothing owed on it; nothing owing on it; no money owing; no money owed",
    },
    true,
  ),
  ...of("identity.import-papers", {
    "never-imported": "never imported; home market; sold new here; domestic car",
    complete:
      "paper complete; complete; all paper; import paper complete; imported with papers; papers in order; all in order; fully imported; papers are there; all there; in the file; all present; in the folder; all with it",
    incomplete: "incomplete; papers missing; missing paper; papers incomplete",
  }),
  ...of("identity.odometer-disclosure", {
    actual: "disclosed as actual",
    exempt: "exempt; as exempt; sold exempt; mileage exempt",
    "exceeds-limits": "exceeds mechanical limits",
    "not-actual": "not actual on the title",
  }),
  ...of("identity.keys", {
    "full-set-and-spare":
      "full set and a spare; full set plus a spare; two set of key; two sets; full set plus spare; set and a spare; both sets; two full sets; spare key; key and a spare; full set of key and a spare; set of key and a spare; key plus a spare; key and spare; all keys and spares",
    "full-set":
      "one set; full set; one full set; all the keys; one set of keys; both keys; two keys; two key; original keys; all its keys",
    incomplete:
      "one missing; missing; missing key; key missing; one key is missing; no trunk key; one key only; lost; come with one key; has one key; with one key; only one key; just one key; just the one key; single key; only the one; only have one key; no spare key",
  }),
  ...of("identity.claimed-model", {
    clone: "clone; tribute; replica; recreation",
    "tags-show-it": "tags show it; documented by the tags; tag says so",
  }),
  ...of("identity.theft", {
    clear: "clear; checked clear; never stolen; no theft",
    recovered: "recovered; recovered theft; theft recovery",
    reported: "reported stolen",
  }),
  ...of(
    "identity.owners",
    {
      complete:
        "one owner from new; one owner car; one owner since new; single owner from new; single owner car; same family from new; same family since new; same owner from new",
    },
    true,
  ),
  ...of("identity.owners", {
    complete:
      "complete; fully documented; all owners known; known from new; one owner from new; unbroken; full; known; from new; back to new; all the way back",
    told: "told; partly documented",
    gaps: "gap; gaps; unknown",
  }),
  ...of(
    "identity.registration",
    {
      current: "currently registered; tags are current; plates are current",
      lapsed: "not registered; off the road declared",
    },
    true,
  ),
  ...of("identity.registration", {
    current:
      "current; up to date; valid; registered; currently registered; good until; good through; good till",
    lapsed: "lapsed; expired; out of date; ran out",
    none: "never registered",
  }),
  ...of(
    "identity.stood",
    {
      "in-use":
        "in regular use; drive it every; driven regularly; use it every; regular driver; driven weekly; daily driver; drive it all the time",
      "a-season": "sat for the winter; stood over winter; stored for the winter",
      "a-year-or-more":
        "sat for a year; sat for two years; stood for a year; sat a couple of years; stood for three years",
      "five-years-or-more":
        "barn find; sat for ten years; sat for years; stood for years; sat for twenty years; sat for decades; stood for ten years",
    },
    true,
  ),
  ...of(
    "identity.miles-claim",
    {
      actual:
        "actual mile; actual; genuine; original mile; true mile; real mile; original kilometer; actual mileage; genuine mile; original; genuine mile; documented mile; documented; is the truth; the truth; actual original miles; all true; true; is real; real; are correct; is correct; s real; that is the real; those are real; all real",
      believed:
        "believed actual; believe that is right; believe that s right; believe it; believe that; believe it is right; think that is right; believe it is genuine; believed genuine; believe they are genuine; should be right; believe it is actual; believe that is actual; believed to be actual; think that is actual; believe those are actual; we believe that is right; believe it to be actual; believes to be genuine; believe that is correct; believe that s correct; believe it is correct; believes to be correct; believe to be genuine; believes it to be genuine; believes genuine; thought to be genuine; thought to be correct; believe to be correct; understood to be genuine; believed to be correct; believed to be genuine; believed to be actual; believed to be original; believed to be true; believed genuine mileage",
      unknown:
        "true mileage unknown; could not tell you the real mile; could not tell you the mile; can not promise that s right; can not promise that is right; can not promise; can not guarantee the mile; can not guarantee; no guarantee; can not swear to it; do not know if that is true; do not know if it is true; who know; five digit so who know; could not tell you if; can not tell you if; can not tell if; your guess is as good as mine; can not be verified; not verified; no proof of that; can not prove; can not prove it; not able to prove; unable to prove; no way to prove it; could not prove; nothing to prove; could be round once; might be round once; not guaranteed; no way of knowing; mileage unknown; tmu; true mile unknown; not actual; unknown mileage; no idea if that is right; can not vouch for the mileage; cannot vouch; not the true figure; mileage is unknown; do not know if that is right; can not say if that is right; miles unknown; no way of proving; no way of proving it; no way to prove; can not be sure of; do not know if that is been around; do not know if it has been around; around once or twice; once or twice; anyone s guess; anybody s guess; can not verify; could not verify; not genuine; may have been round; may have been round the clock; been around the clock; exempt mile; no way to know; do not know the true miles; nobody know; no one know; nobody knows; no one knows",
    },
    false,
  ),
  ...of(
    "identity.restoration-claim",
    {
      unrestored:
        "never restored; never been restored; unrestored; survivor; all original never restored; not restored",
      "in-part": "restored in part; partly restored; partial restoration; partially restored",
      "complete-with-bills":
        "restored with bills; restored with receipts; restoration with receipts; fully restored with all the receipts",
      complete:
        "fully restored; full restoration; nut and bolt restoration; frame off restoration; body off restoration; rotisserie restoration; complete restoration; ground up restoration; restored; car was restored; car has been restored; was restored in; was restored between; restored in; restored between; was restored by; been fully restored; restoration was completed; it was restored; it s been restored",
    },
    true,
  ),
  ...of(
    "visit.light",
    {
      daylight: "recorded in daylight; in daylight; filmed in daylight",
      overcast: "overcast",
      "indoor-bright": "indoors under bright lights; bright lamps indoors",
      "indoor-dim": "dim light indoors",
      dusk: "getting dark; at dusk",
    },
    true,
  ),
  ...of(
    "visit.body-surface",
    {
      dry: "car dry; car is dry; with the car dry",
      wet: "car is wet; car wet",
      dirty: "car is dirty; car dirty",
      covered: "car is covered",
    },
    true,
  ),
  ...of("identity.pad", {
    "as-stamped": "as the maker stamped it; original stamp; factory stamp",
    uneven: "uneven; restamped; re stamped",
  }),
  ...of("identity.stamping-surface", {
    machined: "machined; broach mark",
    ground: "ground; sanded; decked",
    coated: "coated; painted over",
  }),
  ...of("identity.plate-fixing", {
    "as-built": "original rivet; factory rivet; as built",
    "other-fixing": "screw; other rivet; pop rivet; wrong rivet",
    "plate-missing": "missing",
    "right-type-disturbed": "disturbed",
  }),
];
