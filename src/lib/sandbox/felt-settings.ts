/** How the felt channel is wanted. */
export interface FeltSettings {
  /** Sound and vibration, asked for once and kept until they are switched off. */
  readonly isOn: boolean;
  /** 0–1. */
  readonly volume: number;
  /** No sound; captions and vibration go on. */
  readonly isMuted: boolean;
  /** Null until they are chosen: then they stand where a step asks to feel. */
  readonly captions: boolean | null;
  readonly vibration: boolean;
}

export const FIRST_FELT: FeltSettings = {
  isOn: false,
  volume: 0.8,
  isMuted: false,
  captions: null,
  vibration: true
};

export const KEY = 'feltfoot-felt';

/** What was kept on this device, as far as it can be read. */
export function loadFelt(shelf: Pick<Storage, 'getItem'>): FeltSettings {
  try {
    const kept: unknown = JSON.parse(shelf.getItem(KEY) ?? 'null');
    // Kept before there was a mute button, or before the switch was, they are good without it.
    const whole: unknown = { isMuted: false, isOn: false, ...(kept as object) };
    return isSettings(whole) ? whole : FIRST_FELT;
  } catch {
    return FIRST_FELT;
  }
}

/** A browser without room forgets them, which does no harm. */
export function saveFelt(shelf: Pick<Storage, 'setItem'>, settings: FeltSettings): void {
  try {
    shelf.setItem(KEY, JSON.stringify(settings));
  } catch {
    return;
  }
}

function isSettings(kept: unknown): kept is FeltSettings {
  if (typeof kept !== 'object' || kept === null) return false;
  const { volume, isOn, isMuted, captions, vibration } = kept as Record<string, unknown>;
  const isVolume = typeof volume === 'number' && volume >= 0 && volume <= 1;
  const isChosen = captions === null || typeof captions === 'boolean';
  return (
    isVolume && isChosen && [isOn, isMuted, vibration].every((value) => typeof value === 'boolean')
  );
}
