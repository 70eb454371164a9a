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

/** Each is registered with its day value as the initial one. */
const COLOURS = {
  paper: '--paper',
  raised: '--raised',
  water: '--water',
  deep: '--deep',
  bed: '--bed',
  ink: '--ink',
  inkSoft: '--ink-soft',
  rule: '--rule',
  lead: '--lead',
  reed: '--reed',
  silt: '--silt',
  bait: '--bait'
} as const;

/** The colours of the page's light, as they are at this element. */
export function readInk(element: Element): Ink {
  const style = getComputedStyle(element);
  const token = (property: string) => style.getPropertyValue(property).trim();
  const colours = Object.entries(COLOURS).map(([name, property]) => [name, token(property)]);
  return {
    ...(Object.fromEntries(colours) as Record<keyof typeof COLOURS, string>),
    words: token('--words'),
    figures: token('--figures')
  };
}

/** The colours of day, whatever the light on the screen: for what is drawn on paper. */
export function dayInk(): Ink {
  const probe = document.createElement('span');
  for (const property of Object.values(COLOURS)) probe.style.setProperty(property, 'initial');
  document.body.append(probe);
  const ink = readInk(probe);
  probe.remove();
  return ink;
}

/** Hands the colours to `use` with the next frame, and again whenever day turns to night. Returns how to stop. */
export function watchInk(element: Element, use: (ink: Ink) => void): () => void {
  const read = () => use(readInk(element));
  const night = matchMedia('(prefers-color-scheme: dark)');
  night.addEventListener('change', read);
  const chosen = new MutationObserver(read);
  chosen.observe(document.documentElement, { attributeFilter: ['data-scheme'] });
  // To ask at once, for a colour or for the faces, would lay the page out in the midst of putting it together.
  const first = requestAnimationFrame(() => {
    read();
    // Canvas text drawn before its face has come is drawn in another one, and stays so.
    void document.fonts.ready.then(read);
  });
  return () => {
    cancelAnimationFrame(first);
    night.removeEventListener('change', read);
    chosen.disconnect();
  };
}
