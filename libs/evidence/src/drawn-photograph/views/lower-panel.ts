import { between, digits, fading, ground, HIGH, type Look, rusty, shade, strewn } from "./look.ts";

/** Stone chips, run down to the primer. */
const chips = ({ random, car }: Look): string =>
  strewn(18 + 20 * car.rust, () => {
    const [x, y] = [between(random, 40, 1240), between(random, 350, 760)];
    return `<circle cx="${digits(x)}" cy="${digits(y)}" r="${digits(between(random, 1.5, 5))}" fill="${random() > 0.4 ? "#d8d2c6" : "#59391f"}"/>`;
  });

/** What the shining paint shows of the yard around. */
const reflected = ({ random, car }: Look): string =>
  strewn(5, () => {
    const [y, bend] = [between(random, 40, 420), between(random, -70, 70)];
    return `<path d="M-220 ${digits(y)} Q640 ${digits(y + bend)} 1500 ${digits(y + between(random, -40, 40))}" stroke="${shade(car.paint, random() > 0.5 ? 1.7 : 0.6)}" stroke-width="${digits(between(random, 10, 60))}" fill="none" opacity="0.4" filter="url(#soft-14)"/>`;
  });

/** The foot of a fender behind the wheel arch, where rust begins. */
export function lowerPanel(look: Look): string {
  const { car, random } = look;
  const eaten = strewn(Math.ceil(car.rust * 5), () =>
    rusty(
      look,
      between(random, 500, 1150),
      between(random, 640, 780),
      between(random, 18, 40 + 60 * car.rust),
    ),
  );
  return `<defs>${fading("paint", [shade(car.paint, 1.35), shade(car.paint, 1.05), shade(car.paint, 0.9), shade(car.paint, 0.5)])}${fading("floor", ["#4c4945", "#6e6963"])}</defs>
    ${ground("url(#paint)", -220, 800)}${reflected(look)}${ground("#151515", 790, 860)}${ground("url(#floor)", 850, HIGH + 220)}
    <path d="M-220 980 L-220 330 Q130 330 300 560 Q400 700 410 980 Z" fill="#0e0e0f"/>
    <path d="M-220 318 Q140 318 312 552 Q416 700 424 800" fill="none" stroke="${shade(car.paint, 0.55)}" stroke-width="16"/>
    <path d="M-220 312 Q140 312 318 546 Q424 700 430 800" fill="none" stroke="#fff" opacity="0.4" stroke-width="5"/>
    <circle cx="40" cy="860" r="330" fill="#1b1b1d"/><circle cx="40" cy="860" r="215" fill="#8f9398"/><circle cx="40" cy="860" r="190" fill="#5b5f64"/>
    <path d="M1010 -220 L1010 790" stroke="${shade(car.paint, 0.35)}" stroke-width="7"/><path d="M1017 -220 L1017 790" stroke="#fff" opacity="0.3" stroke-width="3"/>
    <rect x="-220" y="250" width="1720" height="17" fill="#dfe2e4" opacity="0.9"/><rect x="-220" y="262" width="1720" height="6" fill="#777"/>
    ${chips(look)}${eaten}`;
}
