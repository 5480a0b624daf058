import { letters } from "./letters.ts";
import { between, digits, fading, ground, type Look, shade, strewn } from "./look.ts";

/** A dial with its marks and needle, from seven o'clock round to five. */
function dial(x: number, y: number, size: number, share: number): string {
  const marks = strewn(
    25,
    (at) =>
      `<rect x="${x - 2}" y="${y - size * 0.9}" width="${at % 4 === 0 ? 5 : 3}" height="${at % 4 === 0 ? size * 0.16 : size * 0.08}" fill="#e8e6dc" transform="rotate(${-140 + at * 11.7} ${x} ${y})"/>`,
  );
  return `<circle cx="${x}" cy="${y}" r="${size * 1.08}" fill="#b4b8bb"/><circle cx="${x}" cy="${y}" r="${size * 1.02}" fill="#5f6367"/><circle cx="${x}" cy="${y}" r="${size}" fill="#111214"/>
    ${marks}<polygon points="${x - 5},${y + 24} ${x + 5},${y + 24} ${x + 2},${y - size * 0.8} ${x - 2},${y - size * 0.8}" fill="#e2562a" transform="rotate(${digits(-140 + 280 * share)} ${x} ${y})"/>
    <circle cx="${x}" cy="${y}" r="${size * 0.1}" fill="#2c2d2f"/><path d="M${x - size * 0.7} ${y - size * 0.5} Q${x} ${y - size * 1.1} ${x + size * 0.6} ${y - size * 0.6} Q${x} ${y - size * 0.7} ${x - size * 0.7} ${y - size * 0.5}" fill="#fff" opacity="0.13"/>`;
}

const drum = (odometer: string, x: number, y: number): string =>
  `<rect x="${x}" y="${y}" width="${odometer.length * 44 + 12}" height="64" fill="#08080a" stroke="#888" stroke-width="3"/>${strewn(
    odometer.length,
    (at) =>
      `<rect x="${x + 8 + at * 44}" y="${y + 6}" width="40" height="52" fill="${at === odometer.length - 1 ? "#e7e2d3" : "#1d1d20"}"/>${letters(odometer[at] ?? "", { x: x + 18 + at * 44, y: y + 14, high: 36, color: at === odometer.length - 1 ? "#222" : "#efece2" })}`,
  )}`;

const dust = ({ random }: Look): string =>
  strewn(
    70,
    () =>
      `<circle cx="${digits(between(random, 0, 1280))}" cy="${digits(between(random, 150, 820))}" r="${digits(between(random, 0.8, 2.6))}" fill="#cfc9bb" opacity="0.5"/>`,
  );

/** Speed, revolutions and the small gauges, with the odometer. */
export function gauges(look: Look): string {
  const { car, random } = look;
  return `<defs>${fading("dash", [shade(car.trim, 0.8), shade(car.trim, 0.45)])}${fading("wood", ["#2b2b2e", "#1a1a1c"])}</defs>
    ${ground("url(#dash)")}<rect x="-60" y="120" width="1400" height="600" rx="90" fill="url(#wood)" stroke="#000" stroke-width="10"/>
    ${dial(390, 410, 240, 0.02)}${dial(890, 410, 240, 0.01)}${drum(car.odometer, 252, 500)}
    ${dial(640, 300, 84, between(random, 0.1, 0.7))}${dial(640, 540, 84, between(random, 0.2, 0.5))}
    <path d="M-220 1000 Q640 660 1500 1000 L1500 1180 L-220 1180 Z" fill="#101012"/><path d="M-200 985 Q640 648 1480 985" stroke="#3a3a3f" stroke-width="26" fill="none"/>
    ${dust(look)}<path d="M120 150 L520 150 L300 720 L-60 720 Z" fill="#fff" opacity="0.07"/>`;
}
