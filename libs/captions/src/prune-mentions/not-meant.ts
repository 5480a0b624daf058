/** Words before a part's name, its determiners left out or not, or behind it, beside which it is none. */
type Rule = {
  readonly subject: RegExp;
  readonly before?: RegExp;
  readonly after?: RegExp;
  readonly rightBefore?: RegExp;
};

/** Words that name a part elsewhere and none where these words stand beside them. */
export const NOT_MEANT: readonly Rule[] = [
  { subject: /^idle$/u, before: /^at$/u },
  // "Two spare doors", "a spare set of hubcaps": no spare wheel.
  {
    subject: /^spare$/u,
    after:
      /^(?:door|engine|motor|gearbox|transmission|radiator|windshield|windscreen|hood|fender|bumper|seat|part|hubcap|hub|carburetor|head|panel|top|hose|belt|bulb|fuse|glass|lens|light|headlight|grille|trim|axle|differential|diff|starter|generator|alternator|pump|wing|bonnet|shock|bit|key|jack|set|fuel|gas|can|oil|plug)$/u,
  },
  { subject: /^cold-start$/u, before: /^(?:you|to|i|we|let|can|will|us|first)$/u },
  { subject: /^wheels$/u, before: /^at$/u },
  { subject: /^cold-start$/u, after: /^(?:with|at|from|by|to)$/u },
  { subject: /^volts-cranking$/u, before: /^(?:of|some|little|bit|lot|more|while)$/u },
  { subject: /^(?:fuel|leak-fuel)$/u, before: /^(?:of|smells)$/u },
  {
    subject: /^lamps$/u,
    after:
      /^(?:blue|green|gray|red|surface|rust|wear|scratch|pitting|weep|seep|dent|tick|tapping|tap|ticking|noise|knock|rattle|smoke|play|whine|hum|corrosion)$/u,
  },
  { subject: /^gauges$/u, before: /^(?:on|by|my)$/u },
  { subject: /^door-seals$/u, before: /^(?:is|are)$/u },
  { subject: /^air-conditioning$/u, before: /^(?:in|of|by|fresh)$/u },
  {
    subject: /^air-conditioning$/u,
    after:
      /^(?:bubble|leak|filter|cleaner|bag|dam|ride|shock|pressure|pump|gap|intake|line|vent|lock|coming|pocket|in)$/u,
  },
  { subject: /^registration$/u, after: /^(?:welded|let|riveted|over)$/u },
  { subject: /^hood$/u, before: /^(?:pop|open|lift|raise|shut|close)$/u },
  { subject: /^tire-size$/u, before: /^full$/u },
  { subject: /^top$/u, before: /^(?:at|along|across|toward|from|near)$/u },
  { subject: /^silt$/u, after: /^up$/u },
  { subject: /^mirrors$/u, before: /^(?:like|as)$/u },
  { subject: /^(?:quarter|door|all-panels)$/u, after: /^(?:gap|fit)$/u },
  { subject: /^quarter$/u, before: /^(?:of|size)$/u, after: /^[.,;]$/u },
  { subject: /^tank$/u, before: /^(?:top|header|expansion|overflow)$/u },
  { subject: /^stop-lamp$/u, before: /^at$/u },
  { subject: /^first-color$/u, before: /^in$/u },
  { subject: /^tracking$/u, after: /^(?:device)$/u },
  { subject: /^glass$/u, rightBefore: /^(?:is|are|s|real|proper|actual)$/u },
  {
    subject: /^oil$/u,
    after: /^(?:spot|stain|mark|drip|patch|puddle|slick|change|filter|cap|leak|seep|weep)$/u,
  },
  { subject: /^gearbox-kind$/u, before: /^(?:all|both|every|on)$/u },
  {
    subject: /^door$/u,
    before: /^(?:two|three|four|five|2|3|4|5|-)$/u,
    after: /^(?:wagon|sedan|coupe|car|saloon|estate|hatchback|hardtop|model|version)$/u,
  },
  { subject: /^springs$/u, before: /^(?:in|last|this|every|since|next|until)$/u },
  { subject: /^latches$/u, before: /^(?:one|they|it|both|do|does|all|to|not|and)$/u },
  { subject: /^locks$/u, before: /^(?:not|to|does|will|it|they)$/u },
  { subject: /^water$/u, after: /^(?!\?$)/u },
  { subject: /^oil$/u, before: /^(?:of|weep|leak|drip|burn|some|use|lose|bit|no|any)$/u },
  { subject: /^axle$/u, after: /^(?:pinion)$/u },
  { subject: /^engine$/u, before: /^(?:with|while)$/u, after: /^(?:running|on|off|idling|turned|ticking)$/u },
  { subject: /^manifolds$/u, before: /^from$/u, after: /^(?:back|on|down|out|to)$/u },
  // "Five bar at speed": when, of a pressure.
  {
    subject: /^tracking$/u,
    rightBefore:
      /^(?:bar|psi|pound|lb|\d+|(?:twen|thir|for|fif|six|seven|eigh|nine)ty|one|two|three|four|five|six|seven|eight|nine|ten|hundred)$/u,
  },
  { subject: /^blower$/u, after: /^(?:belt|blade|clutch|shroud)$/u },
];
