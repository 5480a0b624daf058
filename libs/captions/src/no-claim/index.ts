import type { RepairedToken } from "@evenhand/lexicon/repair";
import { stemText } from "@evenhand/lexicon/token-text";

export { isLore } from "./lore.ts";

/** Another car, a time long past, a saying: the whole sentence claims nothing of this car. */
const ELSEWHERE =
  /\b(?:(?:i|we|he|she|they|brother|father|dad|uncle|friend|neighbor|buddy|fellow|wife|cousin|grandfather|grandpa|granddad|grandad|mother|mom|mum|sister|aunt|husband|boss|mate|son|teacher)(?: also)? (?:had|owned|sold|bought|drove|own|have|restored) (?:a |an |the )?(?:one(?! (?:[a-z]+ty\b|[a-z]+teen|hundred|oh|ten|eleven|twelve|\d|key|set|spare|patch|dent|chip|crack))|another|lovely one|same|couple of these|few of these|these)|just like (?:it|this one)|one like (?:this|it)|one of these|when i was|i remember (?:when|my|a|one|back|driving|riding|being|seeing|him|her|the (?:day|time|first))|you know what they say|most of these|these car|friend s|like this in|his had|hers had|sold for|went for|back in the day|(?:my|his|her|our) (?:uncle|dad|father|grandfather|grandpa|grandad|granddad|brother|cousin|friend|buddy|mate|neighbor|boss) s (?:one )?(?:(?:had|has|got) (?!it\b|this\b|her\b)|always |never |leaked|rusted|did\b|used to\b)|unlike the|the other car|my other|another car|on the last one|last one we had|we had a|sister car)\b/u;

/** Money and trade: not a claim about the car. */
const MONEY =
  /\b(?:asking|price|priced|offer|dollar|buck|grand|fair number|reasonable number|deal|worth|auction|sell for|bid|budget|call u|give u|ring u|ring me|phone|email|website|comment|subscribe|like button|ship it|shipping|delivery|deliver|transport|visit|come and see|thank|thank you|welcome|hello|good morning|good afternoon)\b/u;

/** What might be, what would be done, what comes next: from there on to the end of the sentence nothing is claimed. */
const SUPPOSED =
  /\b(?:if|used to (?!it\b|this\b|that\b|the\b)|would|will|it (?:can|may|might|could) be|(?:i|we) (?:had )?(?:thought|figured|expected|assumed)|you would (?:have )?(?:think|thought|expect)|let me|let u|going to|gonna|wanna|want to|could|should you|you can|you could|we can|i can show|imagine|suppose|plan to|plan on|need to|have to|hope|wish|got to (?:be|have|go|see|do)|might want|can not smell|meaning to|had been meaning|(?:i|we) (?:will |do )?bet(?! my| on))\b/u;
/** What will be done, and what goes with the car and is not on it. */
const NOT_ON_IT =
  /\b(?:(?:i|we|he|she|they) (?:am|is|s|are) (?:just |still |also )?(?:(?:putting|fitting|installing|ordering|buying)\b|(?:getting|having) (?:it|them|that|those|an?|some|new|the(?: [a-z]+){1,2}) (?:new\b|[a-z]+ed\b|done\b|redone\b|rebuilt\b|[a-z]+ (?:fitted|put on|put in)\b))|(?:(?:i|we|he|she|there) (?:have|has|is|s|are|got)|come with|include|get|throw in|with it) (?:[a-z]+ ){0,8}(?:for it\b|that (?:go|come) with (?:it|the car)\b|go(?:ing)? with (?:it|the car)\b|in (?:(?:a|its|their) (?:original )?|the original )box\b|on the shelf\b|on a shelf\b|in the wrapper\b|in the garage\b|in the shed\b|in the attic\b|not (?:been )?(?:fitted|installed|put on)\b|ready to (?:go|fit|install|be)\b|waiting to (?:go|be)\b|to go (?:on|in|with)\b|yet to be\b)|spare (?:set of )?(?:door|engine|motor|gearbox|transmission|radiator|windshield|windscreen|hood|fender|bumper|seat|part|hubcap|hub|carburetor|head|panel|top|hose|belt|bulb|fuse|glass|lens|light|headlight|grille|trim|axle|differential|diff|starter|generator|alternator|pump|wing|bonnet|shock|bit)\b)/u;
const STILL_CLAIMS =
  /\b(?:no idea if|that would be|you will (?:hear|notice|feel|get|see|find)|(?<!\b(?:i|we|you|would|who) )will (?:still |just |even |also )?(?:take a (?:couple|few|bit|little)|smoke|puff|tick|rattle|weep|drip|leak|start|pull|hold|stop|run|idle|cruise|shift|crunch|grind|jump|pop|stick|stay|drop|lock|squeal|blow|mark|burn|use|show|read|open|close|shut|work|wander|whine|cook|roast|keep)|(?:i|we) will (?:show|tell|be honest|point|admit|say|grant)|will be (?:paid|released|cleared|settled)|(?:could|can) not tell(?: you)?(?: if)?|got to (?:pump|double)|(?:got|have) to be (?:careful|gentle|quick|patient|easy|slow)|(?:we|i|you) will (?:start|begin|go|see|move|come|notice|find|work)|let (?:me|u|s) (?:start|begin|go|move|take|look|walk|show|hop|jump|get|turn|pop)|not sure if|do not know if|when (?:it|they|he|she) want(?: to)?|when (?:it|he|she) feel like|if you (?:come|look|go|get|stand|kneel) (?:close|closer|near|down|under|underneath|from|at|in|up|round|around)|if you rush|if you hurry|if you force|if you push|if you are (?:quick|fast|not careful)|if you do not|need a (?:new|change|clean|charge|compressor|recharge|regas|tune|service)|need (?:charging|regassing|changing|replacing|recharging|new|attention|work)|hav(?:e|ing) to replace|had to (?:replace|have)|can not say if|i would (?:say|call|guess|not swear)|would not|will not|will hold|should think|as (?:it|they) (?:should|would)|like it should|as far as (?:i|we) can|if that\b|that i can|(?:i|we) could (?:find|see|feel|hear|detect)|you can (?:see|hear|feel|tell|smell)|(?:you|i) can (?:poke|push|put|stick) (?:a|your|my) (?:finger|thumb|hand|screwdriver)|what (?:i|we) can|if i am honest|if you ask me|if anything|can not(?! smell)|as can be|have to (?:help it|pump|slam|jiggle|lift|wiggle)|got to (?:slam|jiggle|lift|wiggle)|need to (?:pump|slam|jiggle)|will say|have to say)\b/gu;

/** Where, in talk without marks, money or a supposition begins: token offset, and whether another car is spoken of. */
export const noClaimAt = (tokens: readonly RepairedToken[], from: number, to: number): number | undefined => {
  if (noClaim(tokens, from, to) === undefined) return undefined;
  for (let at = to - 1; at >= from; at -= 1) if (noClaim(tokens, at, to) !== undefined) return at;
  return from;
};

/**
 * Why tokens `from` up to `to` claim nothing of this car, where they do not: they speak of another car or of money, or only suppose.
 *
 * @example
 * noClaim(tokens("my brother had one of these"), 0, 6); // "elsewhere"
 */
export const noClaim = (
  tokens: readonly RepairedToken[],
  from: number,
  to: number,
): "elsewhere" | "money" | "supposed" | undefined => {
  const text = stemText(tokens, from, to);
  if (ELSEWHERE.test(text)) return "elsewhere";
  if (MONEY.test(text)) return "money";
  if (NOT_ON_IT.test(text)) return "supposed";
  return SUPPOSED.test(text.replaceAll(STILL_CLAIMS, "")) ? "supposed" : undefined;
};
