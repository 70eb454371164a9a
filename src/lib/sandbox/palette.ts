/** The colours and faces of src/styles/tokens.css, as a canvas needs them. */
export interface Ink {
  readonly paper: string;
  readonly raised: string;
  readonly water: string;
  readonly deep: string;
  readonly bed: string;
  readonly ink: string;
  readonly inkSoft: string;
  readonly rule: string;
  readonly lead: string;
  readonly reed: string;
  readonly silt: string;
  readonly bait: string;
  readonly words: string;
  readonly figures: string;
}

function readInk(element: Element): Ink {
  const style = getComputedStyle(element);
  const token = (name: string) => style.getPropertyValue(`--${name}`).trim();
  return {
    paper: token('paper'),
    raised: token('raised'),
    water: token('water'),
    deep: token('deep'),
    bed: token('bed'),
    ink: token('ink'),
    inkSoft: token('ink-soft'),
    rule: token('rule'),
    lead: token('lead'),
    reed: token('reed'),
    silt: token('silt'),
    bait: token('bait'),
    words: token('words'),
    figures: token('figures')
  };
}

/** Hands the colours to `use` now, and again whenever day turns to night. Returns how to stop. */
export function watchInk(element: Element, use: (ink: Ink) => void): () => void {
  const read = () => use(readInk(element));
  const night = matchMedia('(prefers-color-scheme: dark)');
  night.addEventListener('change', read);
  const chosen = new MutationObserver(read);
  chosen.observe(document.documentElement, { attributeFilter: ['data-scheme'] });
  // Canvas text drawn before its face has come is drawn in another one, and stays so.
  void document.fonts.ready.then(read);
  read();
  return () => {
    night.removeEventListener('change', read);
    chosen.disconnect();
  };
}
