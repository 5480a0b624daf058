import { between, blot, digits, fading, ground, type Look, rusty, shade, strewn } from "./look.ts";

const hose = (d: string, thick: number): string =>
  `<path d="${d}" stroke="#0d0d0e" stroke-width="${thick}" fill="none" stroke-linecap="round"/><path d="${d}" stroke="#4b4b4e" stroke-width="${thick * 0.25}" fill="none" stroke-linecap="round" opacity="0.7"/>`;

/** Plug leads from the distributor over the block, one a cylinder. */
const leads = ({ random }: Look): string =>
  strewn(6, (at) => {
    const [x, sag] = [360 + at * 92, between(random, 20, 110)];
    return `<path d="M820 640 Q${digits((x + 820) / 2)} ${digits(420 - sag)} ${x} 470" stroke="#1b3350" stroke-width="13" fill="none"/>`;
  });

const grime = ({ random, car }: Look): string =>
  strewn(24 + 20 * car.rust, () => {
    const at = blot(random, between(random, 0, 1280), between(random, 200, 900), between(random, 14, 70));
    return `<polygon points="${at}" fill="${random() > 0.4 ? "#1a130c" : "#5c4a33"}" opacity="0.35" filter="url(#soft-4)"/>`;
  });

const bolts = ({ random }: Look): string =>
  strewn(22, (at) => {
    const [x, y] = [310 + (at % 11) * 60 + between(random, -6, 6), at < 11 ? 400 : 620];
    return `<circle cx="${digits(x)}" cy="${digits(y)}" r="10" fill="#9a9da0"/><circle cx="${digits(x - 2)}" cy="${digits(y - 2)}" r="5" fill="#dcdfe1"/>`;
  });

/** Under the hood: block and cover, air filter, battery, hoses. */
export function engineBay(look: Look): string {
  const { car, random } = look;
  const filter = between(random, 520, 660);
  return `<defs>${fading("inner", [shade(car.paint, 0.75), shade(car.paint, 0.35)])}${fading("cover", ["#c5c8ca", "#84888b", "#5d6164"])}${fading("lid", ["#3a3d40", "#17181a"])}</defs>
    ${ground("#141414")}<path d="M-220 -220 L240 -220 L150 1180 L-220 1180 Z" fill="url(#inner)"/><path d="M1060 -220 L1500 -220 L1500 1180 L1150 1180 Z" fill="url(#inner)"/>
    ${ground("#202224", -220, 150)}<rect x="150" y="90" width="990" height="120" fill="${shade(car.paint, 0.6)}"/><rect x="250" y="340" width="760" height="360" rx="30" fill="#3a3733"/>
    <rect x="280" y="380" width="700" height="260" rx="40" fill="url(#cover)" stroke="#33363a" stroke-width="6"/>${bolts(look)}
    <circle cx="${digits(filter)}" cy="510" r="150" fill="url(#lid)" stroke="#888" stroke-width="8"/><circle cx="${digits(filter)}" cy="510" r="26" fill="#b9bcbf"/>
    ${leads(look)}<circle cx="820" cy="650" r="52" fill="#6b2e1b"/><rect x="930" y="150" width="250" height="190" rx="10" fill="#161719"/><rect x="930" y="150" width="250" height="44" fill="#2f3236"/>
    <circle cx="980" cy="146" r="20" fill="#8c8f92"/><circle cx="1128" cy="146" r="20" fill="#a0392b"/>${hose("M1128 146 Q1260 120 1240 420 Q1230 600 1080 760", 20)}
    <rect x="200" y="780" width="900" height="110" rx="20" fill="#0f1011" stroke="#55585b" stroke-width="6"/>${hose("M300 800 Q200 640 330 560", 52)}${hose("M940 800 Q1080 700 960 590", 46)}
    ${grime(look)}${car.rust > 0.2 ? rusty(look, between(random, 940, 1160), 360, 30 + 60 * car.rust) : ""}`;
}
