import type { Caution } from "@evenhand/shared/sheet";

/** The usual cautions. Each stands beside the tasks it belongs to, before them; none replaces training or the maker's manual. */
export const cautions: Caution[] = [
  {
    id: "lift-points",
    text: "Inspect the lift points before lifting; if one is soft, cracked or patched, the car stays on its wheels.",
    stages: ["lift", "second-lift"],
  },
  {
    id: "jack-alone",
    text: "Never go under a car that a jack alone holds up: stands on sound points, on level ground, wheels chocked.",
    stages: ["lift", "second-lift"],
  },
  {
    id: "second-person",
    text: "Have a second person there for the lift and for the road.",
    stages: ["lift", "road", "second-lift"],
  },
  {
    id: "cranking-fuel",
    text: "Disable ignition and fuel before cranking for compression: open plug holes spray fuel.",
  },
  {
    id: "leak-down-air",
    text: "Leak-down air turns the crank: hands and tools off the belts, fan and pulley, no wrench left on the crank bolt.",
  },
  {
    id: "limited-slip",
    text: "Never drive one raised wheel of a limited-slip axle: the wheel on the ground pulls the car off its stands.",
  },
  {
    id: "fans-and-belts",
    text: "Electric fans start by themselves and belts catch sleeves: sleeves, hair and tools well away.",
    stages: ["cold-start", "running", "hot"],
  },
  {
    id: "carbon-monoxide",
    text: "Run the engine indoors only with exhaust extraction: carbon monoxide kills without a smell.",
    stages: ["cold-start", "running", "hot"],
  },
  {
    id: "lining-dust",
    text: "Never blow out or dry-brush brake or clutch dust: old linings hold asbestos. Wipe wet or leave it.",
  },
  {
    id: "lead-paint",
    text: "Never sand old paint or body solder to look beneath: it holds lead.",
    stages: ["daylight", "lift"],
  },
  {
    id: "leave-closed",
    text: "Leave closed: airbags, gas dampers, compressed coil springs, hydropneumatic suspension, split rims.",
    stages: ["daylight", "lift"],
  },
  {
    id: "aged-tires",
    text: "Aged, cracked or bulged tires: keep to a low agreed speed, or stay off the road.",
    stages: ["road"],
  },
  {
    id: "first-braking",
    text: "Make the first braking at walking pace in a clear yard; stop if the pedal sinks or the car pulls.",
    stages: ["road"],
  },
  {
    id: "refrigerant",
    text: "Never vent refrigerant: read the vents with a thermometer and leave the fittings closed.",
  },
  {
    id: "battery",
    text: "A battery holds acid and gives off hydrogen: eye protection, no sparks, no flame, tools insulated.",
    stages: ["cold"],
  },
  {
    id: "electric-conversion",
    text: "Electric conversions hold lethal voltage: only a person qualified for it isolates the pack; otherwise decline.",
  },
  {
    id: "prop-hood",
    text: "Prop weak hoods and trunk lids before leaning under them: old springs and struts let go.",
    stages: ["cold", "daylight"],
  },
  {
    id: "cold-lamps",
    text: "Near fuel use only cold, sealed lamps, and no open element, spark or flame.",
    stages: ["lift"],
  },
  {
    id: "road-consent",
    text: "Road only with written consent, insurance and plates, with every place of the gate looked at, and nothing found there and no doubt of your own that closes it: what was not seen is not sound. A licensed driver obeys the local law.",
    stages: ["road"],
  },
  {
    id: "hot-coolant",
    text: "Never open a hot cooling system: steam scalds. Let it cool, cover the cap with a cloth, turn it slowly.",
    stages: ["hot", "last"],
  },
  {
    id: "local-law",
    text: "This is no roadworthiness certificate: local inspection law and the licensed mechanic decide what may be driven.",
  },
  {
    id: "fuel-leak",
    text: "Stop at a smell or a drop of fuel: engine off, battery off, no lamp plugged in or out, air the place.",
    stages: ["cold", "lift"],
  },
  {
    id: "raised-car",
    text: "Nobody sits in a raised car, and nobody stands before or under a car whose engine runs in gear; pedal and rim are worked by a helper only with the car on the ground or on a drive-on lift; a raised car's brake is held by a pedal jack set beforehand.",
    stages: ["lift", "second-lift"],
  },
  {
    id: "eye-protection",
    text: "Eye protection under the car: rust, grit and fluid fall where you look up.",
    stages: ["lift", "second-lift"],
  },
  {
    id: "chocks",
    text: "In park, or out of gear with the parking brake on, and chocks set, before anything is cranked, run or turned by hand; a gear goes in only once all of it stands still.",
    stages: ["cold-start", "running", "hot", "last"],
  },
  {
    id: "hot-parts",
    text: "Hot exhaust, oil, plugs and coolant burn: gloves and sleeves, or wait until they can be touched.",
    stages: ["hot", "second-lift", "last"],
  },
  {
    id: "owners-word",
    text: "Another's car: a full throttle, water, opened drums, carpets and plugs only with the owner's word, in writing where it can be had.",
    stages: ["last"],
  },
  {
    id: "closed-again",
    text: "What was opened is closed again: nuts to their torque and noted, the pedal pumped hard, before the car moves.",
    stages: ["last"],
  },
  {
    id: "slope",
    text: "Nothing on a slope before the gate to the road; then nobody below the car, and chocks at hand.",
  },
  {
    id: "full-throttle",
    text: "Full throttle only with the owner's word, on an empty road; a firm half throttle shows as much.",
  },
  {
    id: "boiling-fluid",
    text: "Boiling brake fluid blinds and eats paint: eye protection, gloves, the tester level and away from the car.",
  },
  {
    id: "asbestos-undercoat",
    text: "Old undercoat can hold asbestos: press it, never scrape, sand or heat it.",
  },
  {
    id: "rodent-nests",
    text: "Rodent nests carry disease: no bare hands, no blowing out, a mask, and air the car first.",
  },
  {
    id: "old-battery",
    text: "A forgotten battery under a seat or in the trunk may leak acid or short on the springs: look before you slide the seat or lift the carpet.",
  },
  {
    id: "electric-fuel-pump",
    text: "An electric fuel pump runs with the key on and sprays from an open line: key off before anything is touched.",
  },
  {
    id: "knock-off",
    text: "Knock-off hubs are struck only with a soft hammer and the car on its wheels; look for the arrow that says which way they come off.",
  },
];
