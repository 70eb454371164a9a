import { linkFragment, readLinkFragment } from '$lib/connection';
import { boatCard, type BoatCard } from '$lib/wire';

const CARD_LINK = { mark: 'c1.', name: 'card', schema: boatCard } as const;

/** The whole card as a fragment. */
export const cardFragment = (card: BoatCard): Promise<string> => linkFragment(CARD_LINK, card);

/** Throws DataError naming field and value. */
export const readCardFragment = (fragment: string): Promise<BoatCard> =>
  readLinkFragment(CARD_LINK, fragment);
