import { letters } from "./letters.ts";
import { between, digits, fading, ground, HIGH, type Look, shade, strewn } from "./look.ts";

/** Blocks of the tread around the rim of the tire, worn more or less. */
const tread = ({ car }: Look): string =>
  strewn(
    46,
    (at) =>
      `<rect x="622" y="-66" width="36" height="${digits(50 - 26 * car.rust)}" rx="4" fill="#0b0b0c" transform="rotate(${(at * 360) / 46} 640 520)"/>`,
  );

const cracks = ({ random, car }: Look): string =>
  strewn(10 + 60 * car.rust, () => {
    const [turn, far] = [between(random, 0, 360), between(random, 370, 520)];
    return `<path d="M640 ${digits(520 - far)} q${digits(between(random, -10, 10))} ${digits(between(random, 10, 24))} 4 ${digits(between(random, 14, 44))}" stroke="#000" stroke-width="2.4" fill="none" transform="rotate(${digits(turn)} 640 520)"/>`;
  });

const mud = ({ random }: Look): string =>
  strewn(60, () => {
    const [turn, far] = [between(random, 0, 6.3), between(random, 240, 570)];
    return `<circle cx="${digits(640 + far * Math.cos(turn))}" cy="${digits(520 + far * Math.sin(turn))}" r="${digits(between(random, 2, 11))}" fill="#7b6a52" opacity="0.45"/>`;
  });

/** A wheel straight on, with the week and year in its sidewall. */
export function tire(look: Look): string {
  const { car, random } = look;
  const byChance = `${10 + Math.floor(random() * 42)}${10 + Math.floor(random() * 12)}`;
  const week = car.tireWeek ?? byChance;
  const spokes = strewn(
    8,
    (at) =>
      `<path d="M612 500 L596 250 L684 250 L668 500 Z" fill="url(#alloy)" stroke="#55595e" stroke-width="4" transform="rotate(${at * 45} 640 520)"/>`,
  );
  return `<defs>${fading("alloy", ["#e0e3e5", "#989da2"])}${fading("paint", [car.paint, shade(car.paint, 0.5)])}${fading("floor", ["#8a857c", "#5d5851"])}</defs>
    ${ground("url(#paint)", -220, 480)}${ground("url(#floor)", 470, HIGH + 220)}<ellipse cx="640" cy="1110" rx="560" ry="70" fill="#000" opacity="0.6" filter="url(#soft-14)"/>
    <circle cx="640" cy="520" r="640" fill="#070708"/><circle cx="640" cy="520" r="586" fill="#1a1a1c"/>${tread(look)}<circle cx="640" cy="520" r="540" fill="#232326"/><circle cx="640" cy="520" r="470" fill="#1c1c1f"/>
    <circle cx="640" cy="520" r="345" fill="#a9adb1"/><circle cx="640" cy="520" r="315" fill="#37393c"/>${spokes}<circle cx="640" cy="520" r="78" fill="#c9cdd0" stroke="#666" stroke-width="5"/>
    ${strewn(5, (at) => `<circle cx="640" cy="452" r="15" fill="#4a4d51" transform="rotate(${at * 72} 640 520)"/>`)}
    <rect x="-40" y="-30" width="330" height="86" rx="40" fill="#1f1f22" transform="translate(520 78)"/>${letters(`DOT ${week}`, { x: 520, y: 68, high: 46, color: "#6f6f74", thick: 0.9 })}
    ${cracks(look)}${mud(look)}`;
}
