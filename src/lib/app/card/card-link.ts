import { packedText, unpackedText } from '$lib/app/connection';
import { DataError, parseData } from '$lib/scoring';
import { boatCard, type BoatCard } from '$lib/wire';

/** What a link's fragment starts with; the number is that of this packing. */
const MARK = 'c1.';
/** Refused before it is unpacked, characters: ten times the longest card. */
const LONGEST_FRAGMENT = 20_000;

/** The whole card as a fragment: whoever has the link needs nothing else of it. */
export async function cardFragment(card: BoatCard): Promise<string> {
  return MARK + (await packedText(JSON.stringify(card)));
}

/** Reads a fragment, with or without its #. Throws DataError naming field and value. */
export async function readCardFragment(fragment: string): Promise<BoatCard> {
  const text = fragment.replace(/^#/, '');
  if (text.length > LONGEST_FRAGMENT) {
    throw new DataError('link', text.length, `must have ${LONGEST_FRAGMENT} letters or fewer`);
  }
  if (!text.startsWith(MARK)) throw new DataError('link', text.slice(0, 12), 'is no card');
  let json: unknown;
  try {
    json = JSON.parse(await unpackedText(text.slice(MARK.length)));
  } catch (error) {
    if (error instanceof DataError) throw error;
    throw new DataError('link', text.slice(0, 12), 'is no card');
  }
  return parseData(boatCard, json);
}
