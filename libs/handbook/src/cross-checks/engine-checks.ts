import type { Estimate } from "@evenhand/measurement/estimate";
import { charging } from "../charging/index.ts";
import { compression, compressionStates } from "../compression/index.ts";
import type { CompressionInput, CylinderPressure } from "../compression/index.ts";
import { cranking } from "../cranking/index.ts";
import { cylinderStory } from "../cylinder-story/index.ts";
import type { CylinderState } from "../cylinder-story/index.ts";
import { displacement } from "../displacement/index.ts";
import { judge } from "../interval/index.ts";
import { leakDown, leakStates } from "../leak-down/index.ts";
import type { CylinderLeak, Escape, LeakDownInput } from "../leak-down/index.ts";
import { limitUse } from "../limits/index.ts";
import { oilPressure } from "../oil-pressure/index.ts";
import { vacuum } from "../vacuum/index.ts";
import type { VacuumInput } from "../vacuum/index.ts";
import type { Checks, Finder, Prepared } from "./prepared.ts";
import { estimateOf, findClaim, findRead, findReads, numberNoted, optionOf, vehicleOf } from "./view.ts";
import type { Found, Read, View } from "./view.ts";

const cylinderOf = ({ position }: Found): number => Number(position.replace("cylinder-", ""));

const swept: Finder = (view) => {
  const [bore, stroke] = [
    findRead(view, "reading", "engine.bore"),
    findRead(view, "reading", "engine.stroke"),
  ];
  const cylinders = vehicleOf(view)?.form.cylinders;
  if (bore === undefined || stroke === undefined || cylinders === undefined) return [];
  const [b, s] = [estimateOf(view, bore), estimateOf(view, stroke)];
  const claim = findClaim(view, "reading", "engine.displacement");
  if (b === undefined || s === undefined || claim === undefined) return [];
  const claimed = estimateOf(view, claim)?.value;
  return [
    {
      rule: "displacement",
      reads: [bore, stroke],
      claim,
      run: () => displacement({ bore: b, stroke: s, cylinders, claimed }, view.firm),
    },
  ];
};

type Tested<T> = { readonly input: T; readonly reads: readonly Found[] };

const compressionOf = (view: View): Tested<CompressionInput> | undefined => {
  const reads = findReads(view, "reading", "engine.compression");
  const cylinders = reads.flatMap((read): CylinderPressure[] => {
    const pressure = estimateOf(view, read, "differences");
    return pressure === undefined ? [] : [{ cylinder: cylinderOf(read), pressure }];
  });
  if (cylinders.length < 2) return undefined;
  const { compressionLowestShare: lowestShare, compressionLeast: least } = view.maker;
  const neighbors = view.maker.cylinderNeighbors;
  return { input: { cylinders, neighbors, makers: { lowestShare, least } }, reads };
};

const ESCAPES: readonly string[] = ["intake", "exhaust", "crankcase", "coolant", "neighbor"];
const isEscape = (option: string | undefined): option is Escape =>
  option !== undefined && ESCAPES.includes(option);

const escapesOf = (path: Read<"choice"> | undefined): readonly Escape[] | undefined => {
  const option = optionOf(path);
  if (option === "none") return [];
  return isEscape(option) ? [option] : undefined;
};

const leaksOf = (view: View): Tested<LeakDownInput> | undefined => {
  const reads = findReads(view, "reading", "engine.leak-down");
  const paths = reads.flatMap(
    (read) => findRead(view, "choice", "engine.leak-down-path", read.position) ?? [],
  );
  const cylinders = reads.flatMap((read): CylinderLeak[] => {
    const leak = estimateOf(view, read);
    const path = paths.find(({ position }) => position === read.position);
    return leak === undefined ? [] : [{ cylinder: cylinderOf(read), leak, escapes: escapesOf(path) }];
  });
  if (cylinders.length === 0) return undefined;
  return {
    input: { cylinders, testPressure: numberNoted(reads[0], "test-pressure") },
    reads: [...reads, ...paths],
  };
};

const cylinderTests: Finder = (view) => {
  const [pressures, leaks] = [compressionOf(view), leaksOf(view)];
  return [
    ...(pressures === undefined
      ? []
      : [
          {
            rule: "compression",
            reads: pressures.reads,
            run: () => compression(pressures.input, view.firm),
          } as const,
        ]),
    ...(leaks === undefined
      ? []
      : [{ rule: "leak-down", reads: leaks.reads, run: () => leakDown(leaks.input, view.firm) } as const]),
  ];
};

const statesOf = (
  view: View,
  pressures: CompressionInput | undefined,
  leaks: LeakDownInput | undefined,
): CylinderState[] => {
  const low = pressures === undefined ? undefined : compressionStates(pressures, view.firm);
  const leaking = leaks === undefined ? undefined : leakStates(leaks, view.firm);
  const cylinders = new Set([...(low?.keys() ?? []), ...(leaking?.keys() ?? [])]);
  return [...cylinders].map((cylinder) => ({
    cylinder,
    compression: low?.get(cylinder),
    leak: leaking?.get(cylinder),
    escapes: leaks?.cylinders.find((state) => state.cylinder === cylinder)?.escapes,
  }));
};

const story: Finder = (view) => {
  const [pressures, leaks] = [compressionOf(view), leaksOf(view)];
  const gas = findRead(view, "presence", "engine.combustion-gas");
  const known =
    gas?.answer.value === "present" || gas?.answer.value === "absent" ? gas.answer.value : undefined;
  if (leaks === undefined || (pressures === undefined && known === undefined)) return [];
  const reads = [
    ...(pressures?.reads ?? []),
    ...leaks.reads,
    ...(gas === undefined || known === undefined ? [] : [gas]),
  ];
  const run = () =>
    cylinderStory({
      cylinders: statesOf(view, pressures?.input, leaks.input),
      coolantGas: known,
      neighbors: view.maker.cylinderNeighbors,
    });
  return [{ rule: "cylinder-story", reads, run }];
};

const exact = (value: number): Estimate => ({
  value,
  standardUncertainty: 0,
  degreesOfFreedom: Number.POSITIVE_INFINITY,
});

const timingOf = (view: View, read: Read<"reading"> | undefined): VacuumInput["timing"] => {
  const timing = read === undefined ? undefined : estimateOf(view, read);
  if (timing === undefined || view.maker.timing === undefined) return "unknown";
  const slack = limitUse("vacuum.late-timing", view.firm).value;
  return ({ holds: "right", breaks: "late", "cannot-tell": "unknown" } as const)[
    judge(timing, { low: view.maker.timing - slack })
  ];
};

const NEEDLES: readonly string[] = ["steady", "dropping", "drifting", "fluttering"];
const isNeedle = (option: string | undefined): option is VacuumInput["needle"] =>
  option !== undefined && NEEDLES.includes(option);

const manifold: Finder = (view) => {
  const read = findRead(view, "reading", "engine.vacuum");
  const needleRead = findRead(view, "choice", "engine.vacuum-needle");
  const reading = read === undefined ? undefined : estimateOf(view, read);
  const needle = optionOf(needleRead);
  if (read === undefined || reading === undefined || !isNeedle(needle)) return [];
  const timing = findRead(view, "reading", "engine.timing");
  const height = numberNoted(read, "height");
  const input: VacuumInput = {
    vacuum: reading,
    height: height === undefined ? undefined : exact(height),
    needle,
    timing: timingOf(view, timing),
    cam: view.maker.cam ?? "unknown",
  };
  const reads = [read, needleRead, timing].flatMap((found) => found ?? []);
  return [{ rule: "vacuum", reads, run: () => vacuum(input, view.firm) }];
};

const oil: Finder = (view) =>
  (
    [
      ["engine.oil-pressure-idle", view.maker.oilPressureIdle],
      ["engine.oil-pressure-2000", view.maker.oilPressure2000],
    ] as const
  ).flatMap(([item, makersLeast]): Prepared[] => {
    const read = findRead(view, "reading", item);
    const pressure = read === undefined ? undefined : estimateOf(view, read);
    const speed = numberNoted(read, "engine-speed");
    if (read === undefined || pressure === undefined || speed === undefined) return [];
    const input = {
      pressure,
      engineSpeed: exact(speed),
      oilTemperature: numberNoted(read, "oil-temperature"),
      makersLeast,
    };
    return [{ rule: "oil-pressure", reads: [read], run: () => oilPressure(input, view.firm) }];
  });

const systemOf = (view: View): 6 | 12 => {
  const option = optionOf(findRead(view, "choice", "electrics.system-voltage"));
  if (option !== undefined) return option === "six" ? 6 : 12;
  return vehicleOf(view)?.form.systemVolts ?? 12;
};

const volts: Finder = (view) => {
  const running = findRead(view, "reading", "electrics.volts-charging");
  const turning = findRead(view, "reading", "electrics.volts-cranking");
  const kind = findRead(view, "choice", "electrics.charger-kind");
  const system = systemOf(view);
  const charge = running === undefined ? undefined : estimateOf(view, running);
  const crank = turning === undefined ? undefined : estimateOf(view, turning);
  const checks: Prepared[] = [];
  if (running !== undefined && charge !== undefined) {
    // A machine that is not known is held to the milder rule: a generator is never judged at idle.
    const machine = optionOf(kind) === "alternator" ? "alternator" : "generator";
    const input = {
      volts: charge,
      engineSpeed: numberNoted(running, "engine-speed"),
      system,
      machine,
    } as const;
    const reads = kind === undefined ? [running] : [running, kind];
    checks.push({ rule: "charging", reads, run: () => charging(input, view.firm) });
  }
  if (turning !== undefined && crank !== undefined) {
    checks.push({
      rule: "cranking",
      reads: [turning],
      run: () => cranking({ volts: crank, system }, view.firm),
    });
  }
  return checks;
};

/** Rules on the engine and its electrics. */
export const engineChecks: Checks = {
  oneReport: [cylinderTests, manifold, oil, volts],
  bothReports: [swept, story],
};
