/** What a word of condition says: a fault kind, a house grade, whether a thing works or is there, or in general good, bad or new. */
export type Sense =
  | { readonly fault: string; readonly deniesAlso?: readonly string[] }
  | { readonly grade: string }
  | { readonly working: "yes" | "no" | "intermittent" }
  | { readonly presence: "present" | "absent" }
  | { readonly general: "good" | "bad" | "new" | "none" | "not-fitted" | "old" }
  | { readonly unseen: string };

export type Condition = { readonly senses: readonly Sense[]; readonly words: readonly string[] };

const condition = (words: string, ...senses: readonly Sense[]): Condition => ({
  senses,
  words: words.split(";").map((one) => one.trim()),
});
const RUST = ["perforation"];
const grade = (value: string, ...more: readonly Sense[]): readonly Sense[] => [{ grade: value }, ...more];
const GOOD: Sense = { general: "good" };
const BAD: Sense = { general: "bad" };

/** Words of condition and what they say. No source: the trade's own words; grades by our own order of words. */
export const conditions: readonly Condition[] = [
  condition(
    "dent; dented; dinted; dint; dinged in; caved in; stoved in; crease dent; creased; crease; pushed in; bashed; bash; knocked in; small bump; little bump; has a bump; got a bump; bumped; big dink",
    {
      fault: "dent",
      deniesAlso: ["ding"],
    },
  ),
  condition("ding; dink; dinked; parking dent; dinged; door ding; dimple; hail; hail damage; hail dent", {
    fault: "ding",
  }),
  condition(
    "scratch; light scratch; scratched; scratching; swirl; swirl mark; key mark; keyed; gouge; gouged; grazed; rubbed; scrape; scraped; scuff; scuffed; scraped up; scratched up; curb rash; kerb rash; curbed; curb damage; kerb damage",
    {
      fault: "scratch",
    },
  ),
  condition(
    "chip; stone chip; chipped; chipping; stone chipped; nick; nicked; rock chip; star in it; has a star; star break; star chip; bullseye; star on the; star in the; small star; little star; star right; tiny star",
    {
      fault: "chip",
    },
  ),
  condition(
    "crack; cracked; cracking; snapped; hairline crack; split in the glass",
    { fault: "crack" },
    { grade: "heavy-wear" },
  ),
  condition("crazing; checking; micro blistering; crazed", { fault: "crazing" }),
  condition(
    "bubble; rust bubble; rust blister; bubble of rust; bubbling; blister; blistering; blistered; rust blistering; bubbled; bubbly",
    { fault: "blister" },
  ),
  condition(
    "rust; rusty; corrosion; corroded; surface rust; light surface rust; light rust; light corrosion; scale; rusted; surface corrosion; tin worm; rust spot; rust starting; starting to rust; starting to go; rusting; corroding; corrode; rust coming; rust coming through; rust on it; rust staining; crusty; rust scab; scabby",
    {
      fault: "corrosion",
      deniesAlso: RUST,
    },
  ),
  condition(
    "hole; rust hole; rust through; see the ground; can see the ground; see the road; see daylight through; rusted/rotted/rotten through; perforation; perforated; rot; rotten; rotting; rotted; pinhole; rotted out; rusted out; hole in it; put a screwdriver through it; rot through; eaten through; gone through; see daylight; daylight through it; finger through it; put my finger through it; poke a finger through it; push a finger through it; rusted away; rotted away; rotten away; see the road through it; swiss cheese; holed; is gone; are gone; s gone; all gone; completely gone; gone to dust; gone to nothing; rotted to nothing; gone altogether",
    { fault: "perforation" },
  ),
  condition("filler; bondo; body filler; stopper; plastic filler; mud; putty", { fault: "filler" }),
  condition("overspray", { fault: "overspray" }),
  condition("sink mark; sinkage", { fault: "sink-mark" }),
  condition("run in the paint; paint run; sag in the paint", { fault: "run-or-sag" }),
  condition(
    "fade; faded; fading; sun fade; chalky; oxidized; oxidation; sun bleached; yellow",
    { fault: "fading" },
    { grade: "heavy-wear" },
  ),
  condition("delamination; delaminated; delaminating; milky edge", { fault: "delamination" }),
  condition("pit; pitted; pitting", { fault: "pitting" }, { grade: "heavy-wear" }),
  condition("bent; bend; kinked; kink; buckled rim; twisted", { fault: "bend" }),
  condition("buckle; buckled; wrinkle; ripple", { fault: "buckle" }),
  condition(
    "patch; patched; welded patch; welded plate; plated; welded up; plate let in; plate welded in; plate welded on; let in; new metal let in; new metal welded in; repair section; been welded; has been welded; had welding; some welding; had some welding; welded before; had a plate; was welded; were welded; got welded; welded both side; welded on both side",
    { fault: "patch" },
    { presence: "present" },
  ),
  condition("cracked weld", { fault: "weld-crack" }),
  condition("crushed; crushed seam", { fault: "crushed-seam" }),
  condition(
    "tear; torn; rip; ripping; tearing; splitting; split open; seam has split; split along the seam; tore; tore up; torn up; ripped up; in rag; ripped; split; split seam; seam gone; seam has let go; coming apart at the seam; seam coming apart; seam has opened up; open seam; seam open; seam is open; hole worn in it",
    { fault: "tear" },
    { grade: "heavy-wear" },
  ),
  condition("stain; stained", { fault: "stain" }),
  condition(
    "burn; burn hole; burned; cigarette burn; burnt; cigarette hole; hole from a cigarette; hole from cigarette; hole of cigarette",
    { fault: "burn" },
  ),
  condition(
    "missing; missing piece; piece missing; not there; gone missing; lost",
    { fault: "missing-piece" },
    { presence: "absent" },
  ),
  condition("bulge; bulging", { fault: "bulge" }),
  condition("cut", { fault: "cut" }),
  condition("chafe; chafed; rubbed through; chafing", { fault: "chafe" }),
  condition("swollen; swelling; gone soft; soft", { fault: "swelling" }),
  condition(
    "hard; hardened; perished; brittle; hardening; perishing",
    { fault: "hardening" },
    { grade: "heavy-wear" },
  ),
  condition("blow hole; leaking joint; exhaust leak; leak; leaking; blow; blowing; blows at the joint", {
    fault: "blow-hole",
  }),
  condition(
    "like/as new; like brand new; near/nearly/almost/practically (brand) new; good as brand new; brand/as brand new; perfect; mint; immaculate; flawless; spotless; excellent; pristine; beautiful; superb; gorgeous; showroom; as good as new; nobody ever sat in it; never been sat in; like the day it left; time capsule; no wear; no sign of wear; fresh as the day; cannot fault it; can not fault it; out of the box; like the day it was built; like the day it was made; as the day it was built; looks unused; unused; like from factory; like from the factory; like a mirror; shine like new; like jewelry",
    ...grade("as-new", GOOD),
  ),
  condition(
    "new; brand new; newly done; replaced; renewed; rechromed; recovered; recored; redone; re chromed; freshly done; overhauled; changed; done last year; done this year; done recently; done two year back; done two year ago; done three year ago; done a year ago; braided; renewed throughout; fitted new; did last spring; did last year; did last summer; did last winter; i did those; i did last; we did last; i did myself; i replaced; we replaced; all done last year; were done last year; was done last year; done last spring; done last winter; done recently; recently done; recently replaced; recently renewed; done last summer; put in a new; put it/them/em on last year; put it/them/em on this year; fresh; had those done; had them done; had it done; had that done; made new; is made new",
    ...grade("as-new", { general: "new" }),
  ),
  condition(
    "light wear; lightly worn; in lovely order; in nice order; in very good order; very presentable; looks after itself; super nice; hardly used; barely used; very good (shape/order/condition); really good; real good; great (shape/condition); nice; lovely (condition); really/real/very nice; hardly worn; little wear; super clean; very clean; terrific; wonderful; minimal wear; some wear light wear; a little wear; tidy; presents well; present really well; present very well; presents really well; presents very well; presents nicely; holding up well; holds up well; held up well; held up wonderfully; held up beautifully; held up nicely; well kept; well cared for; clean as a whistle; crisp; little bit used; a little used; little used; bit used; slightly used; not much used",
    ...grade("light-wear", GOOD),
  ),
  condition(
    "good (shape/order/condition); fine; okay; ok; decent; decent shape; alright; all right; even wear; fair; presentable; pretty good; serviceable; usable; in order; no problem; acceptable; not bad; all good; average; reasonable; does the job; nothing special; honest wear; what you would expect; wear for its age; worn but usable",
    ...grade("even-wear", GOOD),
  ),
  condition(
    "worn; very/quite/much used; tired; poor; hanging; hanging down; hang down; drooping; droop; cloudy; clouded; fogged; gone yellow; yellowed; frayed; fraying; fray; sagged; scuffed up; dried out; well used; well worn; past it; grubby; rough; heavy wear; heavily worn; sagging; sag; scruffy; shabby; seen better days; wear thin; bad; poor condition; needs replacing; want replacing; want attention; want doing; want work; want some work; need doing; getting thin; wearing thin; wear through; wore through; going thin; has seen better days; had better days; getting old; ratty; tatty; beat up; beaten up; ragged; past its best; needs work; needs attention; needs help; needs love; could use some love; lumpy; sun beaten; threadbare; must be changed; must be replaced; should be changed; should be replaced; to be replaced; to be changed; have to be changed; must be renewed; must be exchanged; has to be replaced; has to be changed; wants changing; wants replacing",
    ...grade("heavy-wear", BAD),
  ),
  condition(
    "spent; shot; finished; worn out; wore out; worn through to the foam; down to the foam; worn through; had its day; has had it; have had it; s had it; beyond it; rotten with age; gone to pieces; ruined; trashed; toast; needs to be replaced; falling apart; in shreds; shredded; beyond saving; junk; knackered; no good anymore; is done for; are done for; s done for; scrap",
    ...grade("spent", BAD),
  ),
  condition("old; original and old; look old", { general: "old" }),
  condition(
    "solid; sound; healthy; hard as nail; solid as a rock; solid as the day; hard as rock; rust free; intact; rock solid; no fault; nothing wrong; spot on; bulletproof; strong",
    GOOD,
  ),
  condition("clean", GOOD, { grade: "light-wear" }),
  condition("straight; dead straight; straight as an arrow; straight as can be", GOOD),
  condition("tight; no play; no slop", GOOD),
  condition("all up; hangs tight; tight and clean; tight no sag; fits tight", GOOD, { grade: "light-wear" }),
  condition(
    "dry; bone dry; dry as a bone; does not leak; no leak; leak free; do not leak; not leaking",
    GOOD,
  ),
  condition(
    "work; working; functional; accurate; right on with; dead on; agrees with; shut properly; close properly; shut nicely; close fine; shut fine; open and shut; close right; shut right; latch; latches; click in; clicks in; clicks shut; went up and down; comes on and off; stay up; stays up; stay open; stays open; hold it up; holds it up; holds itself up; hold themselves up; stays up by itself; does the job; does its job; works perfectly; go on and off; sweep; both sweep; sweeps; came on; lit up; go out when it starts; goes out when it starts; function; functioning; operate; operational; run; blow cold; blow hot; blow ice cold; nice and hot; gets hot; plenty of heat; red hot; plenty of heat out of it; hold; play; read; goes up and down; open and close; close good; closes well; shut nicely; still plays; keep time; cold ac; roll up and down; go up and down; up and down; wind up and down; up and down like it should; light up; lights up; come on; comes on; held; like they should; as they should; the way it should; the way they should; close; shut; squirt; spray; slide; recline; adjust; wind; crank; tilt; flash; blink; beep; honk; spin; register; respond; engage; retract; extend; cancel; budge; open; turn; unlock; lock; self cancel; open and close; lock and unlock; they go; it goes; still goes; pick up station; picks up stations; get hot; gets hot; warm up; warms up; nicely; perfectly; properly; a treat; beautifully; flawlessly; do what it should; does what it should; work every time; works every time; work like it should; works like it should; as it should; holding; closing; shutting; opening; latching; running; locking; turning; blowing; heating; moving; going up and down; get one station; gets a station; picks up a station; like a dream; like a charm; like a champ; walk; march",
    { working: "yes" },
  ),
  condition(
    "inoperative; dead; broken; broke; only get static; just static; only static; just get static; only thing out; only one out; only thing not working; only one not working; busted; not been able to get; will not pick up; does not go; do not go; not going; does not stay up; no sound; there is no sound; does not make a sound; needs a new one; does not turn; jammed; duff; knackered; no joy; not a thing happens; does not want to know; never worked; does not budge; stone dead; seized; stuck; quit; stopped; out of order; not working; inop; stopped working; disconnected; not hooked up; unhooked; not connected; burnt out; blown; does not do anything; do not do anything; does nothing; do nothing; will not do anything; nothing happens; gave up; given up; packed up; conked out; kaput; failed; dead as a doornail; reads low; reads high; reads wrong; does not read; stuck on; never worked; has not worked; have not worked; not worked; never worked; useless; hopeless; no use; need rewiring; does not come on; do not come on; does not light up; does not respond; does not turn on; just for look; only for look; for show; just for show; ornamental; purely ornamental; ornament; decoration; just decoration; just for decoration; does not do much; do not do much; does not do a lot; read half; reads half",
    { working: "no" },
    BAD,
  ),
  condition("is out; s out; are out; out cold; lamp/light/bulb out; one out", { working: "no" }),
  condition(
    "intermittent; intermittently; does not always work; do not always work; not always work; does not work all the time; does not work every time; erratic; jumpy; unreliable; hit and miss; iffy; bit iffy; lazy; weak; a bit weak; feeble; on its way out; sometimes; now and then; flicker; temperamental; sticks; stick; on and off; when it feels like it; unless you slam; unless you lift; unless you pull; unless you push; unless you jiggle; unless you help; comes and goes; when it wants to; when it wants; some of the time; most of the time; every now and then; now and again; have to lift; have to help it; got to help it; have to slam; got to lift; got to slam; need to lift; need lifting; lift it to; lift up to close; lift up to shut; lift up to get; need/want (a) (good/hard) slam; need/want slamming; need/want a (good/hard) shove/bang/tug/yank; have to jiggle; need a jiggle; a bit sticky; sticky; takes a couple of goes",
    { working: "intermittent" },
  ),
  condition(
    "present; there; included; on file; never used; never been used; unused; never been on the ground; never been on the road; in hand; come with it; comes with it; all there; in the folder; in the car; in its bag; still has it; available; with it",
    { presence: "present" },
  ),
  condition("absent; not there; not included", { presence: "absent" }, { fault: "missing-piece" }),
  condition(
    "none; nil; nothing at all; do not see anything; nothing to see; not a mark on it; no mark; blemish free; unmarked; can not see anything wrong; nothing to report; clear of anything; not a thing wrong; no fault; not a mark; not a thing; not have a mark; not got a mark; without a mark; without damage; without any damage; no damage; undamaged; not damaged; free of damage; not a scratch on it; never a mark; neither",
    {
      general: "none",
    },
  ),
  condition(
    "not fitted; been removed; was removed; has been taken out; been taken out; taken out; was taken out; been deleted; it has none; has not got one; have not got one; has not got any; have not got any; it has not got; they have not got; does not have it; do not have it; does not have that; never came with one; did not come with one; has not got it; have not got it; does not have any; do not have one; never had one; delete; does not have one; has none; it has none; never fitted; there is not one; without one; deleted; not inside; not installed; not built in; is not in there; took it out; took that out; taken it out; took them out",
    { general: "not-fitted" },
  ),
  condition(
    "not tested; not tried; did not try that; could not test; could not try; haven t tried; have not tried; have not tested; did not test; untested; never tried; did not try; have not checked; not checked; did not check; not been tested",
    { unseen: "not-tested" },
  ),
  condition(
    "not inspected; could not see; did not look at; not seen; not looked at; could not get to; have not seen; could not reach; did not see",
    { unseen: "not-reached" },
  ),
  condition(
    "not opened; were not opened; did not open; did not pull; not taken off; not removed; were not removed",
    { unseen: "needs-dismantling" },
  ),
  condition("covered; undercoating over everything; hidden by undercoat; covered in undercoat", {
    unseen: "covered",
  }),
];
