import { letters } from "./letters.ts";
import { between, digits, ground, type Look, strewn } from "./look.ts";

/** Lines nobody can read from where the camera is. */
const writing = ({ random }: Look): string =>
  strewn(11, (at) => {
    const y = 430 + at * 42;
    return strewn(
      between(random, 4, 8),
      (word) =>
        `<rect x="${210 + word * 108}" y="${y}" width="${digits(between(random, 40, 96))}" height="9" fill="#3a3d44" opacity="0.75"/>`,
    );
  });

const table = ({ random }: Look): string =>
  strewn(26, (at) => {
    const y = -200 + at * 54;
    return `<path d="M-220 ${y} Q640 ${digits(y + between(random, -30, 30))} 1500 ${digits(y + between(random, -12, 12))}" stroke="#4d3018" stroke-width="${digits(between(random, 2, 9))}" fill="none" opacity="0.5"/>`;
  });

/** A title on a table, folded in four, with the car's number. */
export function paper(look: Look): string {
  const { car, random } = look;
  const ink = "#23304a";
  return `${ground("#7c5130")}${table(look)}<g transform="rotate(${digits(between(random, -3, 3))} 640 480)">
    <rect x="128" y="78" width="1040" height="850" fill="#000" opacity="0.5" filter="url(#soft-14)"/><rect x="120" y="60" width="1040" height="850" fill="#ece6d2"/>
    <rect x="150" y="90" width="980" height="790" fill="none" stroke="#6c8a72" stroke-width="10"/><rect x="164" y="104" width="952" height="762" fill="none" stroke="#6c8a72" stroke-width="3"/>
    ${letters("TITLE", { x: 480, y: 150, high: 66, color: "#3e5c46", thick: 0.9 })}${letters(car.number, { x: 210, y: 290, high: 46, color: ink })}<line x1="200" y1="356" x2="1080" y2="356" stroke="${ink}" stroke-width="3"/>
    ${writing(look)}<circle cx="960" cy="720" r="86" fill="none" stroke="#a02c2c" stroke-width="9" opacity="0.7"/><circle cx="960" cy="720" r="64" fill="none" stroke="#a02c2c" stroke-width="4" opacity="0.7"/>
    <path d="M640 60 L640 910 M120 485 L1160 485" stroke="#000" opacity="0.14" stroke-width="6"/><path d="M120 485 L640 485 L640 910 L120 910 Z" fill="#000" opacity="0.05"/>
    <path d="M240 800 q40 -60 80 -8 t90 -20 q30 -30 60 16 t80 -10" stroke="${ink}" stroke-width="5" fill="none"/></g>`;
}
