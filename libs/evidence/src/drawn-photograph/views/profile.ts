import { between, digits, fading, ground, HIGH, type Look, shade, strewn } from "./look.ts";

const wheel = (x: number, y: number, size: number): string =>
  `<circle cx="${x}" cy="${y}" r="${size}" fill="#17171a"/><circle cx="${x}" cy="${y}" r="${size * 0.66}" fill="#b9bcc0"/>
   <circle cx="${x}" cy="${y}" r="${size * 0.56}" fill="#7d8187"/><circle cx="${x}" cy="${y}" r="${size * 0.2}" fill="#d7dadd"/>
   ${strewn(5, (at) => `<rect x="${x - 5}" y="${y - size * 0.55}" width="10" height="${size * 0.5}" fill="#c9ccd0" transform="rotate(${at * 72} ${x} ${y})"/>`)}`;

/** Behind the car: a wall with doors, or trees, never the same twice. */
function yard({ random }: Look): string {
  const wall = ["#8c8f92", "#a39a8c", "#7f8a86", "#9a8f94"][Math.floor(random() * 4)] ?? "#888";
  const doors = strewn(between(random, 2, 5), (at) => {
    const x = at * 340 - 120 + between(random, -60, 60);
    return `<rect x="${digits(x)}" y="${digits(between(random, 170, 260))}" width="${digits(between(random, 120, 230))}" height="330" fill="${shade(wall, between(random, 0.5, 1.3))}" stroke="#444" stroke-width="6"/>`;
  });
  const stones = strewn(90, () => {
    const y = between(random, 640, 1100);
    return `<ellipse cx="${digits(between(random, -200, 1480))}" cy="${digits(y)}" rx="${digits(between(random, 3, 18))}" ry="${digits(between(random, 2, 7))}" fill="${random() > 0.5 ? "#5f5b57" : "#837d76"}" opacity="0.7"/>`;
  });
  return `<defs>${fading("sky", ["#b9cbdc", "#dfe4e6"])}${fading("floor", ["#77736d", "#58544f"])}</defs>
    ${ground("url(#sky)", -220, 300)}${ground(wall, 140, 600)}${doors}${ground("url(#floor)", 585, HIGH + 220)}${stones}`;
}

/** Doors, glass and brightwork over the body's outline. */
function details(paint: string): string {
  const line = `fill="none" stroke="${shade(paint, 0.45)}" stroke-width="3.5"`;
  return `<path d="M395 425 L470 325 Q480 312 500 310 L640 306 L640 425 Z" fill="#22303a"/><path d="M660 306 L800 312 Q830 316 850 338 L915 425 L660 425 Z" fill="#263640"/>
    <path d="M420 420 L490 330 L520 328 L450 420 Z" fill="#8fa5b3" opacity="0.5"/>
    <path d="M385 440 L390 640 Q394 660 420 662 L640 662 L648 430" ${line}/><path d="M655 430 L655 662 L820 662 Q860 600 905 560 L920 440" ${line}/>
    <rect x="575" y="470" width="46" height="11" rx="5" fill="#dfe3e6"/><rect x="850" y="470" width="40" height="11" rx="5" fill="#dfe3e6"/>
    <path d="M130 520 L1165 508" stroke="#e6e9eb" stroke-width="6" opacity="0.85"/>
    <path d="M112 500 q-12 40 4 70 l26 0 l0 -72 Z" fill="#e9e2c8" stroke="#999" stroke-width="3"/><rect x="1146" y="492" width="32" height="62" rx="6" fill="#9b1f1c"/>
    <rect x="84" y="612" width="130" height="30" rx="12" fill="#cfd4d8"/><rect x="1090" y="604" width="120" height="30" rx="12" fill="#cfd4d8"/>`;
}

/** A folding roof over the glass: cloth with its seams, and a small window of it. */
const clothRoof = (cloth: string): string =>
  `<path d="M462 330 Q484 286 524 282 L800 286 Q848 290 876 330 L946 432 L905 432 L846 350 Q820 322 790 322 L660 316 L650 316 L505 320 Q480 324 462 346 Z" fill="${cloth}" stroke="${shade(cloth, 0.6)}" stroke-width="4"/>
    <path d="M720 318 L818 330 Q842 346 905 426 L720 426 Z" fill="${cloth}" stroke="${shade(cloth, 0.6)}" stroke-width="4"/>
    <path d="M640 284 L640 318 M800 288 L812 330 L838 424" fill="none" stroke="${shade(cloth, 0.7)}" stroke-width="3"/>`;

/** The whole car from its left side. */
export function profile(look: Look): string {
  const { car, random } = look;
  const body =
    "M90 600 Q88 500 150 470 Q270 440 385 428 L470 312 Q485 292 520 290 L800 294 Q840 296 868 326 L935 430 Q1080 442 1160 470 Q1200 500 1200 600 L1190 660 L1090 668 Q1070 560 975 560 Q880 560 862 668 L420 668 Q402 560 305 560 Q212 560 192 668 L100 650 Z";
  const stains = strewn(6 * car.rust + 2, () => {
    const x = between(random, 420, 860);
    return `<ellipse cx="${digits(x)}" cy="${digits(between(random, 640, 668))}" rx="${digits(between(random, 8, 34))}" ry="7" fill="#7a4524" opacity="${(0.25 + 0.6 * car.rust).toFixed(2)}"/>`;
  });
  return `${yard(look)}<defs>${fading("paint", [shade(car.paint, 1.45), shade(car.paint, 1.08), car.paint, shade(car.paint, 0.55)])}</defs>
    <ellipse cx="645" cy="712" rx="600" ry="46" fill="#000" opacity="0.55" filter="url(#soft-14)"/>
    <path d="M190 680 Q200 545 305 545 Q415 545 425 680 Z M860 680 Q870 545 975 545 Q1085 545 1095 680 Z" fill="#0c0c0d"/>
    <path d="${body}" fill="url(#paint)" stroke="${shade(car.paint, 0.4)}" stroke-width="4"/>
    <path d="M150 488 Q600 452 1165 486" stroke="#fff" stroke-width="16" opacity="0.35" fill="none" filter="url(#soft-4)"/>
    ${details(car.paint)}${car.cloth === undefined ? "" : clothRoof(car.cloth)}${stains}${wheel(306, 672, 92)}${wheel(976, 672, 92)}`;
}
