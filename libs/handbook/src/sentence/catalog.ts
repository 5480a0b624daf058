import type { ReasonOf, RuleId } from "../rules/index.ts";

/**
 * A sentence for every reason of every rule. `{name}` stands for a figure, a range, a word, or the alternatives
 * (`{or:alternatives}` where one of them holds); `{limit:id}` for the figure of a limit that was used. A part in
 * square brackets is left out where what it speaks of is not there.
 */
export type Catalog = { readonly [Id in RuleId]: Readonly<Record<ReasonOf<Id>, string>> };

/** The ways to a ratio differ only in what they found. */
const ratioCatalog = (found: string) => ({
  "claimed-ratio": `{claimed} is the ratio nearest to what was found: ${found}.`,
  "other-ratio": `{claimed} is claimed; what was found is ${found}[: of the maker's, {or:alternatives}].`,
  "cannot-separate": `${found} does not tell the claimed {claimed} from its neighbors[: it allows {or:alternatives}].`,
  "no-claim": `Found: ${found}[: of the maker's, {or:alternatives}]. No ratio is claimed.`,
});

export const catalog: Catalog = {
  "vin-form": {
    passes: "{vin} has the form of a VIN, and its check digit {carried} is right.",
    length: "{vin} has {length} characters where a VIN has 17.",
    characters: "{vin} holds characters no VIN has: {wrong}.",
    "check-digit":
      "{vin} carries {carried} in position 9 where the other characters ask for {expected} (sum {weightedSum}): misread, or wrong on the plate itself.",
    "before-1981": "{vin} is from before 1981: the check digit was not yet required.",
    "year-unknown":
      "{vin} has {length} characters; without the model year it cannot be said whether it ought to have 17.",
    "other-market": "{vin} was not made for North America, where the check digit is required.",
    "market-unknown":
      "{vin}: the market the car was built for is not known, so a check digit need not be there.",
  },
  "vin-year": {
    "same-year": "Position 10 of {vin} is {character}: model year {or:alternatives}, as claimed.",
    "other-year":
      "Position 10 of {vin} is {character}: model year {or:alternatives}, not the claimed {claimed}.",
    "year-character": "Position 10 of {vin} is {character}, which stands for no model year.",
    "before-1981": "{vin} is from before 1981 and carries no year by this rule.",
    "other-market": "{vin} was not made for North America, where position 10 is the model year.",
    "market-unknown": "{vin}: the market is not known, so position 10 need not be the model year.",
    "not-seventeen": "{vin} does not have 17 characters and tells no year by this rule.",
    "either-cycle":
      "Position 10 of {vin} is {character}: model year {or:alternatives}; {claimed} is one of them.",
  },
  "vin-reading": {
    same: "Both readings are {first}.",
    "first-misread":
      "The check digit of {right} passes and that of {wrong} does not: the first reading was misread. Look again.",
    "second-misread":
      "The check digit of {right} passes and that of {wrong} does not: the second reading was misread. Look again.",
    "both-pass": "{first} and {second} both pass the check digit; it cannot say which was misread.",
    "neither-passes": "Neither {first} nor {second} passes the check digit.",
    "not-a-misreading": "{first} and {second} are too far apart for one slip of the eye.",
    "outside-the-rule": "{first} and {second}: no check digit is required here that could decide.",
  },
  "same-number": {
    "all-equal": "{number} stands in all {places} places.",
    differ: "The numbers differ: {alternatives}.",
    "probably-misread": "Probably misread: {alternatives}.",
    "too-few": "The number was read in {places} of the places; two are needed.",
  },
  "chassis-pattern": {
    matches: "{number} has the maker's form {pattern}.",
    "does-not-match": "{number} leaves the maker's form {pattern} at place {place}.",
    "no-pattern": "No maker's form is entered for {number}.",
  },
  "partial-vin": {
    equal: "The stamp {stamp} is the one that {number} leads to.",
    differs: "The stamp is {stamp}; {number} leads to {expected}.",
    "probably-misread": "The stamp {stamp} is one slip of the eye from {expected}, to which {number} leads.",
    "never-stamped": "The maker stamped no partial VIN here; that says nothing against the car.",
    "not-read": "The stamp was not read, so it cannot be set against {number}.",
    "no-pattern": "The stamp is {stamp}; how the maker derived it from {number} is not entered.",
    "number-too-short": "{number} is too short for the way the maker derived stamps.",
  },
  "date-order": {
    "in-order": "The dates are in order: {dates}.",
    "out-of-order": "The dates cannot be in order: {dates}.",
    "some-readings": "The dates are in order only as: {or:alternatives}.",
    "too-few": "Fewer than two of the dates are known.",
  },
  "date-correct": {
    usual:
      "Dated {part}, {days} days before the build ({built}): as is usual. That does not show the part is original to this car.",
    plausible:
      "Dated {part}, {days} days before the build ({built}): plausible. That does not show the part is original to this car.",
    "low-volume":
      "Dated {part}, {days} days before the build ({built}): plausible for a part made in small numbers. That does not show it is original to this car.",
    "after-build": "Dated {part}, after the build ({built}): not on the car from new.",
    "too-early": "Dated {part}, {days} days before the build ({built}): too early to be right.",
    "fits-nowhere": "Dated {part}: in no reading does that fit the build ({built}).",
    "low-volume-only":
      "Dated {part}, {days} days before the build ({built}): right only for a part made in small numbers.",
    "some-readings":
      "Dated {part}, built {built}: {or:alternatives} the build; some of that fits and some does not.",
    "too-few": "The part's date or the build date is not known.",
  },
  "decade-less": {
    "one-left": "{code} can only mean {or:alternatives}.",
    "none-left": "{code} can mean {all}, and other facts rule out each.",
    "claim-not-among": "{code} can mean {or:alternatives}, not the claimed {claimed}.",
    "several-left": "{code} can mean {or:alternatives}; nothing yet says which.",
  },
  "claims-against-dates": {
    "no-contradiction": "“{claim}” is not contradicted by the dates ({dates}; against {reference}).",
    "new-but-old": "Called new on {reference}, but dated {dates}.",
    "older-than-claimed": "Called no older than {years} years on {reference}, but dated {dates}.",
    "original-but-later": "Called original, but dated {dates}, after the car was built ({reference}).",
    "untouched-but-later": "Called untouched, but dated {dates}, after the car was built ({reference}).",
    "fitted-before-made": "Said to be fitted with the bill of {reference}, but dated {dates}.",
    "pictured-before-made": "Said to be in the photograph of {reference}, but dated {dates}.",
    "some-readings":
      "Whether “{claim}” fits depends on which of its dates is meant: {dates}; against {reference}.",
    "too-few": "No date is known to set against the claim “{claim}”.",
  },
  "tire-age": {
    young: "Made {made}: {age} years old at the visit.",
    "caution-age":
      "Made {made}: {age} years old at the visit; caution from {limit:tire-age.caution-years} years.",
    "replace-age":
      "Made {made}: {age} years old at the visit; replace at {limit:tire-age.replace-years} years.",
    "not-a-date": "{number} does not end in a week and a year.",
    "after-the-visit": "{number} ends in a week after the visit: misread.",
    "some-readings": "Made {made}: {age} years old at the visit, so the age stays undecided.",
  },
  "tires-mixed": {
    matched:
      "Each axle has one size and construction. Front: {leftFront} and {rightFront}; rear: {leftRear} and {rightRear}.",
    "radial-front-bias-rear":
      "Radial tires stand in front of bias tires: the rear lets go first. Front: {leftFront} and {rightFront}; rear: {leftRear} and {rightRear}.",
    "constructions-differ":
      "An axle mixes constructions. Front: {leftFront} and {rightFront}; rear: {leftRear} and {rightRear}.",
    "sizes-differ":
      "An axle mixes sizes. Front: {leftFront} and {rightFront}; rear: {leftRear} and {rightRear}.",
    "equivalent-sizes":
      "An axle has two sizes that tables call equivalent, which is advice only. Front: {leftFront} and {rightFront}; rear: {leftRear} and {rightRear}.",
    "size-unreadable":
      "A size could not be read. Front: {leftFront} and {rightFront}; rear: {leftRear} and {rightRear}.",
    "not-all-known":
      "Not every tire is known. Front: {leftFront} and {rightFront}; rear: {leftRear} and {rightRear}.",
  },
  "tire-diameter": {
    "rollout-fits": "{size} rolls {circumference} in a turn by its size, {rollout} as measured: they fit.",
    "rollout-differs": "{size} rolls {circumference} in a turn by its size, but {rollout} as measured.",
    "equal-in-diameter": "{size} ({diameter}) and {other} ({otherDiameter}) have much the same diameter.",
    "other-diameter":
      "{size} is {diameter} over all, {other} {otherDiameter}: a different diameter, which is no fault in itself.",
    "range-covers":
      "{size} is {diameter} over all by its size; what it was set against is neither clearly the same nor clearly another.",
    "size-unreadable": "{size} could not be read as a tire size.",
    "nothing-to-set-against": "{size} is {diameter} over all by its size.",
  },
  speedometer: {
    within: "Indicated {indicated} at a true {satellite}: {error} off.",
    "reads-high":
      "Indicated {indicated} at a true {satellite}: it reads {error} high[; a tire of {explainingDiameter} over all would explain it].",
    "reads-low":
      "Indicated {indicated} at a true {satellite}: it is off by {error}, low[; a tire of {explainingDiameter} over all would explain it].",
    "range-covers": "Indicated {indicated} at a true {satellite}: {error} off, which may or may not matter.",
    "too-slow": "Indicated {indicated} at a true {satellite}: too slow to judge the speedometer.",
  },
  "road-ratio": {
    ...ratioCatalog("{ratio} from {engineSpeed} at {roadSpeed}"),
    "gear-unknown": "{engineSpeed} at {roadSpeed}: the gear engaged is not noted, so no ratio follows.",
    "too-slow": "{engineSpeed} at {roadSpeed}: too slow to work out a ratio.",
  },
  "turns-ratio": ratioCatalog("{ratio} by turning the wheels"),
  teeth: {
    "claimed-ratio": "{ring} over {pinion} teeth is {ratio}, the claimed {claimed}.",
    "other-ratio": "{ring} over {pinion} teeth is {ratio}, not the claimed {claimed}.",
    "not-the-makers": "{ring} over {pinion} teeth is {ratio}, which the maker did not offer.",
    "no-claim": "{ring} over {pinion} teeth is {ratio}. No ratio is claimed.",
  },
  "ratio-combined": {
    ...ratioCatalog("{ratio} from all ways together ({ways})"),
    "ways-disagree":
      "The ways contradict each other ({ways}): a reading is wrong, or the axle is not what its tag says.",
    "too-few": "Fewer than two ways to the ratio were taken.",
  },
  displacement: {
    "as-claimed":
      "Bore {bore}, stroke {stroke} and {cylinders} cylinders make {displacement}, the claimed {claimed}.",
    "not-as-claimed":
      "Bore {bore}, stroke {stroke} and {cylinders} cylinders make {displacement}, not the claimed {claimed}.",
    "range-covers":
      "Bore {bore}, stroke {stroke} and {cylinders} cylinders make {displacement}: neither clearly the claimed {claimed} nor clearly another.",
    "no-claim": "Bore {bore}, stroke {stroke} and {cylinders} cylinders make {displacement}.",
  },
  compression: {
    even: "Lowest {lowest} (cylinder {lowestCylinder}), highest {highest} (cylinder {highestCylinder}): {share} of it, and {limit:compression.lowest-share} is enough.",
    uneven:
      "Lowest {lowest} (cylinder {lowestCylinder}) is {share} of the highest {highest} (cylinder {highestCylinder}); {limit:compression.lowest-share} is the least. The median is {median}.",
    "neighbors-low":
      "Cylinders {neighbors} are low together (lowest {lowest}, median {median}): ask about the head gasket between them.",
    "under-least": "Lowest {lowest} (cylinder {lowestCylinder}) is under the maker's least of {least}.",
    "range-covers":
      "Lowest {lowest} (cylinder {lowestCylinder}) is {share} of the highest {highest}: too near the limit to tell.",
    "too-few": "Compression of fewer than two cylinders is known.",
  },
  "leak-down": {
    good: "Worst cylinder {worstCylinder} leaks {worst}: good. The median is {median}.",
    worn: "Worst cylinder {worstCylinder} leaks {worst}: worn, not poor. The median is {median}; air escapes by: {escape}.",
    "good-or-worn":
      "Worst cylinder {worstCylinder} leaks {worst}: good or worn, not poor. The median is {median}.",
    poor: "Worst cylinder {worstCylinder} leaks {worst}: poor. The median is {median}; air escapes by: {escape}.",
    "range-covers": "Worst cylinder {worstCylinder} leaks {worst}: worn or poor. Air escapes by: {escape}.",
    "other-pressure":
      "Worst cylinder {worstCylinder} leaks {worst}, the median is {median}; the bands are for {limit:leak-down.pressure}, and the test was not at it.",
    "too-few": "No cylinder's leak-down is known.",
  },
  "cylinder-story": {
    "one-story": "Compression, leak-down and coolant tell one story.",
    "gasket-between":
      "Cylinders {cylinders} are low together and leak into each other: the head gasket between them.",
    "low-but-tight":
      "Low in compression but tight in leak-down, cylinder {cylinders}: look at valve timing, the cam, or the gauge.",
    "leaks-but-not-low":
      "Leaks but is not low in compression, cylinder {cylinders}: one of the two tests wants repeating.",
    "escape-without-gas":
      "Air went into the coolant from cylinder {cylinders}, yet no combustion gas was found in it.",
    "gas-without-escape": "Combustion gas was found in the coolant, yet no cylinder let air into it.",
    "not-clear": "Cylinder {cylinders} is too near a limit to say.",
    "too-few": "Fewer than two of the tests speak of the same cylinders.",
  },
  vacuum: {
    "in-band": "{vacuum}, {corrected} at sea level, needle steady: as a stock engine has it.",
    low: "{vacuum}, {corrected} at sea level, with timing right: low.",
    "needle-drops": "{vacuum} with a needle that drops in step: ask about a valve.",
    "needle-drifts": "{vacuum} with a needle that drifts: ask about mixture or a leak of air.",
    "needle-flutters": "{vacuum} with a needle that flutters: ask about guides, springs or ignition.",
    "range-covers": "{vacuum}, {corrected} at sea level: too near the band's edge to tell.",
    "late-timing":
      "{vacuum}, {corrected} at sea level: low, but timing is late, which explains it before wear does.",
    "timing-unknown":
      "{vacuum}, {corrected} at sea level: low, but timing is not known, and late timing would explain it.",
    "cam-unknown":
      "{vacuum}, {corrected} at sea level: whether the cam is stock is not known, and the band is for a stock cam.",
    "cam-not-stock": "{vacuum}: the cam is not stock, so the band says nothing.",
    "height-unknown": "{vacuum}: the height above the sea is not noted.",
    high: "{vacuum}, {corrected} at sea level: above the usual band.",
  },
  "oil-pressure": {
    enough: "{pressure} hot at {engineSpeed}; {least} is the least.",
    low: "{pressure} hot at {engineSpeed}; {least} would be usual. The maker's figure decides.",
    "under-makers": "{pressure} hot at {engineSpeed}, under the maker's {least}.",
    "range-covers": "{pressure} hot at {engineSpeed}: too near {least} to tell.",
    "not-hot": "{pressure} at {engineSpeed}, but the oil was at {oilTemperature}: not hot.",
    "temperature-unknown": "{pressure} at {engineSpeed}: the oil's temperature is not noted.",
  },
  charging: {
    charges: "{volts} at {engineSpeed}: it charges.",
    "too-low": "{volts} at {engineSpeed}: it does not charge as it should.",
    "too-high": "{volts} at {engineSpeed}: it overcharges.",
    "range-covers": "{volts} at {engineSpeed}: too near the band's edge to tell.",
    "generator-at-idle": "{volts} at {engineSpeed}: a generator is not judged at idle.",
    "other-speed": "{volts} at {engineSpeed}: not the speed charging is judged at.",
    "speed-unknown": "{volts}: the engine speed is not noted.",
  },
  cranking: {
    enough: "{volts} while cranking: enough.",
    "too-low": "{volts} while cranking: too low. Battery, cables or starter.",
    "range-covers": "{volts} while cranking: too near the limit to tell.",
  },
  "paint-map": {
    "even-over-car":
      "The {panels} panels lie about {median}; none stands out. That does not show the paint is original.",
    "panels-stand-out": "The car's median is {median}; standing out: {alternatives}.",
    "filler-likely": "The car's median is {median}; so thick that filler is likely: {alternatives}.",
    "range-covers": "The car's median is {median}; some panels are too near the edge to tell.",
    "too-few": "{panels} panels were measured; too few for a map.",
  },
  "original-paint": {
    "no-contradiction":
      "Within a factory finish (thickest {thickestPanel}, {thickest}). That does not show the paint is original.",
    refinished: "Called original paint, but thicker than a factory finish: {alternatives}.",
    "range-covers": "Thickest {thickestPanel}, {thickest}: too near the edge of a factory finish to tell.",
    thin: "Thinner than a factory finish, polished or misread: {alternatives}.",
    "too-few": "No panel's paint was measured.",
  },
  "first-color": {
    equal: "The tag's {tag} is what unpainted spots show.",
    differs: "The tag says {tag}; found instead: {alternatives}.",
    "too-few": "The tag or the unpainted spots were not read.",
  },
  "panel-color": {
    "not-noticed": "{panels} are farthest apart in color, by {deltaE}: not noticed.",
    noticeable: "Noticeably apart in color: {alternatives}.",
    "range-covers": "{panels} are apart in color by {deltaE}: too near what is noticed to tell.",
    "metallic-one-angle": "{panels} are apart by {deltaE}, but metallic paint from one angle cannot be told.",
    "too-few": "No two neighboring panels were measured.",
  },
  "gap-taper": {
    even: "The gaps are even; the most is {difference}, {gap}.",
    tapers: "Gaps out of true: {alternatives}. Hinges, hanging, or a repair.",
    "sides-differ": "Left and right differ: {alternatives}. Hanging, or a repair.",
    "range-covers": "The most is {difference}, {gap}: too near the limit to tell.",
    "too-few": "No gap was measured at both ends.",
  },
  square: {
    square: "Left and right lie within {limit:square.difference} of each other.",
    "wheelbase-differs":
      "The wheelbase differs by {wheelbase} from left to right: ask about collision repair, or whether it was made so.",
    "diagonals-differ": "The underbody diagonals differ by {diagonals}: ask about collision repair.",
    "range-covers": "Left and right are too near the limit of {limit:square.difference} to tell.",
    "too-few": "Neither wheelbase nor diagonals were measured on both sides.",
  },
  "in-use-tread": {
    meets: "{reading}: not under the in-use limit. Local inspection law decides.",
    "under-limit": "{reading}: under the in-use limit of {limit:in-use.tread}. Local inspection law decides.",
    "range-covers":
      "{reading}: as read it {plain}, but too near the in-use limit of {limit:in-use.tread} to be sure. Local inspection law decides.",
  },
  "in-use-lining": {
    meets: "{reading}: not under the in-use limit. Local inspection law decides.",
    "under-limit": "{reading}: under the in-use limit. Local inspection law decides.",
    "range-covers":
      "{reading}: as read it {plain}, but too near the in-use limit to be sure. Local inspection law decides.",
    "fixing-unknown":
      "{reading}: whether the lining is riveted or bonded is not known, so neither is what was measured.",
  },
  "in-use-free-play": {
    meets: "{reading} at the rim: within the in-use limit. Local inspection law decides.",
    "over-limit":
      "{reading} at the rim: over the in-use limit for a wheel of {wheelDiameter}. Local inspection law decides.",
    "range-covers":
      "{reading} at the rim: as read it {plain}, but too near the in-use limit to be sure. Local inspection law decides.",
    "between-rows":
      "{reading} at the rim: the table has no row for a wheel of {wheelDiameter}. Local inspection law decides.",
    "wheel-unknown":
      "{reading} at the rim: more than every wheel may have, and the wheel's diameter is not known.",
  },
  "in-use-toe": {
    meets: "Toe {reading}: within {most}, 1.5 times the maker's {makers}. Local inspection law decides.",
    "over-limit": "Toe {reading}: over {most}, 1.5 times the maker's {makers}. Local inspection law decides.",
    "range-covers":
      "Toe {reading}: as read it {plain}, but too near {most} to be sure. Local inspection law decides.",
    "makers-value-unknown": "Toe {reading}: the maker's value is not known, or allows no multiple.",
  },
  "in-use-runout": {
    meets: "Runout {reading}: within the in-use limit. Local inspection law decides.",
    "over-limit": "Runout {reading}: over the in-use limit. Local inspection law decides.",
    "range-covers":
      "Runout {reading}: as read it {plain}, but too near the in-use limit to be sure. Local inspection law decides.",
  },
  odometer: {
    rises: "From {earlier} ({from}) to {later} ({to}): it rises.",
    falls: "From {earlier} ({from}) to {later} ({to}): it falls.",
    "rises-too-much":
      "From {earlier} ({from}) to {later} ({to}): {rise}, more than the {allowed} it may have been driven.",
    "rolled-over-or-back":
      "From {earlier} ({from}) to {later} ({to}): with five digits it may have rolled over; the miles may be {or:alternatives}.",
    "range-covers": "From {earlier} ({from}) to {later} ({to}): too near to tell.",
    "too-few": "Fewer than two readings with a date.",
  },
  "odometer-disclosure": {
    "exempt-by-age":
      "Model year {modelYear}: exempt from odometer disclosure since {exemptFrom}. Exempt is not verified; state law may ask for more.",
    "exempt-by-kind":
      "Exempt from odometer disclosure by weight or kind. Exempt is not verified; state law may ask for more.",
    due: "Model year {modelYear}: an odometer disclosure is due on transfer until {exemptFrom}. A reminder; take advice locally.",
    "claimed-exempt-but-due":
      "Said to be exempt from odometer disclosure, but model year {modelYear} is only from {exemptFrom}. A reminder; take advice locally.",
    "too-few": "Model year or year of transfer is not known.",
  },
  "wear-miles": {
    "fits-miles": "Wear of {parts} fits {miles}.",
    "more-wear-than-miles": "Heavy wear of {parts} at {miles}: ask whether the reading is the whole of it.",
    "range-covers": "Wear of {parts} at {miles}: too near to tell.",
    retrimmed: "Every part that shows wear was retrimmed.",
    "too-few": "Wear or the odometer was not read.",
  },
};
