import { between, digits, fading, ground, type Look, shade, strewn } from "./look.ts";

/** A seat with its pleats, worn where one slides in. */
function seat(look: Look, x: number): string {
  const { car, random } = look;
  const pleats = strewn(
    9,
    (at) =>
      `<path d="M${x + 34 + at * 42} 300 q${digits(between(random, -5, 5))} 150 0 290" stroke="${shade(car.trim, 0.55)}" stroke-width="5" fill="none"/>`,
  );
  const wear = strewn(20 * car.rust + 4, () => {
    const [cx, cy] = [x + between(random, 0, 120), between(random, 600, 740)];
    return `<path d="M${digits(cx)} ${digits(cy)} l${digits(between(random, -40, 40))} ${digits(between(random, -12, 12))}" stroke="#d9cdb8" stroke-width="3" opacity="0.7"/>`;
  });
  return `<rect x="${x}" y="200" width="430" height="470" rx="60" fill="url(#trim)" stroke="${shade(car.trim, 0.4)}" stroke-width="6"/>${pleats}
    <rect x="${x - 20}" y="600" width="480" height="230" rx="70" fill="url(#cushion)" stroke="${shade(car.trim, 0.4)}" stroke-width="6"/><rect x="${x + 110}" y="130" width="210" height="110" rx="40" fill="url(#trim)"/>${wear}`;
}

const stains = ({ random }: Look): string =>
  strewn(
    14,
    () =>
      `<ellipse cx="${digits(between(random, 0, 1280))}" cy="${digits(between(random, 820, 1000))}" rx="${digits(between(random, 20, 90))}" ry="${digits(between(random, 8, 26))}" fill="#000" opacity="0.25" filter="url(#soft-4)"/>`,
  );

/** Both front seats and the carpet from the open door. */
export function interior(look: Look): string {
  const { car } = look;
  return `<defs>${fading("trim", [shade(car.trim, 1.25), car.trim, shade(car.trim, 0.6)])}${fading("cushion", [shade(car.trim, 1.35), shade(car.trim, 0.75)])}${fading("carpet", ["#3c3a38", "#211f1e"])}</defs>
    ${ground("#2b2d2f", -220, 260)}<path d="M-220 -220 L1500 -220 L1500 120 Q640 40 -220 140 Z" fill="#cfc8ba"/><rect x="120" y="60" width="1040" height="170" rx="30" fill="#9fb2bd"/><path d="M120 200 Q640 120 1160 200 L1160 230 L120 230 Z" fill="#6b7a66"/>
    ${ground("url(#carpet)", 240, 1200)}${seat(look, 130)}${seat(look, 740)}
    <rect x="588" y="470" width="120" height="420" rx="22" fill="#1a1a1b"/><rect x="634" y="430" width="26" height="180" rx="10" fill="#8f9296"/><circle cx="647" cy="420" r="34" fill="#141414"/>
    ${ground(shade(car.paint, 0.7), 900, 960)}${ground("#c4c7c9", 955, 972)}${stains(look)}`;
}
