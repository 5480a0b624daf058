import { between, blot, digits, fading, ground, type Look, rusty, strewn } from "./look.ts";

const drops = ({ random }: Look): string =>
  strewn(16, () => {
    const [x, y] = [between(random, 500, 760), between(random, 380, 620)];
    return `<ellipse cx="${digits(x)}" cy="${digits(y)}" rx="${digits(between(random, 3, 9))}" ry="${digits(between(random, 6, 18))}" fill="#0a0806" opacity="0.8"/>`;
  });

const coating = ({ random }: Look): string =>
  strewn(90, () => {
    const at = blot(
      random,
      between(random, -180, 1460),
      between(random, -180, 1140),
      between(random, 12, 75),
    );
    return `<polygon points="${at}" fill="${["#2a2826", "#3d3935", "#1d1b19", "#4c4640"][Math.floor(random() * 4)] ?? ""}" opacity="0.55" filter="url(#soft-4)"/>`;
  });

const holes = (y: number): string =>
  strewn(
    7,
    (at) =>
      `<ellipse cx="${-80 + at * 230}" cy="${y}" rx="26" ry="16" fill="#0a0a0a" stroke="#6a625a" stroke-width="4"/>`,
  );

/** A frame rail, a floor pan and the driveline seen from under the lift. */
export function underside(look: Look): string {
  const { car, random } = look;
  const eaten = strewn(1 + car.rust * 6, () =>
    rusty(
      look,
      between(random, 60, 1220),
      between(random, 640, 860),
      between(random, 30, 50 + 90 * car.rust),
    ),
  );
  return `<defs>${fading("rail", ["#5d5650", "#39342f", "#221f1c"])}${fading("pipe", ["#9b8f80", "#6d5d4b", "#3a3026"])}${fading("shaft", ["#84868a", "#4a4c50", "#222326"])}</defs>
    ${ground("#2f2c29")}${coating(look)}<path d="M-220 60 L1500 20" stroke="#1b1917" stroke-width="22"/><path d="M-220 170 L1500 140" stroke="#1b1917" stroke-width="14"/>
    <rect x="-220" y="640" width="1720" height="230" fill="url(#rail)"/><rect x="-220" y="640" width="1720" height="14" fill="#837a70"/>${holes(760)}
    <g transform="rotate(-2 640 430)"><rect x="-220" y="380" width="820" height="92" rx="16" fill="url(#shaft)"/><rect x="560" y="330" width="190" height="196" rx="50" fill="#4b4d50"/><circle cx="655" cy="428" r="60" fill="#2a2b2e" stroke="#86898d" stroke-width="8"/><rect x="750" y="390" width="760" height="76" rx="14" fill="url(#shaft)"/></g>
    <path d="M-220 240 Q300 300 640 250 T1500 280" stroke="url(#pipe)" stroke-width="74" fill="none"/><path d="M-220 222 Q300 282 640 232 T1500 262" stroke="#cbbba4" stroke-width="8" fill="none" opacity="0.4"/>
    <path d="M-220 905 Q500 940 1500 900" stroke="#b08d3c" stroke-width="11" fill="none"/>${drops(look)}${eaten}
    <ellipse cx="700" cy="700" rx="520" ry="260" fill="#ffe9c0" opacity="0.13" filter="url(#soft-40)"/>`;
}
