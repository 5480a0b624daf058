import { letters } from "./letters.ts";
import { between, blot, digits, fading, ground, type Look, rusty, shade, strewn } from "./look.ts";

const rivet = (x: number, y: number): string =>
  `<circle cx="${x}" cy="${y}" r="22" fill="#6f7275"/><circle cx="${x - 4}" cy="${y - 5}" r="15" fill="#c6c9cc"/>`;

const scratches = ({ random }: Look): string =>
  strewn(26, () => {
    const [x, y] = [between(random, 170, 1080), between(random, 290, 690)];
    return `<line x1="${digits(x)}" y1="${digits(y)}" x2="${digits(x + between(random, -90, 90))}" y2="${digits(y + between(random, -30, 30))}" stroke="${random() > 0.5 ? "#fff" : "#4d4d4d"}" stroke-width="1.6" opacity="0.5"/>`;
  });

/** The maker's plate with the car's number, on its painted bulkhead. */
export function numberPlate(look: Look): string {
  const { car, random } = look;
  const ink = "#26282a";
  const dirt = strewn(12, () => {
    const at = blot(random, between(random, 100, 1180), between(random, 100, 900), between(random, 20, 80));
    return `<polygon points="${at}" fill="#3b2f22" opacity="0.28" filter="url(#soft-14)"/>`;
  });
  return `<defs>${fading("paint", [shade(car.paint, 0.95), shade(car.paint, 0.6)])}${fading("metal", ["#d9dbdc", "#aeb1b4", "#c9ccce", "#8f9396"])}</defs>
    ${ground("url(#paint)")}<path d="M-220 150 L1500 120" stroke="${shade(car.paint, 0.4)}" stroke-width="14"/>
    <rect x="146" y="276" width="1000" height="440" rx="18" fill="#000" opacity="0.45" filter="url(#soft-14)"/>
    <rect x="140" y="262" width="1000" height="440" rx="18" fill="url(#metal)" stroke="#6c6f72" stroke-width="5"/>
    <rect x="176" y="298" width="928" height="368" rx="8" fill="none" stroke="${ink}" stroke-width="4"/>
    ${letters("CHASSIS", { x: 230, y: 334, high: 40, color: ink })}${letters(car.number, { x: 230, y: 440, high: 52, color: ink, thick: 0.8 })}
    ${letters("PAINT", { x: 230, y: 566, high: 34, color: ink })}${letters(car.trim.slice(1, 3), { x: 430, y: 566, high: 34, color: ink })}
    ${letters("TRIM", { x: 640, y: 566, high: 34, color: ink })}${letters(car.paint.slice(1, 3), { x: 800, y: 566, high: 34, color: ink })}
    ${rivet(196, 480)}${rivet(1084, 480)}${scratches(look)}${dirt}${car.rust > 0.3 ? rusty(look, 1150, 720, 40 + 70 * car.rust) : ""}`;
}
