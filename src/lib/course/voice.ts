import { inUnits, type Units } from '../scoring';

/**
 * What no learner is told, each with what is said in its place: words that no American angler says in a
 * boat, and spellings that are not American. A pattern ends where the word may go on ("colours").
 */
const NOT_SAID: readonly (readonly [what: RegExp, instead: string])[] = [
  [/\bshall\b/i, 'must, or you want it to'],
  [/\bwhoever\b/i, 'you'],
  [/\b(nevertheless|foretold|hence|whilst|amongst|thereof|wherein|upon|thus)\b/i, 'a plain word'],
  [/\bfurther on\b/i, 'next'],
  [/\bso (it is|they are|it does|it should be)\b/i, 'why it is right'],
  [/\bit is so\b/i, 'that’s right'],
  [/\bways? of (the|a) (tip|bait|jig|rod)\b/i, 'how far it moved'],
  [/\bthe (tip|bait|jig)’s way\b/i, 'how far it moved'],
  [/\bnylon\b/i, 'mono'],
  [/\b(line|reel) is closed\b|\bclosed reel\b/i, 'the reel is engaged'],
  [/\bwater .{0,20}\bhas \{temperature/i, 'it’s 55 °F at the surface'],
  [/\bfurthest\b/i, 'farthest'],
  [/\b(towards|backwards|forwards|upwards|downwards|afterwards)\b/i, 'without the s'],
  [
    /\bpractis|\blicence\b|\bcolour|\bgrey\b|\bmetres?\b|\bneighbour|\bfavour/i,
    'American spelling'
  ],
  [/\b(dearest|oneself|somebody else’s|in its turn|of those)\b/i, 'a plain word'],
  [/(?<![.\d])\b1 (times|hops|drags|turns|casts|tries)\b/, 'a count that agrees'],
  [/\b(great job|well done|awesome|don’t be|silly|stupid|of course)\b/i, 'nothing'],
  [/[\p{L}\d]!/u, 'a period'],
  [/ & /, 'and'],
  [/\b(the|your) bait\b(?! model)/i, 'the jig: it’s what is tied on'],
  [/\bbow in (the|a|its|your) line\b|\bline bows\b/i, 'a belly: the bow is the boat’s'],
  [/[\d}](\s|&nbsp;|\\u00a0)%/, 'a percent sign without a space'],
  [/\bhalf a met/i, 'a number in each unit'],
  [/\bclose[sd]? the bail\b|\bopen(s|ed)? the (bail|spool)\b|\bopen spool\b/i, 'free spool']
];

/** Converted numbers that a hand would never mean, as they are read in one of the units. */
const NOT_ROUND: Readonly<Record<Units, readonly RegExp[]>> = {
  imperial: [/\d\u00a0ft\u00a0(?!6\u00a0in)[\d½/ ]+\u00a0in\b/, /0\.\d+\u00a0in\b/],
  metric: [
    /\b(?!\d*[05]\u00a0)\d{2,}\u00a0cm\b/,
    /\b\d+\.\d[1-9]\u00a0m\b/,
    /\b\d+\.\d\u00a0g\b/,
    /0\.\d\d\u00a0mm\b/
  ]
};
/** One system's units where the other's are read. */
const STRANGE: Readonly<Record<Units, RegExp>> = {
  imperial: /\d\s(mm|cm|m|m\/s|g|kg|°C|N)\b/,
  metric: /\d\s(in|ft|ft\/s|oz|°F)(\b|$)/
};
const UNITS: readonly Units[] = ['imperial', 'metric'];

/** Words of a sentence that is read with a rod in one hand; twelve are long. */
const LONGEST_SENTENCE = 25;

/** Everything that is wrong with words as they are authored; empty for good ones. */
export function voiceFaults(text: string): string[] {
  return [...saidWrongly(text), ...notRound(text), ...strangeUnits(text), ...tooLong(text)];
}

/** What is wrong with words that hold what happened, exact to what a hand can use. */
export function reportFaults(text: string): string[] {
  return [...saidWrongly(text), ...strangeUnits(text), ...tooLong(text)];
}

/** What is said as no guide says it, each with its place; empty for good words. */
export function saidWrongly(text: string): string[] {
  return NOT_SAID.flatMap(([what, instead]) => {
    const found = what.exec(text);
    return found ? [`says “${found[0]}”, not ${instead}: ${text}`] : [];
  });
}

/** Numbers that were converted where a round one belongs, as authored words have them. */
export function notRound(text: string): string[] {
  return UNITS.flatMap((units) => {
    const read = inUnits(authoredLeftOut(text), units);
    return NOT_ROUND[units]
      .filter((what) => what.test(read))
      .map(() => `is converted, not round, in ${units}: ${read}`);
  });
}

/** Units of the other system. */
export function strangeUnits(text: string): string[] {
  return UNITS.flatMap((units) => {
    const read = inUnits(text, units);
    return STRANGE[units].test(read) ? [`other units in ${units}: ${read}`] : [];
  });
}

/** Sentences that are too long to be heard in a boat. */
export function tooLong(text: string): string[] {
  return sentencesOf(inUnits(text, 'imperial'))
    .filter((sentence) => wordCount(sentence) > LONGEST_SENTENCE)
    .map((sentence) => `${wordCount(sentence)} words in a sentence: ${sentence}`);
}

export function sentencesOf(text: string): string[] {
  return text.split(/(?<=[.?:;])\s+(?=\S)/).filter((sentence) => sentence !== '');
}

export function wordCount(text: string): number {
  return text.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length;
}

/** What was written for each units stands as it was written; only conversions are looked at. */
function authoredLeftOut(text: string): string {
  return text.replace(/\{[^{}|]*\|[^{}|]*\}/g, '…');
}
