import type { Caution } from "@evenhand/shared/sheet";

/** The usual cautions. Each stands beside the tasks it belongs to, before them; none replaces training or the maker's manual. */
export const cautions: Caution[] = [
  {
    id: "lift-points",
    text: "Inspect the lift points before lifting; if one is soft, cracked or patched, the car stays on its wheels.",
  },
  {
    id: "jack-alone",
    text: "Never go under a car that a jack alone holds up: stands on sound points, on level ground, wheels chocked.",
  },
  { id: "second-person", text: "Have a second person there for the lift and for the road." },
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
  },
  {
    id: "carbon-monoxide",
    text: "Run the engine indoors only with exhaust extraction: carbon monoxide kills without a smell.",
  },
  {
    id: "lining-dust",
    text: "Never blow out or dry-brush brake or clutch dust: old linings hold asbestos. Wipe wet or leave it.",
  },
  { id: "lead-paint", text: "Never sand old paint or body solder to look beneath: it holds lead." },
  {
    id: "leave-closed",
    text: "Leave closed: airbags, gas dampers, compressed coil springs, hydropneumatic suspension, split rims.",
  },
  {
    id: "aged-tires",
    text: "Aged, cracked or bulged tires: keep to a low agreed speed, or stay off the road.",
  },
  {
    id: "first-braking",
    text: "Make the first braking at walking pace in a clear yard; stop if the pedal sinks or the car pulls.",
  },
  {
    id: "refrigerant",
    text: "Never vent refrigerant: read the vents with a thermometer and leave the fittings closed.",
  },
  {
    id: "battery",
    text: "A battery holds acid and gives off hydrogen: eye protection, no sparks, no flame, tools insulated.",
  },
  {
    id: "electric-conversion",
    text: "Electric conversions hold lethal voltage: only a person qualified for it isolates the pack; otherwise decline.",
  },
  {
    id: "prop-hood",
    text: "Prop weak hoods and trunk lids before leaning under them: old springs and struts let go.",
  },
  { id: "cold-lamps", text: "Near fuel use only cold, sealed lamps, and no open element, spark or flame." },
  {
    id: "road-consent",
    text: "Road only with written consent, insurance and plates, and with no safety item open; a licensed driver obeys the local law.",
  },
  {
    id: "hot-coolant",
    text: "Never open a hot cooling system: steam scalds. Let it cool, cover the cap with a cloth, turn it slowly.",
  },
  {
    id: "local-law",
    text: "This is no roadworthiness certificate: local inspection law and the licensed mechanic decide what may be driven.",
  },
  {
    id: "fuel-leak",
    text: "Stop at a smell or a drop of fuel: engine off, battery off, no lamp plugged in or out, air the place.",
  },
];
