/**
 * Whether the figures of the model that a page shows carry a band: each does; or they are of single runs, and
 * the page says at its foot why there is none; or it shows no figure of the model.
 */
export type FiguresShown = 'banded' | 'of a run' | 'none';

/** By the route's id; a page that is not here fails a test. */
export const FIGURES_SHOWN: Readonly<Record<string, FiguresShown>> = {
  '/': 'of a run',
  '/about': 'none',
  '/about/access': 'none',
  '/about/model': 'banded',
  '/card': 'banded',
  '/clinic': 'none',
  '/clinic/[id]': 'of a run',
  '/clinic/[id]/lead': 'of a run',
  '/clinic/[id]/summary': 'of a run',
  '/clinic/home': 'of a run',
  '/clinic/rod': 'of a run',
  '/compare': 'of a run',
  '/explore': 'banded',
  '/film': 'banded',
  '/gear': 'banded',
  '/glossary': 'none',
  '/guide': 'none',
  '/guide/[id]': 'of a run',
  '/guide/[id]/[client]': 'of a run',
  '/guide/clients': 'of a run',
  '/guide/new': 'none',
  '/guide/open': 'none',
  '/guide/plan': 'banded',
  '/guide/task': 'none',
  '/homework': 'of a run',
  '/lessons': 'none',
  '/lessons/[slug]': 'of a run',
  '/log': 'none',
  '/no-connection': 'none',
  '/plan': 'banded',
  '/practice': 'none',
  '/print-quiz': 'banded',
  '/quiz': 'banded',
  '/record': 'of a run',
  '/retrieves': 'of a run',
  '/ruler': 'of a run',
  '/ruler/practise': 'of a run',
  '/safety': 'none',
  '/standing': 'none',
  '/standing/items': 'none',
  '/tests': 'banded',
  '/tests/club': 'banded',
  '/try': 'of a run',
  '/water': 'of a run'
};

/** Whether the page of this route is to say why its figures carry no band. */
export const saysWhyNoBand = (route: string | null): boolean =>
  route !== null && FIGURES_SHOWN[route] === 'of a run';
