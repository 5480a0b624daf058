import type { Caution } from "@evenhand/shared/sheet";

/** What loading and unloading a car can do to people. Each stands beside its tasks; none replaces training or the maker's manual. */
export const cautions: Caution[] = [
  {
    id: "traffic",
    text: "Load off the road, on firm and level ground, with the truck's brakes on, chocks set and warning lamps lit; stay out of the traffic's side.",
    stages: ["cold"],
  },
  {
    id: "under-ramp",
    text: "Nobody under the car, behind it or below it while it stands on a ramp, a lift gate or a winch cable; look at the underside from outside, with the car on level ground.",
    stages: ["cold", "lift"],
  },
  {
    id: "winch",
    text: "A winch cable that breaks cuts people: stand well aside and never astride it, gloves on, the wheel steered from outside, and pull only at a point that is sound.",
    stages: ["cold"],
  },
  {
    id: "rolls-away",
    text: "Chocks at hand before the parking brake is let off or a gear taken out: the brakes of a car that stood may do nothing, and without its engine steering and brakes go heavy.",
  },
  {
    id: "carbon-monoxide",
    text: "Never run the engine in a closed trailer or a closed room: carbon monoxide kills without a smell.",
  },
  {
    id: "fuel",
    text: "Stop at a smell or a drop of fuel: engine off, battery off, no flame, no load; a car that loses fuel does not travel.",
  },
  {
    id: "battery",
    text: "A battery holds acid and gives off hydrogen: eye protection, no sparks; switch it off or take the ground lead off only where it can be reached safely.",
  },
  {
    id: "lashing",
    text: "Straps under load whip when they let go: tighten and slacken from the side, never with the face in line, and never lash to what is rusty, bent or part of the brakes.",
  },
  {
    id: "broken-glass",
    text: "Broken glass and bent edges cut: gloves on, and leave loose pieces where they are until they are noted.",
  },
];
